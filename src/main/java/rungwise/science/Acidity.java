package rungwise.science;

import java.util.List;

/**
 * pH from a charge balance: the pH at which positive and negative charges in the water are equal, found by halving.
 * Dilute solutions at 25 °C, activities taken as concentrations (good to about 0.1 pH below 0.1 mol/l); water's ion
 * product is 10⁻¹⁴. Constants: any handbook's table of dissociation constants.
 */
public final class Acidity {
    private static final double WATER_PK = 14;
    private static final double LOWEST = -2;
    private static final double HIGHEST = 16;
    /** Carbonic acid's constants at 25 °C, for tap-water alkalinity. */
    private static final List<Double> CARBONIC = List.of(6.35, 10.33);
    /** Carbon dioxide that air keeps dissolved in water, mol/l: what makes pure water drift to about pH 5.6. */
    public static final double AIR_CARBON_DIOXIDE_M = 1.3e-5;
    /** Film that clings to an upright panel, litres a square metre; common practice. */
    public static final double CLINGS_L_M2 = 0.05;

    private Acidity() {
    }

    /**
     * Something dissolved that gives or takes protons.
     *
     * @param molar      mol/l, 0 or more
     * @param pKa        constants from the first proton on, rising; a strong acid has −3
     * @param freeCharge charge of the form that holds every proton: 0 for an acid, +1 for the cation of a base
     * @param counter    charges a mole brings in that take no part (Na⁺ of a salt +1, Cl⁻ of a chloride −1)
     */
    public record Solute(double molar, List<Double> pKa, int freeCharge, double counter) {
        public Solute {
            if (!(molar >= 0)) {
                throw new IllegalArgumentException("a concentration is 0 or more, not " + molar);
            }
            pKa = List.copyOf(pKa);
        }

        public static Solute acid(double molar, List<Double> pKa) {
            return new Solute(molar, pKa, 0, 0);
        }

        /** The salt of an acid whose first n protons are replaced by sodium or the like. */
        public static Solute salt(double molar, List<Double> pKa, int replaced) {
            return new Solute(molar, pKa, 0, replaced);
        }

        public static Solute strongAcid(double molar) {
            return new Solute(molar, List.of(), 0, -1);
        }

        public static Solute strongBase(double molar) {
            return new Solute(molar, List.of(), 0, 1);
        }

        /** A weak base by the constant of its conjugate acid: the neutral base takes one proton. */
        public static Solute base(double molar, double conjugatePKa) {
            return new Solute(molar, List.of(conjugatePKa), 1, 0);
        }

        public Solute thinned(double share) {
            return new Solute(molar * share, pKa, freeCharge, counter);
        }

        /**
         * Share that carries no charge, and so may leave the water as a gas.
         *
         * @param acidity pH of the water
         * @return 0 for what is always there as ions
         */
        public double uncharged(double acidity) {
            if (freeCharge < 0 || freeCharge > pKa.size() || pKa.isEmpty()) {
                return 0;
            }
            double weight = 1;
            double sum = 1;
            double neutral = freeCharge == 0 ? 1 : 0;
            for (int i = 0; i < pKa.size(); i++) {
                weight *= Math.pow(10, acidity - pKa.get(i));
                sum += weight;
                neutral = i + 1 == freeCharge ? weight : neutral;
            }
            return neutral / sum;
        }

        /** Mean charge per mole, counter ions included. */
        double charge(double acidity) {
            double weight = 1;
            double sum = 1;
            double lost = 0;
            for (int i = 0; i < pKa.size(); i++) {
                weight *= Math.pow(10, acidity - pKa.get(i));
                sum += weight;
                lost += (i + 1) * weight;
            }
            return freeCharge - lost / sum + counter;
        }
    }

    /**
     * pH of a mixture.
     *
     * @param solutes what is dissolved; none = pure water, pH 7
     */
    public static double acidity(List<Solute> solutes) {
        double low = LOWEST;
        double high = HIGHEST;
        for (int i = 0; i < 80; i++) {
            double middle = (low + high) / 2;
            double charge = Math.pow(10, -middle) - Math.pow(10, middle - WATER_PK);
            for (Solute solute : solutes) {
                charge += solute.molar() * solute.charge(middle);
            }
            if (charge > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /**
     * pH of a buffer, pKa + log₁₀(base/acid) (Henderson–Hasselbalch); good while both far exceed 10⁻ᵖᴴ.
     *
     * @param pKa       of the pair
     * @param baseMolar mol/l, above 0
     * @param acidMolar mol/l, above 0
     */
    public static double buffer(double pKa, double baseMolar, double acidMolar) {
        return pKa + Math.log10(baseMolar / acidMolar);
    }

    /**
     * Share left after n rinses, (v/(v+V))ⁿ.
     *
     * @param carriedOver v: what clings, in any unit, above 0
     * @param rinseVolume V: fresh water of one rinse, same unit, 0 or more
     * @param rinses      n, 0 or more
     */
    public static double left(double carriedOver, double rinseVolume, int rinses) {
        return Math.pow(carriedOver / (carriedOver + rinseVolume), rinses);
    }

    /** Tap water: alkalinity as bicarbonate in mol/l, with the dissolved carbon dioxide that gives it its pH. */
    public record TapWater(double alkalinityM, double acidity) {
        /** No buffer at all: rain or osmosis water, drifting to where the carbon dioxide of air takes it. */
        public static final TapWater UNBUFFERED = new TapWater(0, Double.NaN);

        List<Solute> solutes() {
            if (alkalinityM == 0) {
                return List.of(Solute.acid(AIR_CARBON_DIOXIDE_M, CARBONIC));
            }
            // total carbonate of which the charge at this pH is the alkalinity
            double perMole = -Solute.acid(1, CARBONIC).charge(acidity);
            double hydroxide = Math.pow(10, acidity - WATER_PK) - Math.pow(10, -acidity);
            double total = (alkalinityM - hydroxide) / perMole;
            return List.of(new Solute(total, CARBONIC, 0, alkalinityM / total));
        }
    }

    /**
     * pH of the film that clings after n rinses with a water: the agent thinned, the rest of the film rinse water.
     */
    public static double afterRinses(List<Solute> agent, double carriedOver, double rinseVolume, int rinses,
                                     TapWater water) {
        double left = left(carriedOver, rinseVolume, rinses);
        List<Solute> film = new java.util.ArrayList<>();
        agent.forEach(s -> film.add(s.thinned(left)));
        water.solutes().forEach(s -> film.add(s.thinned(1 - left)));
        return acidity(film);
    }

    /**
     * The fewest rinses after which the film is within a tolerance of the rinse water's own pH.
     *
     * @param within pH units, above 0
     * @param most   give up beyond this many
     * @return rinses, or most + 1 where that many are not enough
     */
    public static int rinsesEnough(List<Solute> agent, double carriedOver, double rinseVolume, TapWater water,
                                   double within, int most) {
        double water0 = acidity(water.solutes());
        int n = 0;
        while (n <= most && Math.abs(afterRinses(agent, carriedOver, rinseVolume, n, water) - water0) > within) {
            n++;
        }
        return n;
    }
}
