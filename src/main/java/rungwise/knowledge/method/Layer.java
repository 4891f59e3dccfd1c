package rungwise.knowledge.method;

import rungwise.knowledge.common.Range;

/**
 * How thick an agent sits on a panel.
 *
 * @param appliedMicrons as put on
 * @param yieldPascals   stress below which it does not flow; 0 for a liquid
 * @param millipascalSeconds viscosity; counts for a liquid only
 */
public record Layer(Range appliedMicrons, double yieldPascals, double millipascalSeconds) {
}
