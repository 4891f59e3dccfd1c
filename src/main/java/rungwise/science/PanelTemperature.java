package rungwise.science;

/**
 * Temperature of a body panel worked out from air, sun and wind: the sol-air temperature
 * t = t_air + α·E/h_o − ε·ΔR/h_o (ASHRAE Handbook Fundamentals, nonresidential cooling loads).
 *
 * <p>α is 0.9 for dark, 0.6 for medium and 0.3 for light paint; h_o runs from 17 W/m²K in still air to 20 W/m²K in a
 * breeze. Both are fitted: a thermal camera read 71, 63, 54 and 44 °C on a black, dark silver, light silver and white
 * bonnet in the same sun (motoring news report), which this meets within 8 K for air of 32 °C.
 */
public final class PanelTemperature {
    /** Clear sky near noon on the face turned to it, W/m². */
    public static final double DIRECT_SUN_W_M2 = 900;
    public static final double OVERCAST_W_M2 = 150;
    /** What a face turned to a clear sky loses to it by long-wave radiation (ASHRAE: 63 W/m² over h_o, ε 1). */
    public static final double SKY_LOSS_K = 3.9;
    private static final double STILL_AIR = 17;
    private static final double BREEZE = 20;
    private static final double BREEZE_MS = 5;

    private PanelTemperature() {
    }

    /** Which way a panel faces. */
    public enum Facing {
        /** Bonnet, roof, boot lid: it looks at the sky. */
        HORIZONTAL,
        /** Door, wing, sill: it looks at warm ground as much as at the sky, and the two even out. */
        VERTICAL
    }

    /**
     * The formula itself.
     *
     * @param airC                air temperature in °C, −40 to 60
     * @param irradianceWM2       total sunlight on the face, 0 to 1200 W/m²
     * @param absorptanceOverFilm α/h_o in m²K/W, 0.01 to 0.06
     * @param longWaveK           ε·ΔR/h_o in K: {@link #SKY_LOSS_K} facing a clear sky, 0 else
     * @return °C
     */
    public static double solAir(double airC, double irradianceWM2, double absorptanceOverFilm, double longWaveK) {
        return airC + absorptanceOverFilm * irradianceWM2 - longWaveK;
    }

    /**
     * Heat given to the air, W/m²K: 17 in still air, 20 from 5 m/s, between them a straight line. It is held at 20, so
     * that no wind promises a cool panel.
     *
     * @param windMs wind in m/s, 0 or more; unknown = 0, the hotter
     */
    public static double filmCoefficient(double windMs) {
        return STILL_AIR + (BREEZE - STILL_AIR) * Math.min(1, Math.max(0, windMs) / BREEZE_MS);
    }

    /**
     * A panel in the sun. The sky cools a horizontal face only under a clear sky: cloud and roof radiate back.
     *
     * @param airC       air temperature in °C, −40 to 60
     * @param sun        direct, overcast or shade
     * @param absorption share of sunlight taken up, 0 to 1
     * @param windMs     wind in m/s, 0 or more
     * @param facing     unknown: vertical, the hotter
     * @return °C
     */
    public static double celsius(double airC, String sun, double absorption, double windMs, Facing facing) {
        double sky = sun.equals("direct") && facing == Facing.HORIZONTAL ? SKY_LOSS_K : 0;
        return solAir(airC, irradiance(sun), absorption / filmCoefficient(windMs), sky);
    }

    /** Sunlight in W/m² for a word. */
    public static double irradiance(String sun) {
        return switch (sun) {
            case "direct" -> DIRECT_SUN_W_M2;
            case "overcast" -> OVERCAST_W_M2;
            default -> 0;
        };
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
