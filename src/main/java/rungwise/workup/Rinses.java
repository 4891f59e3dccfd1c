package rungwise.workup;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import rungwise.knowledge.Agent;
import rungwise.knowledge.Figures;
import rungwise.knowledge.KnowledgeBase;
import rungwise.question.Question;
import rungwise.rules.Because;
import rungwise.rules.Reason;
import rungwise.science.Acidity;
import rungwise.science.Hardness;

/**
 * How much rinsing is enough after an agent: until the film that clings is as neutral as the water itself and hardly any of
 * the agent is left. Worked out once for each agent that is asked for.
 */
public final class Rinses {
    private static final double CLINGS = Acidity.CLINGS_L_M2;
    /** Water of one pass over an upright panel; litres a square metre, common practice. */
    private static final double ONE_PASS = 2;
    /** Soft water neutralises little: what is reckoned with until the alkalinity is told, mg/l as lime. */
    private static final double SOFT_MG_L = 25;
    /** Hardly any water holds less; a water that buffers nothing has no pH of its own to come near to. */
    private static final double LEAST_MG_L = 1;
    private static final double TAP_ACIDITY = 7.5;
    /** As near to the water's own pH as paper shows. */
    private static final double WITHIN = 0.5;
    /** What may stay of the agent. */
    private static final double MOST_LEFT = 1e-3;
    private static final int MOST_PASSES = 10;

    private final KnowledgeBase base;
    private final Acidity.TapWater tap;
    private final String water;
    private final Map<String, Optional<Rinse>> byAgent = new ConcurrentHashMap<>();

    /** With a water of which nothing was told. */
    public Rinses(KnowledgeBase base) {
        this(base, SOFT_MG_L, "soft tap water");
    }

    private Rinses(KnowledgeBase base, double alkalinityMgL, String water) {
        this.base = base;
        this.tap = new Acidity.TapWater(Hardness.alkalinityM(Math.max(LEAST_MG_L, alkalinityMgL)), TAP_ACIDITY);
        this.water = water;
    }

    /**
     * With the water that was told. Hardness alone promises no alkalinity, as gypsum is hard and neutralises nothing; but
     * a water softer than the one reckoned with is counted as no more alkaline than it is hard.
     */
    public Rinses by(Optional<Question.Water> told) {
        OptionalDouble alkalinity = told.map(Question.Water::alkalinityMgL).orElseGet(OptionalDouble::empty);
        OptionalDouble hardness = told.map(Question.Water::hardnessMgL).orElseGet(OptionalDouble::empty);
        if (alkalinity.isPresent()) {
            return new Rinses(base, alkalinity.getAsDouble(), "tap water of alkalinity "
                    + Figures.text(alkalinity.getAsDouble()) + " mg/l");
        }
        return hardness.isEmpty() || hardness.getAsDouble() >= SOFT_MG_L ? this : new Rinses(base, hardness.getAsDouble(),
                "tap water of hardness " + Figures.text(hardness.getAsDouble()) + " mg/l, its alkalinity not told and taken as no more,");
    }

    /** Empty where the agent leaves nothing behind. */
    public Optional<Rinse> after(Agent agent) {
        return byAgent.computeIfAbsent(agent.id(), id -> of(agent));
    }

    /** After all of them: the longest. */
    public Optional<Rinse> after(Collection<Agent> agents) {
        return agents.stream().flatMap(a -> after(a).stream()).max(Comparator
                .comparingInt((Rinse r) -> r.times().orElse(0)).thenComparingDouble(Rinse::minutes));
    }

    private Optional<Rinse> of(Agent agent) {
        Optional<List<Acidity.Solute>> solutes = Dissolved.solutes(agent, base).filter(all -> !all.isEmpty());
        Optional<Rinse> computed = solutes.flatMap(all -> computed(agent, all));
        return computed.or(() -> stated(agent, solutes.isPresent() ? agent.name() + " takes more than " + MOST_PASSES + " passes"
                : "what is dissolved in " + agent.name() + " is not stated"));
    }

    private Optional<Rinse> stated(Agent agent, String why) {
        return agent.residueRinse() <= 0 ? Optional.empty() : Optional.of(new Rinse(Optional.empty(), Optional.empty(),
                Optional.empty(), agent.residueRinse(), "table", List.of(Because.of(Reason.decision(base.decisions().of("rinsed-as-stated")), why + "; " + Figures.text(agent.residueRinse()) + " min"))));
    }

    private Optional<Rinse> computed(Agent agent, List<Acidity.Solute> solutes) {
        int neutral = Acidity.rinsesEnough(solutes, CLINGS, ONE_PASS, tap, WITHIN, MOST_PASSES);
        if (neutral > MOST_PASSES) {
            return Optional.empty();
        }
        int thin = 0;
        while (Acidity.left(CLINGS, ONE_PASS, thin) > MOST_LEFT) {
            thin++;
        }
        int times = Math.max(neutral, thin);
        double before = Acidity.acidity(solutes);
        double one = Acidity.afterRinses(solutes, CLINGS, ONE_PASS, times - 1, tap);
        double leaves = round(Acidity.afterRinses(solutes, CLINGS, ONE_PASS, times, tap));
        return Optional.of(new Rinse(Optional.of(times), Optional.of(times * ONE_PASS), Optional.of(leaves),
                agent.residueRinse(), "computed", List.of(Because.of(Reason.decision(base.decisions().of("rinsed-until-neutral")), agent.name() + ", pH " + Figures.text(round(before)) + " as used; " + times + " passes of "
                        + Figures.text(ONE_PASS) + " l a square metre leave pH " + Figures.text(leaves) + ", one pass less "
                        + Figures.text(round(one)) + "; one part in "
                        + Math.round(1 / Acidity.left(CLINGS, ONE_PASS, times)) + " stays; " + water + " of pH " + Figures.text(TAP_ACIDITY)))));
    }

    private static double round(double acidity) {
        return Math.round(acidity * 10) / 10.0;
    }
}
