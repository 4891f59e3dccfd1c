package rungwise;

import java.util.Map;
import java.util.Optional;
import rungwise.knowledge.Mappers;
import rungwise.ladder.Advisor;
import rungwise.ladder.Answer;
import rungwise.ladder.Opened;
import rungwise.ladder.QuestionReader;

/** The built-in knowledge and rules, opened once for all tests. */
public final class Base {
    private static final Advisor ADVISOR = Opened.from(Optional.empty(), Optional.empty()).orElseThrow();

    private Base() {
    }

    public static Advisor advisor() {
        return ADVISOR;
    }

    /** Answers a question written as YAML. */
    public static Answer ask(String yaml) {
        return ask(ADVISOR, yaml);
    }

    public static Answer ask(Advisor advisor, String yaml) {
        return advisor.answer(QuestionReader.read(Mappers.question().readTree(yaml), advisor.knowledge()), true);
    }

    public static boolean bars(Answer answer, String method) {
        return answer.barred().stream().anyMatch(b -> b.method().equals(method));
    }

    public static <T> Map<String, T> with(Map<String, T> map, String id, T item) {
        Map<String, T> all = new java.util.TreeMap<>(map);
        all.put(id, item);
        return all;
    }
}
