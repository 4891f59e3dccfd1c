package rungwise.knowledge.overlay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.Reactive;
import rungwise.knowledge.chemistry.Solvent;
import rungwise.knowledge.chemistry.Substance;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.draft.OverlayFile;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.safety.HazardStatement;
import rungwise.text.Texts;

/** A product at the worst end of what its sheet says: every solvent at its strongest, pH as wide as stated. */
final class Worst {
    /** pH at which the known acids end and the known alkalis of cleaning strength begin. */
    private static final double ACID_TO = 4;
    private static final double ALKALI_FROM = 10;

    private final KnowledgeBase base;

    Worst(KnowledgeBase base) {
        this.base = base;
    }

    /** Family, residue and sensitisers are still those of nothing: the likeness completes them. */
    Agent agent(OverlayFile.Product product) {
        Map<Solvent, Double> solvents = new EnumMap<>(Solvent.class);
        Map<String, Double> known = new TreeMap<>();
        product.composition().forEach((part, range) -> solvent(part).ifPresent(kind -> {
            double percent = volume(part, kind, range.to(), product.percentBy()) / (1 + product.waterParts());
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
        return new Agent(product.id(), product.name(), Agent.NONE.family(), product.form(), product.acidity(), solvents,
                reactive(product, hazards), product.waterParts() == 0 ? "neat"
                : "1 part to " + Figures.text(product.waterParts()) + " parts of water", "", 0,
                sensitisers(product, hazards),
                List.copyOf(ppe), risks, true, known, Optional.empty(), dissolved(product), Basis.COMMON_PRACTICE,
                hazards.isEmpty() ? List.of() : List.of("GHS"));
    }

    /** Acids, bases and salts, at their strongest; a share by volume is taken as one by weight. */
    private Map<String, Double> dissolved(OverlayFile.Product product) {
        Map<String, Double> all = new TreeMap<>();
        product.composition().forEach((part, range) -> {
            if (isDissolved(part, base)) {
                all.put(part, range.to() / (1 + product.waterParts()));
            }
        });
        return all;
    }

    /** Whether it is listed as breathed and neither as a solvent nor as one of their stand-ins. */
    static boolean isDissolved(String part, KnowledgeBase base) {
        return base.exposures().containsKey(part) && !base.substances().containsKey(part)
                && base.exposures().get(part).vapour().isEmpty();
    }

    /** What known agents of the same parts sensitise to; and a sheet with the statement may mean any of its parts. */
    private Set<String> sensitisers(OverlayFile.Product product, List<HazardStatement> hazards) {
        Set<String> parts = new LinkedHashSet<>(product.composition().keySet());
        parts.remove("water");
        Set<String> all = new LinkedHashSet<>();
        base.agents().values().stream().filter(a -> a.composition().keySet().stream().anyMatch(parts::contains))
                .forEach(a -> all.addAll(a.sensitisers()));
        if (hazards.stream().anyMatch(HazardStatement::sensitiser)) {
            all.addAll(parts);
        }
        return all;
    }

    private Set<Reactive> reactive(OverlayFile.Product product, List<HazardStatement> hazards) {
        Set<Reactive> all = EnumSet.noneOf(Reactive.class);
        all.addAll(product.reactive());
        dissolved(product).keySet().forEach(part -> all.addAll(base.exposures().get(part).reactive()));
        hazards.forEach(h -> all.addAll(h.reactive()));
        boolean corrosive = hazards.stream().anyMatch(HazardStatement::corrosive);
        product.acidity().ifPresent(range -> {
            if (range.from() <= ACID_TO || corrosive && range.from() < 7) {
                all.add(Reactive.ACID);
            }
            if (range.to() >= ALKALI_FROM || corrosive && range.to() > 7) {
                all.add(Reactive.ALKALI);
            }
        });
        return all;
    }

    private Optional<Solvent> solvent(String part) {
        Substance substance = base.substances().get(part);
        return substance != null ? substance.solvent()
                : Stream.of(Solvent.values()).filter(s -> s.name().toLowerCase(Locale.ROOT).equals(part)).findFirst();
    }

    /** By weight a light solvent takes more room than its share; the rest is taken to weigh as much as water. */
    private double volume(String part, Solvent kind, double percent, OverlayFile.Share by) {
        if (by == OverlayFile.Share.VOLUME) {
            return percent;
        }
        double density = Optional.ofNullable(base.substances().get(part)).map(Substance::densityGramsPerCm3)
                .orElseGet(() -> base.substances().values().stream().filter(s -> s.solvent().filter(kind::equals).isPresent())
                        .min(Comparator.comparingDouble(Substance::densityGramsPerCm3))
                        .map(Substance::densityGramsPerCm3).orElse(1.0));
        double room = percent / Math.min(1, density);
        return 100 * room / (room + 100 - percent);
    }
}
