package rungwise.knowledge;

/** The four columns in which a surface states its solvent tolerance. */
public enum SolventColumn {
    /** Ethanol, isopropanol. */
    ALCOHOL,
    /** Aliphatic petroleum, naphtha, mineral oil. */
    ALIPHATIC,
    /** Terpenes, esters and glycol ethers. */
    TERPENE_ESTER,
    /** Ketones, lacquer thinner, aromatics. */
    KETONE_AROMATIC
}
