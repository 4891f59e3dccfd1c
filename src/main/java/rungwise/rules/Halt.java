package rungwise.rules;

/** Harm was done or is showing: no further try on this spot. */
public record Halt(String text, String figures) implements Conclusion {
}
