package rungwise.rules.use;

/**
 * A method that only the weather keeps from this spot.
 *
 * @param until        what would lift it, in the words of the bars
 * @param gentlestRung the first rung is likely enough and gentler than this one
 * @param wasTried     it was tried before
 */
public record Waiting(Use use, double chance, double filmMicrons, double dwellMinutes, String until, boolean gentlestRung,
                      boolean wasTried) {
    public String name() {
        return use.method().id();
    }
}
