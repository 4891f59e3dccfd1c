package rungwise.rules.fact;

/** Shade of the panel. */
public record Colour(String shade) {
}
