package rungwise.workup;

import rungwise.knowledge.Method;
import rungwise.question.Question;

/** How long hands and air are exposed to a method over the whole extent. */
public final class Extents {
    /** A method timed by the spot wets about a tenth of a square metre each time. */
    private static final double SPOTS_PER_SQUARE_METRE = 10;

    private Extents() {
    }

    public static boolean isKnown(Question.Extent extent) {
        return extent.areaM2().isPresent() || extent.spots().isPresent();
    }

    /** Minutes of work without dwell; one spot where nothing is known. */
    public static double workMinutes(Method method, Question.Extent extent) {
        if (extent.areaM2().isEmpty()) {
            return extent.spots().orElse(1) * method.minutes().perSpot();
        }
        double area = extent.areaM2().getAsDouble();
        return method.minutes().squareMetre().isPresent() ? area * method.minutes().squareMetre().getAsDouble()
                : area * SPOTS_PER_SQUARE_METRE * method.minutes().perSpot();
    }
}
