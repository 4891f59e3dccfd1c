package rungwise.rules.use;

/** A gate that a candidate carries. */
public record GateOn(String method, String gate) {
}
