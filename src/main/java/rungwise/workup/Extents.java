package rungwise.workup;

import rungwise.knowledge.AssumptionId;
import rungwise.knowledge.Assumptions;
import rungwise.knowledge.Method;
import rungwise.question.Question;

/**
 * How long hands and air are exposed to a method over the whole extent.
 *
 * @param spotsPerSquareMetre how often a method timed by the spot is done on a square metre
 */
record Extents(double spotsPerSquareMetre) {
    static Extents of(Assumptions assumptions) {
        return new Extents(1 / assumptions.value(AssumptionId.AREA_OF_A_SPOT));
    }

    static boolean isKnown(Question.Extent extent) {
        return extent.areaM2().isPresent() || extent.spots().isPresent();
    }

    /** Minutes of work without dwell; one spot where nothing is known. */
    double workMinutes(Method method, Question.Extent extent) {
        if (extent.areaM2().isEmpty()) {
            return extent.spots().orElse(1) * method.minutes().perSpot();
        }
        double area = extent.areaM2().getAsDouble();
        return method.minutes().squareMetre().isPresent() ? area * method.minutes().squareMetre().getAsDouble()
                : area * spotsPerSquareMetre * method.minutes().perSpot();
    }
}
