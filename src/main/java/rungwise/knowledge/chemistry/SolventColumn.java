package rungwise.knowledge.chemistry;

/** The five columns in which a surface states its solvent tolerance. */
public enum SolventColumn {
    /** Ethanol, isopropanol. */
    ALCOHOL,
    /** Aliphatic petroleum, naphtha. */
    ALIPHATIC,
    /** Mineral and vegetable oil, petroleum jelly: far weaker solvents that stay far longer. */
    OIL,
    /** Terpenes, esters and glycol ethers. */
    TERPENE_ESTER,
    /** Ketones, lacquer thinner, aromatics. */
    KETONE_AROMATIC
}
