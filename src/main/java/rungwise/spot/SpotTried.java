package rungwise.spot;

import rungwise.diagnosis.SpotAnswer;
import rungwise.shoplog.Attempt;

/**
 * An attempt that is kept, and what to do next.
 *
 * @param spot   on which it was made
 * @param answer to the spot's question after it
 */
public record SpotTried(String spot, Attempt attempt, SpotAnswer answer) {
}
