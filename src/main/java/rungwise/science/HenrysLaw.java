package rungwise.science;

/**
 * How readily a gas leaves water: Henry's law constant as solubility, c/p, at 25 °C, and how it falls with warmth,
 * H(T) = H·e^(k·(1/T − 1/298.15 K)) (R. Sander, Compilation of Henry's law constants, Atmos. Chem. Phys. 23, 10901, 2023).
 * It holds for what is dissolved as such, not as ions, in dilute solutions; 0 to 40 °C. Tables of one substance differ by a
 * tenth among the careful ones.
 *
 * @param molPerM3Pa mol in a m³ of water for each Pa above it, over 0
 * @param kelvin     k, 0 or more: a gas is less soluble in warm water
 */
public record HenrysLaw(double molPerM3Pa, double kelvin) {
    private static final double REFERENCE_K = 298.15;
    private static final double LITRES_PER_M3 = 1000;
    private static final double PA_PER_KPA = 1000;

    public HenrysLaw {
        if (!(molPerM3Pa > 0 && kelvin >= 0)) {
            throw new IllegalArgumentException("a solubility is above 0 and does not rise with warmth, not " + molPerM3Pa
                    + " and " + kelvin);
        }
    }

    /** From the unit of air chemistry, mol/l for each atmosphere. */
    public static HenrysLaw ofMolPerLitreAtmosphere(double molPerLitreAtmosphere, double kelvin) {
        return new HenrysLaw(molPerLitreAtmosphere * LITRES_PER_M3 / (Units.ATMOSPHERE_KPA * PA_PER_KPA), kelvin);
    }

    /**
     * Partial pressure over a solution in kPa, c/H(T).
     *
     * @param molar   mol/l that are dissolved as such, 0 or more
     * @param celsius of the solution
     */
    public double kpa(double molar, double celsius) {
        if (!(molar >= 0)) {
            throw new IllegalArgumentException("a concentration is 0 or more, not " + molar);
        }
        double solubility = molPerM3Pa * Math.exp(kelvin * (1 / Units.kelvin(celsius) - 1 / REFERENCE_K));
        return molar * LITRES_PER_M3 / solubility / PA_PER_KPA;
    }

    /** The same as ppm of the air right over it: more than that no room comes to. */
    public double ppm(double molar, double celsius) {
        return Units.ppmOfKpa(kpa(molar, celsius));
    }

    /**
     * Share of what a wet film holds that leaves it in a time: the flux of a pool at the pressure of the fresh solution,
     * until all is gone. The film takes no longer to give it up than this, as it weakens and holds back.
     *
     * @param gramsPerMol molar mass of the gas
     * @param molar       mol/l dissolved as such
     * @param gramsPerM2  what the film holds of it, ions included, above 0
     * @param windMs      air speed along the film
     * @param seconds     0 or more
     */
    public double leaves(double gramsPerMol, double molar, double gramsPerM2, double celsius, double windMs, double seconds) {
        return Math.min(1, Evaporation.flux(windMs, gramsPerMol, kpa(molar, celsius), celsius) * seconds / gramsPerM2);
    }
}
