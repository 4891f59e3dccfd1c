package rungwise.knowledge.deposit;

/**
 * A kind of sign: one question that somebody answers who looks.
 *
 * @param errs   how many times as often as usual somebody errs who names one of its words
 * @param silent share that has nothing to say where the deposit calls for none of its words; 0 where everything has one
 */
public record SignGroup(String id, String meaning, double errs, double silent) {
    public SignGroup {
        errs = errs == 0 ? 1 : errs;
    }

    /** Whether everything has exactly one of its words, as a colour. */
    public boolean isWhole() {
        return silent == 0;
    }
}
