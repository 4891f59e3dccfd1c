package rungwise.shoplog;

/**
 * Tries counted together.
 *
 * @param tries    how many, each weighed by the belief in the state at that moment
 * @param cleared  of these, how many cleared the deposit
 * @param expected how many knowledge had expected to
 */
record Tally(double tries, double cleared, double expected) {
    Tally plus(Tally other) {
        return new Tally(tries + other.tries, cleared + other.cleared, expected + other.expected);
    }
}
