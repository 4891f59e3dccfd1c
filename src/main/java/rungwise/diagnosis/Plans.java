package rungwise.diagnosis;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import rungwise.answer.Advisor;
import rungwise.knowledge.deposit.Observation;
import rungwise.ladder.ChanceTable;
import rungwise.ladder.Suspects;
import rungwise.question.Question;

/**
 * What would be done about each suspect. Signs that only tell what lies there do not change it, so that it is worked out once for a spot and serves while more is
 * told of it; a few spots are kept.
 */
final class Plans {
    private static final int SPOTS = 8;

    private final Advisor advisor;
    private final List<String> borrowed;
    private final Map<Key, Map<String, Plan>> known = Collections.synchronizedMap(new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, Map<String, Plan>> eldest) {
            return size() > SPOTS;
        }
    });

    private record Key(Question question, ChanceTable chances) {
    }

    Plans(Advisor advisor) {
        this.advisor = advisor;
        this.borrowed = advisor.knowledge().signs().checks().values().stream().flatMap(c -> c.method().stream()).distinct().toList();
    }

    /** What would be done about each deposit on this spot. */
    Function<String, Plan> on(Question question, ChanceTable chances) {
        Question plain = question.noticing(question.observations().stream().filter(o -> bears(advisor.knowledge().observations().get(o))).toList(), List.of())
                .wanting(borrowed);
        Map<String, Plan> here = known.computeIfAbsent(new Key(plain, chances), k -> new ConcurrentHashMap<>());
        return deposit -> here.computeIfAbsent(deposit, d -> Plan.of(d, advisor.ladder(plain.about(d), Suspects.named(d), false, chances)));
    }

    /** Whether it changes what may be done: most signs tell only what lies there. */
    private boolean bears(Observation sign) {
        return sign.treatAs().isPresent() || sign.stops().isPresent() || !sign.speaks();
    }
}
