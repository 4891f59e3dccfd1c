package rungwise.rules;

import rungwise.knowledge.Agent;
import rungwise.knowledge.Tool;

/** What an agent leaves in the air, meeting the tool that comes after it on the same spot. */
public record Ignition(Agent agent, Tool tool) {
    public String figures() {
        return agent.name() + " then " + tool.name();
    }
}
