package rungwise.rules;

import rungwise.knowledge.Observation;

/** An observation that was made on this spot. */
public record Seen(Observation observation) {
}
