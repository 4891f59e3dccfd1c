package rungwise.rules;

/**
 * A word of the trade that belongs to no single rung: what a sign during the work says, what comes due later.
 *
 * @param about what it is about: preparation, wheels, clay, aftercare, neighbour …
 */
public record Advice(String about, String text, String figures) implements Conclusion {
}
