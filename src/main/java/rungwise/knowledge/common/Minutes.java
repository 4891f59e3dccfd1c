package rungwise.knowledge.common;

import java.util.OptionalDouble;

/** Worker minutes, dwell left out; empty where the method is not done that way. */
public record Minutes(OptionalDouble spot, OptionalDouble squareMetre) {
    public Minutes {
        spot = spot == null ? OptionalDouble.empty() : spot;
        squareMetre = squareMetre == null ? OptionalDouble.empty() : squareMetre;
    }

    /**
     * Minutes for one spot.
     *
     * @param areaOfASpot m² that a method timed by area needs at least
     */
    public double perSpot(double areaOfASpot) {
        return spot.orElseGet(() -> squareMetre.orElse(0) * areaOfASpot);
    }
}
