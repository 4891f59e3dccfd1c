package rungwise.knowledge.deposit;

/**
 * Signs that tell much the same thing.
 *
 * @param cap likelihood ratio that all of them together never exceed, for or against one contaminant
 */
public record SignGroup(String id, String meaning, double cap) {
}
