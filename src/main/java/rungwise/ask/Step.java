package rungwise.ask;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;

/**
 * The next step as whoever does it sees it; what is merely still asked is none of it.
 *
 * @param action what is done, by which method, or which hold it is, and until when
 * @param first  what must be done or agreed before
 */
record Step(Main action, List<String> first) {
    record Main(String action, Optional<String> method, Optional<String> hold, Optional<String> until) {
    }

    static Step of(Answer answer, KnowledgeBase base) {
        Answer.Next next = answer.next();
        Stream<String> gates = answer.rungs().stream().filter(r -> next.method().filter(r.method()::equals).isPresent()).limit(1)
                .flatMap(r -> r.gates().stream().filter(g -> r.isMissing(g.id()))).map(Answer.GateState::id)
                .filter(g -> !base.gates().get(g).asks());
        return new Step(new Main(next.action(), next.method(), answer.hold().map(Answer.Held::what), next.until()),
                Stream.concat(next.steps().stream().map(Answer.Due::step), gates).distinct().sorted().toList());
    }
}
