package rungwise.ladder;

import rungwise.knowledge.Chance;
import rungwise.knowledge.Contaminant;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Method;
import rungwise.knowledge.Surface;
import rungwise.knowledge.Verdict;
import rungwise.rules.PolymerContact;
import rungwise.rules.Use;
import rungwise.science.Solubility;

/**
 * How much of what the trade says of solvents is computed, or confirmed by computation, where there are figures.
 *
 * @param chances    solvent chances, by contaminant and method, for which there is a sphere and a composition
 * @param computed   of these, computed as nobody had stated one
 * @param confirmed  of these, stated and within one grade of what is computed, for fresh and for hardened
 * @param verdicts   what surfaces say of each organic component, where there is a sphere
 * @param agreed     of these, in agreement with the chemistry
 */
public record ChemistryShare(int chances, int computed, int confirmed, int verdicts, int agreed) {
    static ChemistryShare of(KnowledgeBase known) {
        int chances = 0;
        int computed = 0;
        int confirmed = 0;
        ComputedChances completed = ComputedChances.of(known);
        for (Contaminant contaminant : completed.base().contaminants().values()) {
            for (Method method : known.methods().values()) {
                Organics organics = Organics.of(known.agentOf(method), known);
                var young = ComputedChances.estimate(contaminant, contaminant.bond().fresh(), organics, known);
                var old = ComputedChances.estimate(contaminant, contaminant.bond().hardened(), organics, known);
                if (!ComputedChances.dissolves(method) || young.isEmpty() || old.isEmpty()) {
                    continue;
                }
                chances++;
                if (completed.isComputed(contaminant.id(), method.id())) {
                    computed++;
                } else if (near(contaminant.chances(method).fresh(), young.get().chances().fresh())
                        && near(contaminant.chances(method).hardened(), old.get().chances().hardened())) {
                    confirmed++;
                }
            }
        }
        int verdicts = 0;
        int agreed = 0;
        for (Surface surface : known.surfaces().values()) {
            for (Method method : known.methods().values()) {
                for (PolymerContact contact : PolymerContacts.all(new Use(method, known.agentOf(method),
                        known.toolOf(method), surface), known)) {
                    verdicts++;
                    Verdict said = surface.limit(contact.component().solvent().orElseThrow().column()).verdict();
                    agreed += agrees(said, Solubility.band(contact.red())) ? 1 : 0;
                }
            }
        }
        return new ChemistryShare(chances, computed, confirmed, verdicts, agreed);
    }

    private static boolean near(Chance one, Chance other) {
        return Math.abs(one.ordinal() - other.ordinal()) <= 1;
    }

    /** A ban where the solvent is near, a leave where it is outside, a trial in between or on either side of it. */
    private static boolean agrees(Verdict said, Solubility.Band band) {
        return switch (said) {
            case OK -> band == Solubility.Band.SLOW || band == Solubility.Band.PASSES;
            case TEST -> band != Solubility.Band.DISSOLVES;
            case NO, BAR -> band != Solubility.Band.PASSES;
        };
    }

    /** As a line for a person. */
    public String words() {
        return "Chemistry: of " + chances + " solvent chances with figures " + computed + " are computed and " + confirmed
                + " confirmed (" + share(computed + confirmed, chances) + " %); of " + verdicts
                + " solvent verdicts of surfaces " + agreed + " are confirmed (" + share(agreed, verdicts) + " %).";
    }

    private static long share(int part, int whole) {
        return whole == 0 ? 0 : Math.round(100.0 * part / whole);
    }
}
