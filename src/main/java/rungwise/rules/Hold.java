package rungwise.rules;

/** Stop before any work: a hazard outranks the cleaning. */
public record Hold(String what, String doFirst, String until, String figures) implements Conclusion {
}
