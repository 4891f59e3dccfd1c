package rungwise.rules;

/** Shade of the panel. */
public record Colour(String shade) {
}
