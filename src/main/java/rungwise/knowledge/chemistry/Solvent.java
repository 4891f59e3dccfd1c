package rungwise.knowledge.chemistry;

/** Kinds of organic component an agent may hold, each judged in one column of the surface. */
public enum Solvent {
    ALCOHOL(SolventColumn.ALCOHOL),
    ALIPHATIC(SolventColumn.ALIPHATIC),
    OIL(SolventColumn.OIL),
    TERPENE(SolventColumn.TERPENE_ESTER),
    ESTER(SolventColumn.TERPENE_ESTER),
    GLYCOL_ETHER(SolventColumn.TERPENE_ESTER),
    KETONE(SolventColumn.KETONE_AROMATIC),
    AROMATIC(SolventColumn.KETONE_AROMATIC);

    private final SolventColumn column;

    Solvent(SolventColumn column) {
        this.column = column;
    }

    public SolventColumn column() {
        return column;
    }
}
