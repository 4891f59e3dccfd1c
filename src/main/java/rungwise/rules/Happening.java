package rungwise.rules;

import rungwise.knowledge.Circumstance;

/** A circumstance that was reported. */
public record Happening(Circumstance circumstance) {
}
