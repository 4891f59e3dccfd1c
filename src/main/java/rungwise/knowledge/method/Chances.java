package rungwise.knowledge.method;

/** What a method can do for a fresh and for a hardened deposit. */
public record Chances(Chance fresh, Chance hardened) {
    public static final Chances NONE = new Chances(Chance.VU, Chance.VU);

    public Chance of(boolean hardenedNow) {
        return hardenedNow ? hardened : fresh;
    }

    /** Whether it is likelier to do something once the deposit has hardened, as where that changes how it holds. */
    public boolean gainsWithAge() {
        return hardened.compareTo(fresh) > 0;
    }
}
