package rungwise.knowledge.common;

import java.util.OptionalDouble;

/** Worker minutes, dwell left out; empty where the method is not done that way. */
public record Minutes(OptionalDouble spot, OptionalDouble squareMetre) {
    public Minutes {
        spot = spot == null ? OptionalDouble.empty() : spot;
        squareMetre = squareMetre == null ? OptionalDouble.empty() : squareMetre;
    }

    /** Minutes for one spot of the usual 1–3 cm; a method timed by area needs at least a hand's breadth. */
    public double perSpot() {
        return spot.orElseGet(() -> squareMetre.orElse(0) * 0.1);
    }
}
