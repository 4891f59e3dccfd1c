package rungwise.rules;

/**
 * One method comes after another where both are candidates.
 *
 * @param needed the later one is of no use, or unsafe, without the earlier one
 */
public record After(String first, String then, boolean needed, String figures) implements Conclusion {
}
