package rungwise.science;

import java.util.List;
import java.util.Optional;

/**
 * How fast a wet film loses vapour.
 *
 * <p>Flux of a pool: US EPA 550-B-99-009, Risk Management Program Guidance for Offsite Consequence Analysis, appendix D,
 * 0.0035·U^0.78·M^(2/3)·P/T lb/min/ft² with P in mmHg, here in g/m²/s. Against listed evaporation rates it is 0.85 to 1.5
 * times for substances under 1.5 kPa and 1.4 to 2.5 times for volatile ones, whose film cools itself. Substances above
 * 3 kPa at 20 °C therefore go by their listed rate against n-butyl acetate (ASTM D 3539), where one is listed.
 */
public final class Evaporation {
    /** Above this vapour pressure at 20 °C a film cools itself too much for the flux, in kPa. */
    public static final double VOLATILE_FROM_KPA = 3;
    /** lb/min/ft² in g/m²/s: 453.592 37 g, 60 s, 0.092 903 04 m², all exact. */
    private static final double EPA_IN_SI = 0.0035 * 453.59237 / 60 / 0.09290304;

    private Evaporation() {
    }

    /**
     * A component of a film.
     *
     * @param gramsPerMol   molar mass, above 0
     * @param gramsPerCm3   density, above 0
     * @param vapour        vapour pressure against temperature
     * @param relativeRate  evaporation rate with n-butyl acetate as 1; 0 = none listed
     * @param isWater       held back by the water that is in the air already
     * @param besideWater   activity coefficients beside water; without them it is taken as ideal
     */
    public record Component(double gramsPerMol, double gramsPerCm3, Antoine vapour, double relativeRate,
                            boolean isWater, Optional<VanLaar> besideWater) {
        public Component(double gramsPerMol, double gramsPerCm3, Antoine vapour, double relativeRate, boolean isWater) {
            this(gramsPerMol, gramsPerCm3, vapour, relativeRate, isWater, Optional.empty());
        }

        /** Whether it goes by its listed rate. Decided at 20 °C, so that warming a film never slows it. */
        public boolean isVolatile() {
            return relativeRate > 0 && vapour.kpa(20) > VOLATILE_FROM_KPA;
        }
    }

    /**
     * The air over the film.
     *
     * @param celsius  temperature of the film, −20 to 90 °C
     * @param windMs   air speed along it, above 0: at 0 the formula knows no loss at all
     * @param humidity share of saturation at the film's temperature, 0 to 1
     */
    public record Air(double celsius, double windMs, double humidity) {
    }

    /**
     * J = 0.2848·U^0.78·M^(2/3)·P/T in g/m²/s, with P in mmHg and T in K.
     *
     * @param windMs      air speed, 0 or more
     * @param gramsPerMol molar mass, above 0
     * @param kpa         partial vapour pressure over the film, 0 or more
     * @param celsius     temperature of the film
     */
    public static double flux(double windMs, double gramsPerMol, double kpa, double celsius) {
        return EPA_IN_SI * Math.pow(windMs, 0.78) * Math.pow(gramsPerMol, 2.0 / 3) * Units.mmHgOfKpa(kpa)
                / Units.kelvin(celsius);
    }

    /**
     * Loss of one component in g/m²/s, by Raoult's law: its share of the vapour pressure of the pure substance.
     *
     * @param activity     mole fraction times activity coefficient, 0 or more
     * @param reference    n-butyl acetate, against which listed rates are
     */
    public static double loss(Component component, double activity, Air air, Component reference) {
        return loss(component, activity, air, pure(component, air, reference));
    }

    /** The same from {@link #pure}, which stays as it is while a film dries. */
    static double loss(Component component, double activity, Air air, double pure) {
        return (component.isWater() ? Math.max(0, activity - air.humidity()) : activity) * pure;
    }

    /** Loss of the pure component into air that holds none of it, in g/m²/s. */
    static double pure(Component component, Air air, Component reference) {
        if (component.isVolatile()) {
            return component.relativeRate() * component.gramsPerCm3() * flux(air.windMs(), reference.gramsPerMol(),
                    reference.vapour().kpa(air.celsius()), air.celsius()) / reference.gramsPerCm3();
        }
        return flux(air.windMs(), component.gramsPerMol(), component.vapour().kpa(air.celsius()), air.celsius());
    }

    /**
     * Vapour pressure over a mixture, ΣxᵢPᵢ in kPa (Raoult).
     *
     * @param moleFractions as many as vapours, together 1
     */
    public static double raoultKpa(List<Antoine> vapours, List<Double> moleFractions, double celsius) {
        double sum = 0;
        for (int i = 0; i < vapours.size(); i++) {
            sum += moleFractions.get(i) * vapours.get(i).kpa(celsius);
        }
        return sum;
    }

    /**
     * Water lost by a pool in kg/h: (25 + 19·v)·A·(x_s − x), the engineering rule for open water at room temperature.
     *
     * @param windMs       air speed, 0 to about 1
     * @param areaM2       area
     * @param saturated    kg water per kg dry air at saturation
     * @param present      kg water per kg dry air in the room
     */
    public static double waterKgPerHour(double windMs, double areaM2, double saturated, double present) {
        return (25 + 19 * windMs) * areaM2 * (saturated - present);
    }
}
