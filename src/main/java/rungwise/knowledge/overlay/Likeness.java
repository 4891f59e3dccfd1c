package rungwise.knowledge.overlay;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.Reactive;
import rungwise.knowledge.chemistry.Solvent;
import rungwise.knowledge.chemistry.SolventColumn;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.common.Range;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.draft.OverlayFile;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Chances;
import rungwise.knowledge.method.Dwell;
import rungwise.knowledge.method.Mechanism;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.MethodKind;
import rungwise.knowledge.method.Severity;
import rungwise.knowledge.method.ToolKind;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.text.Texts;

/**
 * The known methods that a product takes after. Where two of them differ, the stricter counts.
 *
 * @param closest   the chemistry that lies nearest to it, whatever the shop says
 * @param nearest   what it is taken for: the shop's own likeness where that is of the same chemistry, else the closest
 * @param technique how it is worked: the shop's own likeness, else the nearest
 */
record Likeness(Method closest, Method nearest, Method technique, KnowledgeBase base) {
    private static final Set<ToolKind> LAYS_ON = EnumSet.of(ToolKind.NONE, ToolKind.CLOTH, ToolKind.BRUSH);
    private static final Set<Mechanism> NO_CHEMISTRY = EnumSet.of(Mechanism.SHEAR, Mechanism.ABRADE,
            Mechanism.SOFTEN_BY_HEAT, Mechanism.EMBRITTLE, Mechanism.ABSORB, Mechanism.SUCTION);
    private static final String NEVER_USED = "barred_chemistry";

    static Likeness of(OverlayFile.Product product, Agent agent, KnowledgeBase base) {
        double counts = counts(base);
        Method closest = base.methods().values().stream()
                .filter(m -> isChemistry(m, base) || m.family().equals(NEVER_USED))
                .min(Comparator.comparingDouble((Method m) -> distance(agent, base.agentOf(m), counts))
                        .thenComparing(m -> -m.severity().worst()).thenComparing(Method::id)).orElseThrow();
        Optional<Method> like = product.like().map(base.methods()::get);
        Method nearest = like.filter(m -> !closest.family().equals(NEVER_USED)
                && column(base.agentOf(m), counts).equals(column(agent, counts))).orElse(closest);
        return new Likeness(closest, nearest, like.orElse(nearest), base);
    }

    /** Whether the method lays a chemical on and lifts it off, with no cut of its own. */
    static boolean isChemistry(Method method, KnowledgeBase base) {
        return method.kind() == MethodKind.REMOVE && base.agentOf(method).isChemistry()
                && !method.family().equals(NEVER_USED) && LAYS_ON.contains(base.toolOf(method).kind())
                && method.severity().filmMicrons() == 0 && !NO_CHEMISTRY.contains(method.mechanism());
    }

    /** Shares of solvent by kind, then pH, reactive groups and form; another leading solvent lies far off. */
    private static double distance(Agent one, Agent other, double counts) {
        double far = (column(one, counts).equals(column(other, counts)) ? 0 : 10) + (leading(one, counts).equals(leading(other, counts)) ? 0 : 5);
        for (Solvent kind : Solvent.values()) {
            far += Math.abs(one.solvents().getOrDefault(kind, 0.0) - other.solvents().getOrDefault(kind, 0.0)) / 100;
        }
        if (one.acidity().isPresent() && other.acidity().isPresent()) {
            Range here = one.acidity().get();
            Range there = other.acidity().get();
            far += Math.max(Math.abs(here.from() - there.from()), Math.abs(here.to() - there.to())) / 4;
        } else if (one.acidity().isPresent() || other.acidity().isPresent()) {
            far += one.strongestSolvent() >= counts ? 0.5 : 2;
        }
        Set<Reactive> differ = new TreeSet<>(one.reactive());
        other.reactive().stream().filter(g -> !differ.remove(g)).toList().forEach(differ::add);
        differ.remove(Reactive.FLAMMABLE);
        return far + 0.5 * differ.size() + (one.form() == other.form() ? 0 : 0.5);
    }

    /** The column of its strongest solvent; empty where none counts. */
    private static Optional<SolventColumn> column(Agent agent, double counts) {
        return leading(agent, counts).map(Solvent::column);
    }

    private static Optional<Solvent> leading(Agent agent, double counts) {
        return agent.solvents().entrySet().stream().filter(e -> e.getValue() >= counts)
                .max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
    }

    Agent completed(Agent agent) {
        Agent like = base.agentOf(nearest);
        Set<Reactive> reactive = new TreeSet<>(agent.reactive());
        reactive.addAll(like.reactive());
        Set<String> sensitisers = new TreeSet<>(agent.sensitisers());
        sensitisers.addAll(like.sensitisers());
        return new Agent(agent.id(), agent.name(), like.family(), agent.form(), agent.acidity(), agent.solvents(),
                reactive, agent.dilution(), agent.mix(), rinse(like), sensitisers, union(like.ppe(), agent.ppe()),
                union(like.risks(), agent.risks()), agent.alwaysAtHand(), agent.composition(),
                agent.form() == like.form() ? like.layer() : agent.layer(), agent.dissolved(),
                agent.basis(), union(like.sources(), agent.sources()));
    }

