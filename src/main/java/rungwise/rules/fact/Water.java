package rungwise.rules.fact;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rungwise.science.Acidity;
import rungwise.science.Hardness;
import rungwise.text.Figure;
import rungwise.text.Texts;

/**
 * The water that rinses.
 *
 * @param hardnessMgL as calcium carbonate
 * @param told        false where nobody told it and a hard one is reckoned with
 */
public record Water(double hardnessMgL, boolean told) {
    /** The upper end of hard. */
    public static final Water UNTOLD = new Water(Hardness.HARD.upToMgL(), false);

    public Hardness hardness() {
        return Hardness.of(hardnessMgL);
    }

    public List<Figure> figures() {
        List<Figure> figures = new ArrayList<>(List.of(Figure.of("waterHardness", hardnessMgL, "mg/l"),
                Figure.of("hardnessClass", Texts.said("hardness." + hardness().name().toLowerCase(Locale.ROOT)))));
        if (!told) {
            figures.add(Figure.of("untold", "waterHardness"));
        }
        figures.add(Figure.of("limeLeft", Math.round(Hardness.leftMgM2(hardnessMgL, Acidity.CLINGS_L_M2)), "mg/m²"));
        return List.copyOf(figures);
    }
}
