package rungwise.rules.use;

import java.util.List;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Tool;
import rungwise.text.Figure;

/** What an agent leaves in the air, meeting the tool that comes after it on the same spot. */
public record Ignition(Agent agent, Tool tool) {
    public List<Figure> figures() {
        return List.of(Figure.against("meets", agent.name(), "", tool.name()));
    }
}
