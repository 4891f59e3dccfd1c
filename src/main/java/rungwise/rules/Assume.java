package rungwise.rules;

/** Something unknown is taken to be so, and said aloud. */
public record Assume(String fact, String value, String figures) implements Conclusion {
}
