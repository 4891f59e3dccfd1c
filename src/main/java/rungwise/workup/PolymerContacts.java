package rungwise.workup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.Polymer;
import rungwise.knowledge.chemistry.Solute;
import rungwise.knowledge.decision.DecisionId;
import rungwise.rules.use.PolymerContact;
import rungwise.rules.use.Use;
import rungwise.science.Solubility;

/** Solvents against what a surface is made of, as facts for the rules: its own polymers, and those that stand in. */
public final class PolymerContacts {
    private PolymerContacts() {
    }

    /** At most one contact with the surface's own polymers and one with stand-ins: the worst of each. */
    public static List<PolymerContact> of(Use use, KnowledgeBase base) {
        List<PolymerContact> worst = new ArrayList<>();
        if (!use.surface().polymers().isEmpty() && !use.agent().composition().isEmpty()) {
            for (boolean proxy : new boolean[]{false, true}) {
                all(use, base).stream().filter(c -> c.proxy() == proxy)
                        .min(Comparator.comparingDouble(PolymerContact::red).thenComparing(c -> c.component().id())
                                .thenComparing(c -> c.material().id())).ifPresent(worst::add);
            }
        }
        return worst;
    }

    public static List<PolymerContact> all(Use use, KnowledgeBase base) {
        List<PolymerContact> all = new ArrayList<>();
        for (Organics.Share share : Organics.of(use.agent(), base).from(base.decisions().value(DecisionId.SOLVENT_COUNTS))) {
            for (Polymer polymer : use.surface().polymers()) {
                Solute material = base.solutes().get(polymer.sphere());
                double red = Solubility.interval(share.substance().hansen(),
                        material.spheres().stream().map(Solute.Fit::sphere).toList()).low();
                all.add(new PolymerContact(use, share.substance(), share.percent(), material, red, polymer.proxy()));
            }
        }
        return all;
    }
}
