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
        double area = extent.areaM2().orElseGet(() -> extent.spots().getAsInt() * areaOfASpot);
        double byArea = method.minutes().squareMetre().isPresent() ? area * method.minutes().squareMetre().getAsDouble()
                : area / areaOfASpot * perSpot(method);
        return Math.min(bySpots, byArea);
    }

    /** The same as hands and air are exposed to it: over the area, where that is told. */
    double workMinutes(Method method, Question.Extent extent) {
        if (extent.areaM2().isEmpty()) {
            return extent.spots().orElse(1) * perSpot(method);
        }
        double area = extent.areaM2().getAsDouble();
        return method.minutes().squareMetre().isPresent() ? area * method.minutes().squareMetre().getAsDouble()
                : area / areaOfASpot * perSpot(method);
    }
}
