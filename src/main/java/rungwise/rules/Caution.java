package rungwise.rules;

/** Yes, but. */
public record Caution(String method, String text, String figures) implements Conclusion {
}
