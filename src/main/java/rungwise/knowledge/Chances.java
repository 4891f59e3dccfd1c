package rungwise.knowledge;

/** What a method can do for a fresh and for a hardened deposit. */
public record Chances(Chance fresh, Chance hardened) {
    public static final Chances NONE = new Chances(Chance.VU, Chance.VU);
}
