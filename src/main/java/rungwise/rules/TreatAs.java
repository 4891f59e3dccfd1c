package rungwise.rules;

/** A fact makes the surface as delicate as another. */
public record TreatAs(String surface, String figures) implements Conclusion {
}
