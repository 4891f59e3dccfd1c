package rungwise.workup;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import rungwise.knowledge.Dissolved;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.decision.AssumptionId;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.method.Agent;
import rungwise.question.Question;
import rungwise.rules.said.Because;
import rungwise.rules.said.Reason;
import rungwise.science.Acidity;
import rungwise.science.Hardness;
import rungwise.text.Figure;

/**
 * How much rinsing is enough after an agent: until the film that clings is as neutral as the water itself and hardly any of
 * the agent is left. Worked out once for each agent that is asked for.
 */
public final class Rinses {
    private static final double CLINGS = Acidity.CLINGS_L_M2;

    private final KnowledgeBase base;
    private final Acidity.TapWater tap;
    private final Figure water;
    private final double passLitres;
    private final int mostPasses;
    private final Map<String, Optional<Rinse>> byAgent = new ConcurrentHashMap<>();

    /** With a water of which nothing was told: soft, as that neutralises little. */
    public Rinses(KnowledgeBase base) {
        this(base, base.assumptions().value(AssumptionId.TAP_ALKALINITY), "waterUntold");
    }

    private Rinses(KnowledgeBase base, double alkalinityMgL, String water) {
        this.base = base;
        double atLeast = Math.max(base.assumptions().value(AssumptionId.LEAST_ALKALINITY), alkalinityMgL);
        this.tap = new Acidity.TapWater(Hardness.alkalinityM(atLeast), base.assumptions().value(AssumptionId.TAP_ACIDITY));
        this.water = Figure.of(water, alkalinityMgL, "mg/l");
        this.passLitres = base.assumptions().value(AssumptionId.PASS_OF_WATER);
        this.mostPasses = (int) base.decisions().value(DecisionId.MOST_PASSES);
    }

    /**
     * With the water that was told. Hardness alone promises no alkalinity, as gypsum is hard and neutralises nothing; but
     * a water softer than the one reckoned with is counted as no more alkaline than it is hard.
     */
    public Rinses by(Optional<Question.Water> told) {
        OptionalDouble alkalinity = told.map(Question.Water::alkalinityMgL).orElseGet(OptionalDouble::empty);
        OptionalDouble hardness = told.map(Question.Water::hardnessMgL).orElseGet(OptionalDouble::empty);
        if (alkalinity.isPresent()) {
            return new Rinses(base, alkalinity.getAsDouble(), "waterAlkalinity");
        }
        boolean soft = hardness.isPresent() && hardness.getAsDouble() < base.assumptions().value(AssumptionId.TAP_ALKALINITY);
        return soft ? new Rinses(base, hardness.getAsDouble(), "waterOfHardness") : this;
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
        return computed.or(() -> stated(agent, solutes.isPresent() ? Figure.of("passesMoreThan", mostPasses)
                : Figure.of("dissolvedNotStated", agent.name())));
    }

    private Optional<Rinse> stated(Agent agent, Figure why) {
        return agent.residueRinse() <= 0 ? Optional.empty() : Optional.of(new Rinse(Optional.empty(), Optional.empty(),
                Optional.empty(), agent.residueRinse(), "table", List.of(Because.of(reason(DecisionId.RINSED_AS_STATED),
                List.of(why, Figure.of("rinsedFor", agent.residueRinse(), "min"))))));
    }

    private Optional<Rinse> computed(Agent agent, List<Acidity.Solute> solutes) {
        double within = base.decisions().value(DecisionId.RINSED_UNTIL_NEUTRAL);
        int neutral = Acidity.rinsesEnough(solutes, CLINGS, passLitres, tap, within, mostPasses);
        if (neutral > mostPasses) {
            return Optional.empty();
        }
        int thin = 0;
        while (Acidity.left(CLINGS, passLitres, thin) > base.decisions().value(DecisionId.HARDLY_ANY_LEFT)) {
            thin++;
        }
        int times = Math.max(neutral, thin);
        double leaves = round(Acidity.afterRinses(solutes, CLINGS, passLitres, times, tap));
        List<Figure> figures = List.of(Figure.of("agent", agent.name()), Figure.of("asUsed", round(Acidity.acidity(solutes))),
                Figure.of("passes", times), Figure.of("pass", passLitres, "l/m²"), Figure.of("leavesAcidity", leaves),
                Figure.of("onePassLess", round(Acidity.afterRinses(solutes, CLINGS, passLitres, times - 1, tap))),
                Figure.of("staysOneIn", Math.round(1 / Acidity.left(CLINGS, passLitres, times))), water,
                Figure.of("waterAcidity", tap.acidity()));
        return Optional.of(new Rinse(Optional.of(times), Optional.of(times * passLitres), Optional.of(leaves), agent.residueRinse(),
                "computed", List.of(Because.of(reason(DecisionId.RINSED_UNTIL_NEUTRAL), figures))));
    }

    private Reason reason(DecisionId id) {
        return Reason.decision(base.decisions().of(id));
    }

    private static double round(double acidity) {
        return Math.round(acidity * 10) / 10.0;
    }
}
