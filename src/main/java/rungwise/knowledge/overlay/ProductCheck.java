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
import rungwise.knowledge.common.Range;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.OverlayFile;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Method;
import rungwise.text.Near;
import rungwise.text.Texts;

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
            faults.add(fault(id, "id", Texts.said("overlay.taken-id", "id", id), Texts.said("overlay.taken-id.do")));
        }
        Set<String> parts = new TreeSet<>(base.substances().keySet());
        base.exposures().keySet().stream().filter(e -> Worst.isDissolved(e, base)).forEach(parts::add);
        Arrays.stream(Solvent.values()).forEach(s -> parts.add(s.name().toLowerCase(Locale.ROOT)));
        product.composition().keySet().stream().filter(p -> !parts.contains(p)).forEach(p -> faults.add(fault(id,
                "composition", Texts.said("overlay.no-substance", "part", p), Near.to(p, parts))));
        double least = product.composition().values().stream().mapToDouble(Range::from).sum();
        if (least > 100) {
            faults.add(fault(id, "composition", Texts.said("overlay.over-the-whole", "least", least),
                    Texts.said("overlay.over-the-whole.do")));
        }
        product.hazards().stream().filter(h -> !base.hazards().containsKey(h)).forEach(h -> faults.add(fault(id,
                "hazards", Texts.said("overlay.no-hazard", "statement", h),
                Texts.said("overlay.no-hazard.do", "near", Near.to(h, base.hazards().keySet())))));
        product.hazards().stream().filter(h -> base.hazards().containsKey(h)
                && base.hazards().get(h).ppe().contains(SPECIALIST)).forEach(h -> faults.add(fault(id, "hazards",
                        Texts.said("overlay.asks-for-a-specialist", "statement", h, "meaning", base.hazards().get(h).meaning()),
                Texts.said("overlay.asks-for-a-specialist.do"))));
        product.like().ifPresent(like -> like(id, like, faults));
        boolean corrosive = product.hazards().stream().map(base.hazards()::get).anyMatch(h -> h != null && h.corrosive());
        if (product.acidity().isEmpty() && (corrosive || faults.isEmpty() && new Worst(base).agent(product).strongestSolvent() < base.decisions().value(DecisionId.SOLVENT_COUNTS))) {
            faults.add(fault(id, "acidity", corrosive ? Texts.said("overlay.corrosive")
                    : Texts.said("overlay.nothing-to-tell-it-by"),
                    Texts.said("overlay.acidity-missing.do")));
        }
        return faults;
    }

    private void like(String id, String like, List<Fault> faults) {
        Method method = base.methods().get(like);
        if (method == null) {
            faults.add(fault(id, "like", Texts.said("overlay.no-like", "method", like), Near.to(like, base.methods().keySet())));
        } else if (!Likeness.isChemistry(method, base)) {
            faults.add(fault(id, "like", Texts.said("overlay.no-chemistry", "method", like), Texts.said("overlay.no-chemistry.do")));
        }
    }

    private Fault fault(String id, String field, String wrong, String remedy) {
        return new Fault(file, id + " " + field, wrong, remedy);
    }
}
