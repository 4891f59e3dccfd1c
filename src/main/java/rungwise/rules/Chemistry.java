package rungwise.rules;

import rungwise.knowledge.Agent;
import rungwise.knowledge.Method;
import rungwise.knowledge.Reactive;
import rungwise.knowledge.Tool;
import rungwise.knowledge.ToolKind;

/** A method with what it brings, for questions of order. */
public record Chemistry(Method method, Agent agent, Tool tool) {
    public boolean holds(Reactive group) {
        return agent.holds(group);
    }

    public boolean toolIs(ToolKind kind) {
        return tool.kind() == kind;
    }

    public boolean isFamily(String family) {
        return method.family().equals(family);
    }

    public boolean isSolvent() {
        return agent.isSolvent() && !agent.family().equals("wash");
    }

    /** Water or chemistry goes on with it. */
    public boolean isWet() {
        return agent.isWet();
    }

    /** Flushes and sucks in one pass. */
    public boolean extracts() {
        return isWet() && tool.kind() == ToolKind.SUCTION;
    }

    public boolean softens(Chemistry other) {
        return other.method.needsSoftener() && !method.softens().isEmpty();
    }

    public String figures(Chemistry other) {
        return method.name() + " before " + other.method.name();
    }
}
