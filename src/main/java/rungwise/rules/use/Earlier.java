package rungwise.rules.use;

/** A method that comes before another wherever both are in one ladder. */
public record Earlier(String before, String after) {
}
