package rungwise.science;

/**
 * How hot it feels in the shade: Rothfusz's regression with its adjustments (US National Weather Service Technical
 * Attachment SR 90-23, 1990). Made for 80 to 112 °F; below 80 °F a simpler formula. Full sun adds up to 15 °F.
 */
public final class HeatIndex {
    private static final double SIMPLE_BELOW_F = 80;

    private HeatIndex() {
    }

    /**
     * Heat index in °F.
     *
     * @param airF     air temperature in °F, 40 to 130
     * @param humidity relative humidity in percent, 0 to 100
     */
    public static double fahrenheit(double airF, double humidity) {
        // half the simple formula, half the air: the source's first step, and its answer where that stays below 80 °F
        double simple = 0.5 * (airF + 61 + (airF - 68) * 1.2 + humidity * 0.094);
        double averaged = (simple + airF) / 2;
        return averaged < SIMPLE_BELOW_F ? averaged : regression(airF, humidity);
    }

    private static double regression(double t, double r) {
        double index = -42.379 + 2.04901523 * t + 10.14333127 * r - 0.22475541 * t * r - 0.00683783 * t * t
                - 0.05481717 * r * r + 0.00122874 * t * t * r + 0.00085282 * t * r * r - 0.00000199 * t * t * r * r;
        if (r < 13 && t >= 80 && t <= 112) {
            return index - (13 - r) / 4 * Math.sqrt((17 - Math.abs(t - 95)) / 17);
        }
        if (r > 85 && t >= 80 && t <= 87) {
            return index + (r - 85) / 10 * ((87 - t) / 5);
        }
        return index;
    }

    /**
     * The same in °C.
     *
     * @param airC     air temperature in °C, 5 to 54
     * @param humidity share, 0 to 1
     */
    public static double celsius(double airC, double humidity) {
        return (fahrenheit(airC * 9 / 5 + 32, humidity * 100) - 32) * 5 / 9;
    }

    /**
     * A muggy day's humidity where none was measured: 70 %, or that of air with a dew point of 26 °C, whichever is less
     * (Magnus formula, saturation 6.112·e^(17.62 t/(243.12 + t)) hPa, WMO No. 8). Damper air than that is rare anywhere.
     *
     * @param airC −20 to 60
     */
    public static double muggy(double airC) {
        return Math.min(0.7, saturation(26) / saturation(airC));
    }

    private static double saturation(double celsius) {
        return 6.112 * Math.exp(17.62 * celsius / (243.12 + celsius));
    }
}
