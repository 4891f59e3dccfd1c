package rungwise.workup;

import rungwise.knowledge.decision.AssumptionId;
import rungwise.knowledge.decision.Assumptions;
import rungwise.knowledge.method.Method;
import rungwise.question.Question;

/**
 * How long a method is worked over the whole extent.
 *
 * @param areaOfASpot m² that one of the usual size is worked over
 */
public record Extents(double areaOfASpot) {
    public static Extents of(Assumptions assumptions) {
        return new Extents(assumptions.value(AssumptionId.AREA_OF_A_SPOT));
    }

    static boolean isKnown(Question.Extent extent) {
        return extent.areaM2().isPresent() || extent.spots().isPresent();
    }

    double perSpot(Method method) {
        return method.minutes().perSpot(areaOfASpot);
    }

    /** Minutes of work without dwell, spot by spot or over the area, whichever is sooner done; one spot where nothing is known. */
    public double soonest(Method method, Question.Extent extent) {
        if (!isKnown(extent)) {
            return perSpot(method);
        }
        double bySpots = extent.spots().isPresent() ? extent.spots().getAsInt() * perSpot(method) : Double.POSITIVE_INFINITY;
        return Math.min(bySpots, over(extent.areaM2().orElseGet(() -> extent.spots().getAsInt() * areaOfASpot), method));
    }

    /** The same as hands and air are exposed to it: over the area, where that is told. */
    double workMinutes(Method method, Question.Extent extent) {
        return extent.areaM2().isPresent() ? over(extent.areaM2().getAsDouble(), method) : extent.spots().orElse(1) * perSpot(method);
    }

    private double over(double areaM2, Method method) {
        return method.minutes().squareMetre().isPresent() ? areaM2 * method.minutes().squareMetre().getAsDouble()
                : areaM2 / areaOfASpot * perSpot(method);
    }
}
