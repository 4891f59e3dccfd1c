package rungwise.knowledge.decision;

import java.util.Locale;

/**
 * Every assumption that the program asks for. What each says, and how much it is, stands in assumptions.yaml; loading holds the two against
 * each other.
 */
public enum AssumptionId {
    AIR_TEMPERATURE, WARMEST_PANEL, PANEL_COLOUR, SUN, SUN_HOURS, OBSERVER_ERRS, MARK_LEFT, AREA_OF_A_SPOT, WHOLE_SHIFT, ML_PER_SPOT, ML_PER_SQUARE_METRE,
    QUICKEST_PACE, CLOSED_BAY_VOLUME, CLOSED_BAY_CHANGES, BAY_MIXING, REACH_OF_HANDS, INDOOR_DRIFT, AVERAGING_TIME, STUBBORN_SPOTS,
    OPEN_GATE, VAPOUR_TEMPERATURE, AIR_HUMIDITY, HUMIDITY_WITHIN, STILL_AIR_LEAST, STILL_AIR_MOST,
    GUSTS, UPPER_EDGE_NEAR, UPPER_EDGE_FAR, SMALLEST_PATCH, THIN_LIQUID_LEAST, THIN_LIQUID_MOST,
    THIN_LIQUID_VISCOSITY, HANDS_IN_IT, PASS_OF_WATER, TAP_ALKALINITY, LEAST_ALKALINITY, TAP_ACIDITY,
    CHANCE_WHERE_IT_DISSOLVES, CHANCE_WHERE_IT_SWELLS, CHANCE_WHERE_IT_SOFTENS, CHANCE_WHERE_IT_PASSES;

    private final String id = name().toLowerCase(Locale.ROOT).replace('_', '-');

    /** As assumptions.yaml writes it: words joined by hyphens. */
    public String id() {
        return id;
    }
}
