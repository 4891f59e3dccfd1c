package rungwise.knowledge.common;

/** A coded word with its meaning: a bond class, waste class, staff level or item of protection. */
public record Word(String id, String meaning) {
}
