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
import java.util.function.Function;
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
 * @param closest    what it is by its label where the sheet bears that out, else the chemistry that lies nearest to it
 * @param nearest    what it is taken for: the closest; without a label the shop's own likeness where that is of the same chemistry
 * @param technique  how it is worked: the shop's own likeness, else as the label or the nearest is
 * @param asStrictAs methods that lend it their grades, gates and limits as well
 * @param contested  whether its label and its sheet contradict each other, so that the sheet is read first
 */
record Likeness(Method closest, Method nearest, Method technique, List<Method> asStrictAs, boolean contested, KnowledgeBase base) {
    private static final Set<ToolKind> LAYS_ON = EnumSet.of(ToolKind.NONE, ToolKind.CLOTH, ToolKind.BRUSH);
    private static final Set<Mechanism> NO_CHEMISTRY = EnumSet.of(Mechanism.SHEAR, Mechanism.ABRADE,
            Mechanism.SOFTEN_BY_HEAT, Mechanism.EMBRITTLE, Mechanism.ABSORB, Mechanism.SUCTION);
    private static final String NEVER_USED = "barred_chemistry";
    private static final String TEST_SPOT = "test_spot";
    private static final String READ_SHEET = "read_sds";

    static Likeness of(OverlayFile.Product product, Agent agent, Label label, boolean contested,
                       KnowledgeBase base) {
        Optional<Method> like = product.like().map(base.methods()::get);
        Optional<Method> known = label.method(base);
        if (known.isPresent()) {
            return new Likeness(known.get(), known.get(), like.or(() -> label.technique(base)).orElse(known.get()), label.asStrictAs(base),
                    contested, base);
        }
        double counts = counts(base);
        Method closest = closest(agent, base);
        Method nearest = like.filter(m -> !contested && !closest.family().equals(NEVER_USED)
                && column(base.agentOf(m), counts).equals(column(agent, counts))).orElse(closest);
        return new Likeness(closest, nearest, like.orElse(nearest), List.of(), contested, base);
    }

    /** The chemistry that lies nearest, whatever anybody says. */
    static Method closest(Agent agent, KnowledgeBase base) {
        double counts = counts(base);
        return base.methods().values().stream()
                .filter(m -> isChemistry(m, base) || m.family().equals(NEVER_USED))
                .min(Comparator.comparingDouble((Method m) -> distance(agent, base.agentOf(m), counts))
                        .thenComparing(m -> -m.severity().worst()).thenComparing(Method::id)).orElseThrow();
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

    /** What its label and sheet leave open is a risk of it, so that it is told wherever the product is offered. */
    Agent completed(Agent agent, List<Doubt> asks) {
        Agent like = base.agentOf(nearest);
        Set<Reactive> reactive = new TreeSet<>(agent.reactive());
        reactive.addAll(like.reactive());
        List<Agent> stricter = asStrictAs.stream().map(base::agentOf).toList();
        Set<String> sensitisers = new TreeSet<>(agent.sensitisers());
        sensitisers.addAll(like.sensitisers());
        List<String> ppe = union(like.ppe(), agent.ppe());
        List<String> risks = union(union(like.risks(), agent.risks()), asks.stream().filter(d -> !d.id().equals(Label.FUNCTION_UNTOLD)).map(Doubt::asks).toList());
        for (Agent other : stricter) {
            sensitisers.addAll(other.sensitisers());
            ppe = union(ppe, other.ppe());
            risks = union(risks, other.risks());
        }
        return new Agent(agent.id(), agent.name(), like.family(), agent.form(), agent.acidity(), agent.solvents(),
                reactive, agent.dilution(), agent.mix(), rinse(like), sensitisers, ppe,
                risks, agent.alwaysAtHand(), agent.composition(),
                agent.form() == like.form() ? like.layer() : agent.layer(), agent.dissolved(),
                agent.basis(), union(like.sources(), agent.sources()));
    }

    private double rinse(Agent like) {
        return Math.max(like.residueRinse(), all().map(base::agentOf).mapToDouble(Agent::residueRinse).max().orElseThrow());
    }

    Method method(OverlayFile.Product product, Agent agent) {
        return new Method(product.id(), product.name(), MethodKind.REMOVE, nearest.family(), nearest.mechanism(),
                nearest.role(), nearest.works(), nearest.worksLess(), product.id(), technique.tool(), madeFor(), nearest.floods() || technique.floods(),
                technique.technique(), dwell(), all().mapToInt(Method::tries).min().orElseThrow(), window(),
                highest(Method::contactC), highest(Method::pressureBar), technique.standOffCm(), severity(),
                all().mapToDouble(Method::marringPercent).max().orElseThrow(), technique.minutes(),
                all().map(Method::level).max(Comparator.naturalOrder()).orElseThrow(),
                chances(agent), Set.of(), nearest.needsSoftener() || technique.needsSoftener(), Optional.empty(),
                every(Method::stopSigns), union(nearest.afterwards(), technique.afterwards()),
                union(nearest.correction(), technique.correction()),
                gates(), nearest.waste(),
                every(Method::ppe), every(Method::risks),
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
        double to = all().mapToDouble(m -> m.dwell().to()).min().orElseThrow();
        double from = Math.min(to, technique.dwell().from());
        return new Dwell(from, to, Math.min(to, Math.max(from, technique.dwell().usual())));
    }

    private Optional<Range> window() {
        return all().map(Method::window).flatMap(Optional::stream).reduce((one, other) -> one.meets(other)
                ? new Range(Math.max(one.from(), other.from()), Math.min(one.to(), other.to())) : one);
    }

    /** What lends it something: what it is taken for first. */
    private Stream<Method> all() {
        return Stream.concat(Stream.of(nearest, technique), asStrictAs.stream());
    }

    private List<String> every(Function<Method, List<String>> field) {
        return all().map(field).reduce(List.of(), Likeness::union);
    }

    private List<String> gates() {
        return union(every(Method::gates), contested ? List.of(TEST_SPOT, READ_SHEET) : List.of(TEST_SPOT));
    }

    private Optional<Double> highest(Function<Method, Optional<Double>> field) {
        return all().map(field).flatMap(Optional::stream).max(Comparator.naturalOrder());
    }

    private Severity severity() {
        List<Severity> all = Stream.concat(Stream.of(closest), all()).map(Method::severity).toList();
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
