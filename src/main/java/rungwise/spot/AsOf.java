package rungwise.spot;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.load.Mappers;
import rungwise.question.Ages;
import rungwise.question.Question;
import rungwise.shoplog.Attempt;
import rungwise.shoplog.KeptSpot;
import rungwise.shoplog.Said;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The question that a spot asks at a moment. Since a fact was told the deposit has grown older and the tries lie further back;
 * what held for one visit only is no longer there after it. What was told later counts more, by when it was so and not by when it was sent. What would loosen anything by mere time, as paint that
 * cures, stays as it was told.
 *
 * @param question in ids, with what was tried
 * @param letGo    pointers to what was told and no longer holds
 */
record AsOf(ObjectNode question, List<String> letGo) {
    private static final double MILLIS_AN_HOUR = 3_600_000;
    private static final double OLDEST_HOURS = 24 * 365 * 100.0;
    private static final String AGE = "age";
    private static final String TRIED = "tried";

    /**
     * The question.
     *
     * @param moment may lie before what was told
     * @param clock  what it is now; nothing can have been told later, whatever a clock elsewhere said
     */
    static AsOf of(KeptSpot spot, Instant moment, Instant clock, KnowledgeBase base) {
        double visit = base.decisions().value(DecisionId.A_VISIT);
        ObjectNode question = Mappers.json().createObjectNode();
        Set<String> gone = new TreeSet<>();
        Stream.concat(Stream.of(new Said(spot.at(), null, spot.question(), null, null)), spot.said().stream())
                .sorted(Comparator.comparing(Said::at)).forEach(said -> {
            ObjectNode told = (ObjectNode) said.told().deepCopy();
            double hours = hours(said.at().isAfter(clock) ? clock : said.at(), moment);
            if (hours >= visit) {
                gone.addAll(ToldFacts.letGo(told));
            }
            grown(told, hours);
            ToldFacts.merge(question, told);
        });
        gone.removeIf(pointer -> ToldFacts.isThere(question, pointer));
        spot.attempts().forEach(attempt -> tried(spot, attempt, moment, base, question.withArrayProperty(TRIED)));
        return new AsOf(question, List.copyOf(gone));
    }

    private static double hours(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / MILLIS_AN_HOUR;
    }

    private static void grown(ObjectNode told, double hours) {
        if (told.path(AGE).isString() && !told.path(AGE).stringValue().equals(Question.UNKNOWN)) {
            double then = Ages.hours(told.path(AGE).stringValue());
            told.put(AGE, Ages.iso(Math.max(0, Math.min(OLDEST_HOURS, then + hours))));
        }
        told.path(TRIED).forEach(one -> {
            if (one instanceof ObjectNode tried) {
                tried.put("hoursAgo", hundredths(tried.path("hoursAgo").asDouble(0) + hours));
            }
        });
    }

    private static double hundredths(double hours) {
        return Math.max(0, Math.round(hours * 100) / 100.0);
    }

    /** A method that this revision no longer knows may have brought anything. */
    private static void tried(KeptSpot spot, Attempt attempt, Instant moment, KnowledgeBase base, ArrayNode all) {
        ObjectNode tried = all.addObject().put(base.methods().containsKey(attempt.method()) ? "method" : "text", attempt.method())
                .put("outcome", attempt.outcome().word()).put("hoursAgo", hundredths(hours(attempt.at(), moment)));
        if (!attempt.prepared()) {
            tried.put("prepared", false);
        }
        spot.said().stream().filter(said -> said.attempt().filter(attempt.id()::equals).isPresent()).forEach(said -> {
            said.dwellMinutes().ifPresent(minutes -> tried.put("dwellMinutes", minutes));
            if (!said.signs().isEmpty()) {
                said.signs().forEach(tried.withArrayProperty("signs")::add);
            }
        });
    }
}
