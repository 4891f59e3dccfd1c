package rungwise.science;

import java.util.stream.IntStream;

/**
 * Vapour in a bay. One box of air, mixed but for a factor K′, and a near field around the hands (ACGIH Industrial
 * Ventilation, general ventilation; AIHA Mathematical Models for Estimating Occupational Exposure, 2009). Air at
 * 25 °C and 101.3 kPa, where a mole takes 24.45 l.
 */
public final class BayAir {
    /** Litres a mole of gas takes at 25 °C. */
    public static final double MOLAR_LITRES = 24.45;
    private static final double PPM_PER_PERCENT = 10_000;

    private BayAir() {
    }

    /** mg/m³ as ppm: mg/m³ · 24.45 / M. */
    public static double ppm(double mgM3, double molarMassGMol) {
        return mgM3 * MOLAR_LITRES / molarMassGMol;
    }

    /** ppm as mg/m³: ppm · M / 24.45. */
    public static double mgM3(double ppm, double molarMassGMol) {
        return ppm * molarMassGMol / MOLAR_LITRES;
    }

    /**
     * A room with something evaporating in it.
     *
     * @param volumeM3         above 0
     * @param airChangesPerHour 0 or more
     * @param mixing           K′, 0.1 (dead corners) to 1 (mixed at once)
     * @param emissionGMin     0 or more
     */
    public record Room(double volumeM3, double airChangesPerHour, double mixing, double emissionGMin) {
        public Room {
            if (!(volumeM3 > 0 && airChangesPerHour >= 0 && mixing > 0 && mixing <= 1 && emissionGMin >= 0)) {
                throw new IllegalArgumentException("a room needs volume, air changes of 0 or more, a mixing factor "
                        + "over 0 and up to 1, and an emission of 0 or more");
            }
        }

        /** K′·Q in m³/min. */
        double airM3Min() {
            return mixing * airChangesPerHour * volumeM3 / 60;
        }

        /**
         * C(t) = G/(K′Q) · (1 − e^(−K′Qt/V)); without any air change G·t/V.
         *
         * @param minutes 0 or more
         * @return mg/m³
         */
        public double mgM3After(double minutes) {
            double air = airM3Min();
            double turns = air * minutes / volumeM3;
            // 1 − e^(−x) is x for small x, and stays exact that way down to no air change at all
            return turns < 1e-9 ? 1000 * emissionGMin * minutes / volumeM3
                    : 1000 * emissionGMin / air * -Math.expm1(-turns);
        }

        /** G/(K′Q) in mg/m³, infinite without any air change. */
        public double steadyMgM3() {
            return emissionGMin == 0 ? 0 : 1000 * emissionGMin / airM3Min();
        }

        /** Minutes until 95 % of steady state is reached, and until 95 % is gone once the source has gone: V/(K′Q)·ln 20. */
        public double minutesToNinetyFivePercent() {
            return volumeM3 / airM3Min() * Math.log(20);
        }

        Room aired(double airChanges) {
            return new Room(volumeM3, airChanges, mixing, emissionGMin);
        }
    }

    /**
     * What the near field adds, G/β with β half the surface of the zone times the speed of the air in it.
     *
     * @param emissionGMin G
     * @param surfaceM2    free surface of the zone around the work, above 0
     * @param airMS        air speed through it, above 0: 0.06 m/s indoors
     * @return mg/m³
     */
    public static double nearFieldMgM3(double emissionGMin, double surfaceM2, double airMS) {
        return 1000 * emissionGMin / (0.5 * surfaceM2 * airMS * 60);
    }

    /**
     * Additive rule: Σ C/L, 1 is the limit of the mixture (29 CFR 1910.1000(d)(2)).
     *
     * @param concentrations in the units of the limits
     */
    public static double shareOfLimits(double[] concentrations, double[] limits) {
        return IntStream.range(0, concentrations.length).mapToDouble(i -> concentrations[i] / limits[i]).sum();
    }

    /** Mean over a shift: Σ C·t / 8 h (29 CFR 1910.1000(d)(1)). */
    public static double overShift(double[] concentrations, double[] hours) {
        return IntStream.range(0, concentrations.length).mapToDouble(i -> concentrations[i] * hours[i]).sum() / 8;
    }

    /** ppm at a share of a lower flammable limit given in percent by volume. */
    public static double ppmAtShareOfFlammable(double lowerPercent, double share) {
        return lowerPercent * PPM_PER_PERCENT * share;
    }

    /** Share of the lower flammable limit, 1 = it burns. */
    public static double shareOfFlammable(double ppm, double lowerPercent) {
        return ppm / (lowerPercent * PPM_PER_PERCENT);
    }

    /**
     * Fresh air that keeps a steady emission at a concentration, G/(K′·C).
     *
     * @param allowedMgM3 above 0
     * @return m³/min
     */
    public static double airNeededM3Min(double emissionGMin, double mixing, double allowedMgM3) {
        return 1000 * emissionGMin / (mixing * allowedMgM3);
    }

    /**
     * The fewest air changes an hour that keep a room below a concentration while the work lasts.
     *
     * @param allowedMgM3 what the room may reach; 0 or less cannot be kept
     * @param minutes     how long it evaporates
     * @return air changes an hour; 0 where none are needed, infinite where no airing is enough
     */
    public static double airChangesNeeded(Room room, double allowedMgM3, double minutes) {
        if (room.aired(0).mgM3After(minutes) <= allowedMgM3) {
            return 0;
        }
        if (allowedMgM3 <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        double low = 0;
        double high = 60 * airNeededM3Min(room.emissionGMin(), room.mixing(), allowedMgM3) / room.volumeM3();
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (room.aired(middle).mgM3After(minutes) > allowedMgM3) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
