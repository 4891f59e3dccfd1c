package rungwise.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.deposit.Observation;
import rungwise.knowledge.surface.Place;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.question.Question;

/**
 * The signs of a spot, with those that follow from them.
 *
 * @param seen    observations that were made
 * @param within  what was seen as part of a check's outcome: the outcome weighs for it, so that it is not weighed again
 * @param notSeen observations that were looked for and are not there
 * @param both    ids said to be both; they count as neither
 */
record Noted(List<Observation> seen, List<Observation> within, List<Observation> notSeen, List<String> both) {
    private static final Set<SurfaceKind> OUTSIDE = Set.of(SurfaceKind.PAINT, SurfaceKind.FILM, SurfaceKind.LENS,
            SurfaceKind.METAL, SurfaceKind.WHEEL, SurfaceKind.RUBBER, SurfaceKind.SENSOR, SurfaceKind.GEL_COAT);

    static Noted of(Spot spot, KnowledgeBase base) {
        Question question = spot.question();
        Set<String> ids = new LinkedHashSet<>(question.observations());
        spot.place().ifPresent(p -> ids.add(Spot.PLACE + p));
        question.facts().place().map(base.questionWords().places()::get).flatMap(Place::sign).ifPresent(ids::add);
        spot.surroundings().forEach(n -> ids.add(Spot.NEAR + n));
        List<String> both = ids.stream().filter(spot.notSeen()::contains).toList();
        both.forEach(ids::remove);
        side(question, base).filter(base.observations()::containsKey).ifPresent(ids::add);
        Set<String> within = new LinkedHashSet<>();
        for (Observation one : ids.stream().map(base.observations()::get).toList()) {
            (base.signs().checks().get(one.seenBy()).offered() && one.speaks() ? within : ids).addAll(one.implies());
        }
        within.removeAll(ids);
        List<Observation> seen = ids.stream().map(base.observations()::get).toList();
        return new Noted(seen, within.stream().map(base.observations()::get).toList(), spot.notSeen().stream().distinct().filter(n -> !both.contains(n))
                .map(base.observations()::get).toList(), both);
    }

    /** What a surface is made as tells on which side of the vehicle it is. */
    private static java.util.Optional<String> side(Question question, KnowledgeBase base) {
        if (question.surface().contains(Question.UNKNOWN)) {
            return java.util.Optional.empty();
        }
        List<SurfaceKind> kinds = question.surface().stream().map(s -> base.surfaces().get(s).kind()).toList();
        if (OUTSIDE.containsAll(kinds)) {
            return java.util.Optional.of("side_outside");
        }
        return kinds.stream().allMatch(k -> k == SurfaceKind.LEATHER || k == SurfaceKind.SCREEN)
                ? java.util.Optional.of("side_inside") : java.util.Optional.empty();
    }

    Noted with(Observation observation) {
        List<Observation> more = new ArrayList<>(seen);
        more.add(observation);
        return new Noted(more, within, notSeen, both);
    }

    Noted without(List<Observation> observations) {
        List<Observation> more = new ArrayList<>(notSeen);
        more.addAll(observations);
        return new Noted(seen, within, more, both);
    }

    boolean knows(Observation observation) {
        return seen.contains(observation) || within.contains(observation) || notSeen.contains(observation);
    }

    /** Whether anything was seen that speaks for some contaminant. */
    boolean tells() {
        return seen.stream().anyMatch(o -> !o.pointsTo().isEmpty() && !o.id().startsWith("side_"));
    }
}
