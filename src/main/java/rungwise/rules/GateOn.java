package rungwise.rules;

/** A gate that a candidate carries. */
public record GateOn(String method, String gate) {
}
