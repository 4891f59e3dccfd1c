package rungwise.knowledge;

import java.util.Locale;

/** Every assumption that the program asks for. What each says and how much it is stands in assumptions.yaml; loading holds the two against each other. */
public enum AssumptionId {
    AIR_TEMPERATURE,
    WARMEST_PANEL,
    PANEL_COLOUR,
    SUN;

    /** As its file writes it: {@code AIR_TEMPERATURE} is {@code air-temperature}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
