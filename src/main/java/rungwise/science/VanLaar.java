package rungwise.science;

/**
 * How much more a solvent and water want out of a mixture than their shares say: van Laar's equation, as tabulated in
 * Perry's Chemical Engineers' Handbook (activity coefficients of binaries). Fitted near the boiling point; in a cooler
 * film an alcohol's own coefficient is lower, so that it errs towards more vapour and a shorter time wet.
 *
 * @param a ln of the solvent's coefficient where there is hardly any of it, above 0
 * @param b ln of water's where there is hardly any water, above 0
 */
public record VanLaar(double a, double b) {
    public VanLaar {
        if (!(a > 0 && b > 0)) {
            throw new IllegalArgumentException("van Laar's equation needs two constants above 0, not " + a + " and " + b);
        }
    }

    /**
     * Activity coefficient of the solvent, e^(a·(b·x_w/(a·x_s + b·x_w))²).
     *
     * @param solvent moles of it, 0 or more
     * @param water   moles of water, 0 or more; not both 0
     */
    public double ofSolvent(double solvent, double water) {
        double share = b * water / (a * solvent + b * water);
        return Math.exp(a * share * share);
    }

    /** Activity coefficient of the water beside it, e^(b·(a·x_s/(a·x_s + b·x_w))²). */
    public double ofWater(double solvent, double water) {
        double share = a * solvent / (a * solvent + b * water);
        return Math.exp(b * share * share);
    }
}
