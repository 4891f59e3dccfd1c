package rungwise.rules;

import rungwise.knowledge.Surface;

/** A candidate that would be barred on the surface next to the spot, and why. */
public record NextDoor(String method, Surface neighbour, String why) {
}
