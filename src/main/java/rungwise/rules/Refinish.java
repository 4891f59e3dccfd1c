package rungwise.rules;

/** Whether the panel was painted again after it left its maker. */
public record Refinish(boolean found) {
}
