package rungwise.knowledge.overlay;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rungwise.knowledge.KnowledgeBase;
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
        Parts parts = new Parts(base);
        product.composition().keySet().stream().filter(p -> !parts.isKnown(p)).forEach(p -> faults.add(fault(id,
                "composition", Texts.said("product.part-unknown", "part", p), Near.to(p, parts.all()))));
        product.function().filter(f -> base.productWords().function(f).isEmpty()).ifPresent(f -> faults.add(fault(id, "function",
                Texts.said("product.function-unknown", "function", f), functions(f))));
        inUse(product, faults);
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
        if (product.acidity().isEmpty() && (corrosive || faults.isEmpty() && !isSolvent(product))) {
            faults.add(fault(id, "acidity", corrosive ? Texts.said("overlay.corrosive")
                    : Texts.said("overlay.nothing-to-tell-it-by"), Texts.said("overlay.acidity-missing.do")));
        }
        return faults;
    }

    private boolean isSolvent(OverlayFile.Product product) {
        return new Worst(base).agent(product, Strength.of(product, base)).strongestSolvent()
                >= base.decisions().value(DecisionId.SOLVENT_COUNTS);
    }

    private String functions(String said) {
        return Near.among(said, base.productWords().functions().values().stream()
                .flatMap(f -> Stream.concat(Stream.of(f.name()), f.alsoCalled().stream())).toList(), Texts.said("product.functions-are"));
    }

    private void inUse(OverlayFile.Product product, List<Fault> faults) {
        product.inUse().ifPresent(use -> {
            if (product.waterParts() == 0) {
                faults.add(fault(product.id(), "inUse", Texts.said("product.in-use-unthinned"), Texts.said("product.say-water")));
            }
            use.composition().keySet().stream().filter(part -> !product.composition().containsKey(part)).forEach(part -> faults.add(
                    fault(product.id(), "inUse/composition", Texts.said("product.in-use-unsold", "part", part),
                            Near.to(part, product.composition().keySet()))));
        });
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
