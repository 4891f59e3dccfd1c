package rungwise.workup;

import rungwise.knowledge.decision.AssumptionId;
import rungwise.knowledge.decision.Assumptions;
import rungwise.knowledge.method.Method;
import rungwise.question.Question;

/**
 * How long hands and air are exposed to a method over the whole extent.
 *
 * @param areaOfASpot m² that one of the usual size is worked over
 */
record Extents(double areaOfASpot) {
    static Extents of(Assumptions assumptions) {
        return new Extents(assumptions.value(AssumptionId.AREA_OF_A_SPOT));
    }

    static boolean isKnown(Question.Extent extent) {
        return extent.areaM2().isPresent() || extent.spots().isPresent();
    }

    double perSpot(Method method) {
        return method.minutes().perSpot(areaOfASpot);
    }

    /** Minutes of work without dwell; one spot where nothing is known. */
    double workMinutes(Method method, Question.Extent extent) {
        if (extent.areaM2().isEmpty()) {
            return extent.spots().orElse(1) * perSpot(method);
        }
        double area = extent.areaM2().getAsDouble();
        return method.minutes().squareMetre().isPresent() ? area * method.minutes().squareMetre().getAsDouble()
                : area / areaOfASpot * perSpot(method);
    }
}
