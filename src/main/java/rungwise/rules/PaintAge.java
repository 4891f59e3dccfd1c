package rungwise.rules;

/** Days since the surface was painted. */
public record PaintAge(double days) {
}
