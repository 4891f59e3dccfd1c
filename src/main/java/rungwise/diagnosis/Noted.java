package rungwise.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.deposit.Observation;
import rungwise.knowledge.surface.Place;
import rungwise.question.Question;

/**
 * The signs of a spot, with those that follow from them.
 *
 * @param question what was asked, for the surface
 * @param seen    observations that were made
 * @param within  what was seen as part of a check's outcome: the outcome weighs for it, so that it is not weighed again
 * @param notSeen observations that were looked for and are not there
 * @param both    ids said to be both; they count as neither
 */
record Noted(Question question, List<Observation> seen, List<Observation> within, List<Observation> notSeen, List<String> both) {
    static Noted of(Spot spot, KnowledgeBase base) {
        Question question = spot.question();
        Set<String> ids = new LinkedHashSet<>(question.observations());
        spot.place().ifPresent(p -> ids.add(Spot.PLACE + p));
        question.facts().place().map(base.questionWords().places()::get).flatMap(Place::sign).ifPresent(ids::add);
        spot.surroundings().forEach(n -> ids.add(Spot.NEAR + n));
        List<String> both = ids.stream().filter(question.notSeen()::contains).toList();
        both.forEach(ids::remove);
        Set<String> within = new LinkedHashSet<>();
        for (Observation one : ids.stream().map(base.observations()::get).toList()) {
            (Weighing.isMade(one, base) && one.speaks() ? within : ids).addAll(one.implies());
        }
        within.removeAll(ids);
        List<Observation> seen = ids.stream().map(base.observations()::get).toList();
        return new Noted(question, seen, within.stream().map(base.observations()::get).toList(), question.notSeen().stream().distinct().filter(n -> !both.contains(n))
                .map(base.observations()::get).toList(), both);
    }

    Noted with(Observation observation) {
        List<Observation> more = new ArrayList<>(seen);
        more.add(observation);
        return new Noted(question, more, within, notSeen, both);
    }

    Noted without(List<Observation> observations) {
        List<Observation> more = new ArrayList<>(notSeen);
        more.addAll(observations);
        return new Noted(question, seen, within, more, both);
    }

    boolean knows(Observation observation) {
        return seen.contains(observation) || within.contains(observation) || notSeen.contains(observation);
    }

    /** Whether anything was seen, or looked for in vain, that speaks for some contaminant. */
    boolean tells() {
        return java.util.stream.Stream.concat(seen.stream(), notSeen.stream()).anyMatch(o -> !o.pointsTo().isEmpty() && !o.id().startsWith("side_"));
    }
}
