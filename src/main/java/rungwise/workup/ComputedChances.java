package rungwise.workup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.Solute;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.decision.AssumptionId;
import rungwise.knowledge.decision.Assumptions;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.decision.Decisions;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.method.Chance;
import rungwise.knowledge.method.Chances;
import rungwise.knowledge.method.Mechanism;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.MethodKind;
import rungwise.science.Solubility;
import rungwise.text.Texts;

/**
 * Chances of solvents that nobody has stated a chance for, from how near their organic part lies to what the deposit
 * dissolves like. A chance that somebody stated stands, whatever the chemistry says of it.
 *
 * @param base     the knowledge, each contaminant completed with what was computed
 * @param computed methods whose chance is computed, by contaminant
 */
public record ComputedChances(KnowledgeBase base, Map<String, Set<String>> computed) {
    private static final List<Chance> DOWN = List.of(Chance.VL, Chance.L, Chance.P, Chance.U, Chance.VU);

    public static ComputedChances of(KnowledgeBase known) {
        Map<String, Contaminant> contaminants = new TreeMap<>();
        Map<String, Set<String>> computed = new HashMap<>();
        known.contaminants().forEach((id, contaminant) -> {
            List<Contaminant.Remark> more = new ArrayList<>();
            known.methods().values().forEach(m -> computed(contaminant, m, known).ifPresent(more::add));
            Set<String> methods = new HashSet<>();
            more.forEach(o -> methods.addAll(o.methods()));
            computed.put(id, methods);
            contaminants.put(id, more.isEmpty() ? contaminant : contaminant.and(more));
        });
        return new ComputedChances(known.with(contaminants), computed);
    }

    public boolean isComputed(String contaminant, String method) {
        return computed.getOrDefault(contaminant, Set.of()).contains(method);
    }

    private static Optional<Contaminant.Remark> computed(Contaminant contaminant, Method method, KnowledgeBase base) {
        String fresh = contaminant.bond().fresh();
        String hardened = contaminant.bond().hardened();
        boolean stated = contaminant.makeupFor(method).isPresent() || contaminant.remark(method.id()).isPresent()
                || method.chances().containsKey(fresh) && method.chances().containsKey(hardened);
        if (stated || !dissolves(method)) {
            return Optional.empty();
        }
        Optional<Estimate> young = estimate(contaminant, fresh, method, base);
        Optional<Estimate> old = estimate(contaminant, hardened, method, base);
        if (young.isEmpty() && old.isEmpty()) {
            return Optional.empty();
        }
        Chance ifFresh = method.chances().containsKey(fresh) ? method.chancesFor(fresh).fresh()
                : young.map(e -> e.chances().fresh()).orElse(Chance.VU);
        Chance ifHardened = method.chances().containsKey(hardened) ? method.chancesFor(hardened).hardened()
                : old.map(e -> e.chances().hardened()).orElse(Chance.VU);
        if (!contaminant.bond().changes() && ifHardened.compareTo(ifFresh) > 0) {
            ifHardened = ifFresh;
        }
        return Optional.of(new Contaminant.Remark(method, new Chances(ifFresh, ifHardened),
                old.or(() -> young).orElseThrow().why(), Basis.COMPUTED, List.of("hansen-solvents", "hansen-polymers")));
    }

    public static boolean dissolves(Method method) {
        return method.kind() == MethodKind.REMOVE
                && (method.mechanism() == Mechanism.DISSOLVE || method.mechanism() == Mechanism.SWELL);
    }

    /** What chemistry expects, with its sentence. */
    public record Estimate(Chances chances, Solubility.Interval red, String why) {
    }

    /**
     * By the nearest of the published spheres, as samples differ and a try in vain costs minutes and no finish; all of
     * them are shown. Hardened is a grade worse. Where only attack on the cured material was ever measured, it swells at
     * most and comes off unlikely.
     */
    public static Optional<Estimate> estimate(Contaminant contaminant, String bond, Method method, KnowledgeBase base) {
        Organics organics = Organics.of(base.agentOf(method), base);
        Optional<Solute> like = like(contaminant, bond, base).map(base.solutes()::get);
        if (like.isEmpty() || organics.percent() < base.decisions().value(DecisionId.SOLVENT_COUNTS)) {
            return Optional.empty();
        }
        Solubility.Interval red = Solubility.interval(organics.blend(),
                like.get().spheres().stream().map(Solute.Fit::sphere).toList());
        Decisions decided = base.decisions();
        int worse = (organics.percent() < decided.value(DecisionId.WEAK_SOLVENT) ? 2
                : organics.percent() < decided.value(DecisionId.THIN_SOLVENT) ? 1 : 0)
                + (organics.isSlow() && method.dwell().usual() < decided.value(DecisionId.LARGE_MOLECULE) ? 1 : 0);
        Chance fresh = down(byBand(red.low(), base.assumptions()), worse);
        if (like.get().spheres().stream().allMatch(f -> f.measure() == Solute.Measure.CHEMICAL_RESISTANCE)
                && fresh.compareTo(Chance.U) > 0) {
            fresh = Chance.U;
        }
        return Optional.of(new Estimate(new Chances(fresh, down(fresh, 1)), red, words(organics, like.get())));
    }

    /** What it has turned into, where that is another bond class, is like its class and no longer like itself. */
    private static Optional<String> like(Contaminant contaminant, String bond, KnowledgeBase base) {
        Optional<String> ofClass = base.bondClasses().get(bond).dissolvesLike();
        return bond.equals(contaminant.bond().fresh()) ? contaminant.dissolvesLike().or(() -> ofClass) : ofClass;
    }

    private static Chance byBand(double red, Assumptions assumed) {
        return Chance.valueOf(assumed.word(switch (Solubility.band(red)) {
            case DISSOLVES -> AssumptionId.CHANCE_WHERE_IT_DISSOLVES;
            case SWELLS -> AssumptionId.CHANCE_WHERE_IT_SWELLS;
            case SLOW -> AssumptionId.CHANCE_WHERE_IT_SOFTENS;
            case PASSES -> AssumptionId.CHANCE_WHERE_IT_PASSES;
        }));
    }

    private static Chance down(Chance chance, int by) {
        return DOWN.get(Math.min(DOWN.size() - 1, DOWN.indexOf(chance) + by));
    }

    private static String words(Organics organics, Solute like) {
        List<Solute.Fit> nearest = like.spheres().stream().sorted(Comparator.comparingDouble(
                (Solute.Fit f) -> Solubility.red(organics.blend(), f.sphere()))).toList();
        List<String> words = new ArrayList<>();
        for (Solute.Fit fit : nearest) {
            double red = Solubility.red(organics.blend(), fit.sphere());
            words.add(Texts.said(words.isEmpty() ? "chemistry.first" : "chemistry.further", "does",
                    Texts.said("chemistry." + Solubility.band(red).name().toLowerCase(Locale.ROOT)), "what", fit.what(), "red", red));
        }
        return String.join("; ", words) + ".";
    }
}
