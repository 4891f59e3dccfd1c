package rungwise.rules;

/** An unknown fact could make the surface as delicate as another: what would be barred then is asked for by a gate. */
public record MightBe(String surface, String gate, String figures) implements Conclusion {
}
