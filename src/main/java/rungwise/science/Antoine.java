package rungwise.science;

/**
 * Antoine's equation log10 P = a − b/(t + c), P in kPa, t in °C, as tabulated by Poling, Prausnitz and O'Connell (The
 * Properties of Gases and Liquids, 5th ed.), Landolt-Börnstein IV/20 and the NIST Chemistry WebBook.
 *
 * @param fromC lowest temperature the constants were fitted to; outside the range the result is an extrapolation
 * @param toC   highest temperature the constants were fitted to
 */
public record Antoine(double a, double b, double c, double fromC, double toC) {
    public Antoine {
        if (fromC > toC) {
            throw new IllegalArgumentException("valid from " + fromC + " to " + toC + " °C runs backwards");
        }
    }

    /** Vapour pressure in kPa at a temperature above −c °C. */
    public double kpa(double celsius) {
        return Math.pow(10, a - b / (celsius + c));
    }

    /** Boiling point in °C at one atmosphere: b/(a − log10 101.325) − c. */
    public double boilingC() {
        return b / (a - Math.log10(Units.ATMOSPHERE_KPA)) - c;
    }

    public boolean isWithin(double celsius) {
        return celsius >= fromC && celsius <= toC;
    }

    /**
     * Constants through two points: log P is straight in 1/T (Clausius and Clapeyron, heat of vaporisation constant).
     * For substances of which only one vapour pressure and the boiling point are published.
     *
     * @param coolC  temperature of the first point in °C
     * @param coolKpa vapour pressure there, above 0
     * @param warmC  a higher temperature in °C
     * @param warmKpa vapour pressure there, above the first
     */
    public static Antoine through(double coolC, double coolKpa, double warmC, double warmKpa) {
        if (!(coolC < warmC && coolKpa > 0 && coolKpa < warmKpa)) {
            throw new IllegalArgumentException("vapour pressure rises with temperature; the two points do not");
        }
        double slope = Math.log10(warmKpa / coolKpa)
                / (1 / Units.kelvin(coolC) - 1 / Units.kelvin(warmC));
        return new Antoine(Math.log10(coolKpa) + slope / Units.kelvin(coolC), slope, Units.ZERO_C_IN_K, coolC, warmC);
    }
}
