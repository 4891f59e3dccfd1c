package rungwise.knowledge.method;

/** The five anchored chances that one correct attempt visibly removes the whole deposit. */
public enum Chance {
    VU(0.03), U(0.15), P(0.40), L(0.70), VL(0.92);

    private final double probability;

    Chance(double probability) {
        this.probability = probability;
    }

    public double probability() {
        return probability;
    }
}
