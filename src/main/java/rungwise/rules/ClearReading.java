package rungwise.rules;

/** Clear coat alone, in micrometres, from a multilayer gauge. */
public record ClearReading(double microns) {
}
