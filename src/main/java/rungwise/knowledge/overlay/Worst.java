package rungwise.knowledge.overlay;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.Reactive;
import rungwise.knowledge.chemistry.Solvent;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.draft.OverlayFile;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.product.SheetPart;
import rungwise.knowledge.safety.HazardStatement;
import rungwise.text.Texts;

/** A product in use at the worst end of what its sheet says: every solvent at its strongest, pH as wide as stated. */
final class Worst {
    /** pH at which the known acids end and the known alkalis of cleaning strength begin. */
    private static final double ACID_TO = 4;
    private static final double ALKALI_FROM = 10;

    private final KnowledgeBase base;
    private final Parts parts;

    Worst(KnowledgeBase base) {
        this.base = base;
        this.parts = new Parts(base);
    }

    /** Family, residue and sensitisers are still those of nothing: the likeness completes them. */
    Agent agent(OverlayFile.Product product, Strength strength) {
        Map<Solvent, Double> solvents = new EnumMap<>(Solvent.class);
        Map<String, Double> known = new TreeMap<>();
        product.composition().keySet().forEach(part -> parts.solvent(part).ifPresent(kind -> {
            double percent = strength.percent(part, p -> parts.volume(part, kind, p, product.percentBy()));
            solvents.merge(kind, percent, (a, b) -> Math.min(100, a + b));
            if (base.substances().containsKey(part)) {
                known.put(part, percent);
            }
        }));
        double organic = solvents.values().stream().mapToDouble(Double::doubleValue).sum();
        if (organic > 100) {
            // what rules judge keeps its worst end; only the blend has to add up
            known.replaceAll((part, percent) -> percent * 100 / organic);
        }
        if (organic < 100 && (product.composition().containsKey("water") || product.waterParts() > 0)) {
            known.put("water", 100 - organic);
        }
        List<HazardStatement> hazards = product.hazards().stream().sorted().map(base.hazards()::get).toList();
        Set<String> ppe = new LinkedHashSet<>();
        hazards.forEach(h -> ppe.addAll(h.ppe()));
        List<String> risks = new ArrayList<>(hazards.stream().map(HazardStatement::risk).distinct().toList());
        risks.add(Texts.said("overlay.risk"));
        return new Agent(product.id(), product.name(), Agent.NONE.family(), product.form(), strength.acidity(), solvents,
                reactive(product, strength, hazards), product.waterParts() == 0 ? "neat"
                : "1 part to " + Figures.text(product.waterParts()) + " parts of water", "", 0,
                sensitisers(product, hazards),
                List.copyOf(ppe), risks, true, known, Optional.empty(), dissolved(product, strength), Basis.COMMON_PRACTICE,
                hazards.isEmpty() ? List.of() : List.of("hazard-statement-codes"));
    }

    /** Acids, bases and salts, at their strongest; a share by volume is taken as one by weight. */
    private Map<String, Double> dissolved(OverlayFile.Product product, Strength strength) {
        Map<String, Double> all = new TreeMap<>();
        product.composition().keySet().stream().filter(parts::isDissolved)
                .forEach(part -> all.put(part, strength.percent(part, p -> p)));
        return all;
    }

    /** What known agents of the same parts sensitise to; and a sheet with the statement may mean any of its parts. */
    private Set<String> sensitisers(OverlayFile.Product product, List<HazardStatement> hazards) {
        Set<String> named = new LinkedHashSet<>(product.composition().keySet());
        named.remove("water");
        Set<String> all = new LinkedHashSet<>();
        base.agents().values().stream().filter(a -> a.composition().keySet().stream().anyMatch(named::contains))
                .forEach(a -> all.addAll(a.sensitisers()));
        named.forEach(part -> parts.sheetPart(part).ifPresent(p -> all.addAll(p.sensitisers())));
        if (hazards.stream().anyMatch(HazardStatement::sensitiser)) {
            named.forEach(part -> all.add(parts.sheetPart(part).map(SheetPart::id).orElse(part)));
        }
        return all;
    }

    private Set<Reactive> reactive(OverlayFile.Product product, Strength strength, List<HazardStatement> hazards) {
        Set<Reactive> all = EnumSet.noneOf(Reactive.class);
        all.addAll(product.reactive());
        dissolved(product, strength).keySet().forEach(part -> all.addAll(base.exposures().get(part).reactive()));
        product.composition().keySet().forEach(part -> parts.sheetPart(part).ifPresent(p -> all.addAll(p.reactive())));
        hazards.forEach(h -> all.addAll(h.reactive()));
        boolean corrosive = hazards.stream().anyMatch(HazardStatement::corrosive);
        strength.acidity().ifPresent(range -> {
            if (range.from() <= ACID_TO || corrosive && range.from() < 7) {
                all.add(Reactive.ACID);
            }
            if (range.to() >= ALKALI_FROM || corrosive && range.to() > 7) {
                all.add(Reactive.ALKALI);
            }
        });
        return all;
    }
}
