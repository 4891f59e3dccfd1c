package rungwise.knowledge.overlay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.Solvent;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.common.Near;
import rungwise.knowledge.common.Range;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.OverlayFile;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Method;

/** What is wrong with a product, beyond what its schema says. */
final class ProductCheck {
    private static final String SPECIALIST = "specialist_only";

    private final KnowledgeBase base;
    private final String file;

    ProductCheck(KnowledgeBase base, String file) {
        this.base = base;
        this.file = file;
    }

    List<Fault> faults(OverlayFile.Product product, Map<String, Method> methods, Map<String, Agent> agents) {
        List<Fault> faults = new ArrayList<>();
        String id = product.id();
        if (methods.containsKey(id) || agents.containsKey(id) || base.tools().containsKey(id) || id.equals("none")) {
            faults.add(fault(id, "id", "\"" + id + "\" is taken already", "give the product an id of its own"));
        }
        Set<String> parts = new TreeSet<>(base.substances().keySet());
        base.exposures().keySet().stream().filter(e -> Worst.isDissolved(e, base)).forEach(parts::add);
        Arrays.stream(Solvent.values()).forEach(s -> parts.add(s.name().toLowerCase(Locale.ROOT)));
        product.composition().keySet().stream().filter(p -> !parts.contains(p)).forEach(p -> faults.add(fault(id,
                "composition", "\"" + p + "\" is no known substance, nothing known to be dissolved and no kind of solvent", Near.to(p, parts))));
        double least = product.composition().values().stream().mapToDouble(Range::from).sum();
        if (least > 100) {
            faults.add(fault(id, "composition", "the lower ends add up to " + Figures.text(least) + " %",
                    "copy the ranges from the sheet; together the lower ends are at most 100 %"));
        }
        product.hazards().stream().filter(h -> !base.hazards().containsKey(h)).forEach(h -> faults.add(fault(id,
                "hazards", "the hazard statement " + h + " is not known, so nothing would follow from it",
                Near.to(h, base.hazards().keySet()) + " Otherwise add it to hazard-statements.yaml")));
        product.hazards().stream().filter(h -> base.hazards().containsKey(h)
                && base.hazards().get(h).ppe().contains(SPECIALIST)).forEach(h -> faults.add(fault(id, "hazards", h
                + " (" + base.hazards().get(h).meaning() + ") asks for a specialist; no protection of a shop is enough",
                "leave the product out, and off the shelf")));
        product.like().ifPresent(like -> like(id, like, faults));
        boolean corrosive = product.hazards().stream().map(base.hazards()::get).anyMatch(h -> h != null && h.corrosive());
        if (product.acidity().isEmpty() && (corrosive || faults.isEmpty() && new Worst(base).agent(product).strongestSolvent() < base.decisions().value(DecisionId.SOLVENT_COUNTS))) {
            faults.add(fault(id, "acidity", corrosive ? "it is corrosive and its pH is not said"
                    : "it holds too little solvent to count and its pH is not said, so nothing can be told of it",
                    "copy the pH range from the sheet"));
        }
        return faults;
    }

    private void like(String id, String like, List<Fault> faults) {
        Method method = base.methods().get(like);
        if (method == null) {
            faults.add(fault(id, "like", "\"" + like + "\" is not a known method", Near.to(like, base.methods().keySet())));
        } else if (!Likeness.isChemistry(method, base)) {
            faults.add(fault(id, "like", like + " does not lay a chemical on and lift it off, so its technique does not "
                    + "fit a product", "name a removal method that works with an agent and a cloth, a brush or nothing"));
        }
    }

    private Fault fault(String id, String field, String wrong, String remedy) {
        return new Fault(file, id + " " + field, wrong, remedy);
    }
}
