package rungwise.rules;

import rungwise.knowledge.Figures;
import rungwise.science.Acidity;
import rungwise.science.Hardness;

/**
 * The water that rinses.
 *
 * @param hardnessMgL as calcium carbonate
 * @param told        false where nobody told it and a hard one is reckoned with
 */
public record Water(double hardnessMgL, boolean told) {
    /** The upper end of hard. */
    public static final Water UNTOLD = new Water(Hardness.HARD.upToMgL(), false);

    /** Whether drops that dry on the outside of a vehicle leave marks worth speaking of. */
    public boolean leavesMarks(boolean inside) {
        return !inside && Hardness.of(hardnessMgL).isHard();
    }

    public String figures() {
        return "water " + Figures.text(hardnessMgL) + " mg/l hard as lime, " + Hardness.of(hardnessMgL).words()
                + (told ? "" : " (not told)") + ": what clings to a square metre leaves "
                + Figures.text(Math.round(Hardness.leftMgM2(hardnessMgL, Acidity.CLINGS_L_M2))) + " mg of lime";
    }
}