    private double rinse(Agent like) {
        return Math.max(like.residueRinse(), base.agentOf(technique).residueRinse());
    }

    Method method(OverlayFile.Product product, Agent agent) {
        return new Method(product.id(), product.name(), MethodKind.REMOVE, nearest.family(), nearest.mechanism(),
                nearest.role(), nearest.works(), nearest.worksLess(), product.id(), technique.tool(), madeFor(), nearest.floods() || technique.floods(),
                technique.technique(), dwell(), Math.min(nearest.tries(), technique.tries()), window(),
                highest(Method::contactC), highest(Method::pressureBar), technique.standOffCm(), severity(),
                Math.max(nearest.marringPercent(), technique.marringPercent()), technique.minutes(),
                Stream.of(nearest.level(), technique.level()).max(Comparator.naturalOrder()).orElseThrow(),
                chances(agent), Set.of(), nearest.needsSoftener() || technique.needsSoftener(), Optional.empty(),
                union(nearest.stopSigns(), technique.stopSigns()), union(nearest.afterwards(), technique.afterwards()),
                union(nearest.correction(), technique.correction()),
                union(union(nearest.gates(), technique.gates()), List.of("test_spot")), nearest.waste(),
                union(nearest.ppe(), technique.ppe()), union(nearest.risks(), technique.risks()),
                Texts.said("overlay.note", "method", nearest.id()), Basis.COMMON_PRACTICE,
                union(nearest.sources(), agent.sources()), List.of());
    }

    /**
     * What chemistry can work out is left to it; for the rest the chances are those of the method it was taken for. It
     * softens nothing for another method: nobody has seen it do so.
     */
    private Map<String, Chances> chances(Agent agent) {
        Map<String, Chances> chances = new HashMap<>(nearest.chances());
        boolean whole = agent.solvents().values().stream().mapToDouble(Double::doubleValue).sum()
                <= organic(agent) + counts(base);
        if (agent.strongestSolvent() >= counts(base) && whole && (nearest.mechanism() == Mechanism.DISSOLVE
                || nearest.mechanism() == Mechanism.SWELL)) {
            chances.keySet().removeIf(bond -> base.bondClasses().get(bond).dissolvesLike().isPresent());
        }
        return chances;
    }

    /** The percent from which an organic component counts. */
    private static double counts(KnowledgeBase base) {
        return base.decisions().value(DecisionId.SOLVENT_COUNTS);
    }

    private double organic(Agent agent) {
        return agent.composition().entrySet().stream().filter(e -> base.substances().get(e.getKey()).isOrganic())
                .mapToDouble(Map.Entry::getValue).sum();
    }

    private Set<SurfaceKind> madeFor() {
        if (nearest.madeFor().isEmpty() || technique.madeFor().isEmpty()) {
            return nearest.madeFor().isEmpty() ? technique.madeFor() : nearest.madeFor();
        }
        Set<SurfaceKind> both = new TreeSet<>(nearest.madeFor());
        both.retainAll(technique.madeFor());
        return both.isEmpty() ? nearest.madeFor() : both;
    }

    private Dwell dwell() {
        double to = Math.min(nearest.dwell().to(), technique.dwell().to());
        double from = Math.min(to, technique.dwell().from());
        return new Dwell(from, to, Math.min(to, Math.max(from, technique.dwell().usual())));
    }

    private Optional<Range> window() {
        if (nearest.window().isEmpty() || technique.window().isEmpty()) {
            return nearest.window().or(technique::window);
        }
        Range one = nearest.window().get();
        Range other = technique.window().get();
        return Optional.of(one.meets(other)
                ? new Range(Math.max(one.from(), other.from()), Math.min(one.to(), other.to())) : one);
    }

    private Optional<Double> highest(java.util.function.Function<Method, Optional<Double>> field) {
        return Stream.of(nearest, technique).map(field).flatMap(Optional::stream).max(Comparator.naturalOrder());
    }

    private Severity severity() {
        List<Severity> all = List.of(closest.severity(), nearest.severity(), technique.severity());
        return new Severity(all.stream().mapToInt(Severity::mechanical).max().orElseThrow(),
                all.stream().mapToInt(Severity::chemical).max().orElseThrow(),
                all.stream().mapToInt(Severity::thermal).max().orElseThrow(),
                all.stream().mapToDouble(Severity::filmMicrons).max().orElseThrow());
    }

    private static List<String> union(List<String> one, List<String> other) {
        Set<String> all = new LinkedHashSet<>(one);
        all.addAll(other);
        return List.copyOf(all);
    }
}
