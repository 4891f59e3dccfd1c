package rungwise.rules;

/** A dependent method for which no softener is left among the candidates. */
public record Unsoftened(Candidate candidate) {
}
