package rungwise.knowledge.safety;

/** What a glove is made of, in the order in which a shop reaches for them. */
public enum GloveMaterial {
    /** Disposable, about 0.1 mm. */
    NITRILE_THIN("thin disposable nitrile"),
    NITRILE("nitrile"),
    NEOPRENE("neoprene"),
    BUTYL("butyl"),
    NATURAL_RUBBER("natural rubber"),
    VINYL("PVC"),
    LAMINATE("laminate film");

    private final String words;

    GloveMaterial(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
