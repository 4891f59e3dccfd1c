package rungwise.rules.use;

/**
 * What is left of the ladder after the tries.
 *
 * @param rungs      how many
 * @param slow       gentle but slow methods that could still be had
 * @param firstSlow  id of the first of them; empty = none
 * @param failures   grades that changed nothing
 * @param wayOut     method of who takes over
 */
public record Left(int rungs, int slow, String firstSlow, int failures, String wayOut) {
}
