package rungwise.lint;

import java.util.ArrayList;
import java.util.List;
import rungwise.text.Texts;
import rungwise.workup.ChemistryDoubt;

/** A stated chance that the solubility of the deposit contradicts. */
final class ChanceAgainstChemistry implements LadderCheck {
    @Override
    public List<Finding> findings(Probes probes) {
        List<Finding> found = new ArrayList<>();
        for (ChemistryDoubt doubt : ChemistryDoubt.all(probes.known())) {
            found.add(Finding.of("contaminants/" + doubt.contaminant() + ".yaml", doubt.contaminant(), doubt.method(),
                    doubt.words(), Texts.said("lint.against-chemistry.do")));
        }
        return found;
    }
}
