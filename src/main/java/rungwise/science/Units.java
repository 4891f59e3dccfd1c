package rungwise.science;

/** Conversions of units that published tables mix. */
public final class Units {
    /** Zero Celsius in kelvin, exact by definition. */
    public static final double ZERO_C_IN_K = 273.15;
    /** Standard atmosphere in kPa, exact by definition. */
    public static final double ATMOSPHERE_KPA = 101.325;
    /** Volume of a mole of gas at 25 °C and one atmosphere in litres, as exposure tables use it. */
    public static final double LITRES_PER_MOL_25C = 24.45;
    private static final double MMHG_PER_ATMOSPHERE = 760;

    private Units() {
    }

    public static double kelvin(double celsius) {
        return celsius + ZERO_C_IN_K;
    }

    public static double celsiusOfFahrenheit(double fahrenheit) {
        return (fahrenheit - 32) / 1.8;
    }

    /** Millimetres of mercury, 760 to the atmosphere. */
    public static double mmHgOfKpa(double kpa) {
        return kpa * MMHG_PER_ATMOSPHERE / ATMOSPHERE_KPA;
    }

    public static double kpaOfMmHg(double mmHg) {
        return mmHg * ATMOSPHERE_KPA / MMHG_PER_ATMOSPHERE;
    }

    /**
     * mg/m³ = ppm·M/24.45 at 25 °C and one atmosphere (NIOSH Pocket Guide).
     *
     * @param gramsPerMol molar mass, above 0
     */
    public static double milligramsPerCubicMetre(double ppm, double gramsPerMol) {
        return ppm * gramsPerMol / LITRES_PER_MOL_25C;
    }

    /** The other way round of {@link #milligramsPerCubicMetre}. */
    public static double ppm(double milligramsPerCubicMetre, double gramsPerMol) {
        return milligramsPerCubicMetre * LITRES_PER_MOL_25C / gramsPerMol;
    }

    /** mg/m³ of a vapour at its partial pressure: Dalton's share of the atmosphere in ppm, then as above. */
    public static double ppmOfKpa(double kpa) {
        return kpa / ATMOSPHERE_KPA * 1e6;
    }
}
