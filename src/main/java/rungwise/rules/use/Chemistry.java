package rungwise.rules.use;

import java.util.List;
import rungwise.knowledge.chemistry.Reactive;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.Tool;
import rungwise.knowledge.method.ToolKind;
import rungwise.text.Figure;

/** A method with what it brings, for questions of order. */
public record Chemistry(Method method, Agent agent, Tool tool) {
    public boolean holds(Reactive group) {
        return agent.holds(group);
    }

    public boolean toolIs(ToolKind kind) {
        return tool.kind() == kind;
    }

    public List<Figure> figures(Chemistry other) {
        return List.of(Figure.against("before", method.name(), "", other.method.name()));
    }
}
