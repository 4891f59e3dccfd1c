package rungwise.workup;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.decision.AssumptionId;
import rungwise.knowledge.safety.AirHazard;
import rungwise.knowledge.safety.Respirator;
import rungwise.question.Question;
import rungwise.rules.fact.Bay;
import rungwise.rules.fact.Panel;
import rungwise.rules.use.Airing;
import rungwise.rules.use.AiringIfClosed;
import rungwise.rules.use.Candidate;
import rungwise.rules.use.Fume;
import rungwise.rules.use.FumeIfClosed;

/** What each method puts into the air: of the bay that was told, or of a closed one where nobody told where the work is. */
public final class Air {
    private Air() {
    }

    public static List<Object> facts(Question question, KnowledgeBase base, Worked worked, Panel panel,
                              Collection<Candidate> candidates) {
        if (question.setting().outdoors()) {
            return List.of();
        }
        Optional<Bay> told = question.setting().indoors().map(i -> new Bay(i.volumeM3(), i.airChangesPerHour()));
        Bay bay = told.orElseGet(() -> closed(base));
        List<Airing> airings = Vapours.of(question, base, worked, panel, bay, candidates);
        List<Fume> fumes = worked.fumes().of(bay, candidates);
        List<Object> facts = new ArrayList<>();
        if (told.isPresent()) {
            facts.addAll(airings);
            facts.addAll(fumes);
        } else {
            airings.forEach(a -> facts.add(new AiringIfClosed(a, a.respirator().or(() -> strongestCartridge(base, a.hazards())))));
            fumes.forEach(f -> facts.add(new FumeIfClosed(f)));
        }
        return facts;
    }

    /** What is reckoned with where nobody told where the work is. */
    public static Bay closed(KnowledgeBase base) {
        return new Bay(base.assumptions().value(AssumptionId.CLOSED_BAY_VOLUME), base.assumptions().value(AssumptionId.CLOSED_BAY_CHANGES));
    }

    /** Where no cartridge is enough for a closed bay, a better aired one may still ask for any of them. */
    private static Optional<Respirator> strongestCartridge(KnowledgeBase base, Set<AirHazard> hazards) {
        return base.respirators().values().stream()
                .filter(r -> r.against().containsAll(hazards) && r.isCartridge())
                .max(Comparator.comparingDouble(Respirator::factor).thenComparing(Respirator::id));
    }
}
