package rungwise.rules.use;

import rungwise.knowledge.method.ToolKind;

/**
 * The first rung of what is left of the ladder.
 *
 * @param dueSteps     preparation, rinses between and open work that come before it
 * @param untested     its hidden test spot is missing
 * @param helpedPartly it was tried and helped
 */
public record Ahead(Use use, double chance, int dueSteps, boolean untested, boolean helpedPartly) {
    public String name() {
        return use.method().id();
    }

    public ToolKind toolKind() {
        return use.tool().kind();
    }
}
