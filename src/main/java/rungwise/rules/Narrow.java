package rungwise.rules;

/** A dwell is cut to a share of itself, and to at most some minutes. */
public record Narrow(String method, double share, double atMostMinutes, String figures) implements Conclusion {
}
