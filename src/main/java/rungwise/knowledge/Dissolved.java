package rungwise.knowledge;

import java.util.List;
import java.util.Optional;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.decision.Decisions;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.safety.AirHazard;
import rungwise.knowledge.safety.Dissociation;
import rungwise.knowledge.safety.Exposure;
import rungwise.science.Acidity;

/** What an agent holds in water, as chemistry reckons with it. */
public final class Dissolved {
    private static final double GRAMS_PER_PERCENT = 10;

    private Dissolved() {
    }

    /** mol/l of a percentage by weight; water weighs a kilogram a litre, which errs by under 5 % up to a tenth. */
    public static Optional<Double> molar(Exposure what, double percent) {
        return what.molarMass().map(mass -> percent * GRAMS_PER_PERCENT / mass);
    }

    /** All that an agent holds; empty where one of them cannot be reckoned with. */
    public static Optional<List<Acidity.Solute>> solutes(Agent agent, KnowledgeBase base) {
        List<Optional<Acidity.Solute>> all = agent.dissolved().entrySet().stream()
                .map(held -> solute(base.exposures().get(held.getKey()), held.getValue(), base.decisions())).toList();
        return all.stream().allMatch(Optional::isPresent) ? Optional.of(all.stream().flatMap(Optional::stream).toList())
                : Optional.empty();
    }

    /** Empty where its constants or its molar mass are not known. */
    public static Optional<Acidity.Solute> solute(Exposure what, double percent, Decisions decisions) {
        if (what.molarMass().isEmpty()) {
            return Optional.empty();
        }
        double molar = molar(what, percent).get();
        Optional<Dissociation> constants = what.dissociation();
        if (constants.isEmpty()) {
            return what.hazard() == AirHazard.BASE ? Optional.of(Acidity.Solute.strongBase(molar)) : Optional.empty();
        }
        List<Double> proton = constants.get().constants();
        if (what.hazard() == AirHazard.AMMONIA) {
            return Optional.of(Acidity.Solute.base(molar, proton.get(0)));
        }
        return Optional.of(proton.size() == 1 && proton.get(0) < decisions.value(DecisionId.STRONG_ACID) ? Acidity.Solute.strongAcid(molar)
                : Acidity.Solute.salt(molar, proton, constants.get().replaced()));
    }
}
