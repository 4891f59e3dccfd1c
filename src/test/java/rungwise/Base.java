package rungwise;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rungwise.answer.Advisor;
import rungwise.answer.Answer;
import rungwise.knowledge.load.Mappers;
import rungwise.question.QuestionReader;
import rungwise.rules.said.Because;
import rungwise.start.Opened;
import rungwise.text.Texts;
import tools.jackson.databind.JsonNode;

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

    /** The entries of all YAML lists in a folder, file by file. */
    public static List<JsonNode> entries(Path folder) throws IOException {
        List<JsonNode> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
                Mappers.yaml().readTree(Files.readString(file)).forEach(all::add);
            }
        }
        return all;
    }

    public static <T> Map<String, T> with(Map<String, T> map, String id, T item) {
        Map<String, T> all = new java.util.TreeMap<>(map);
        all.put(id, item);
        return all;
    }

    /** What a reason found, in words. */
    public static String found(Because because) {
        return Texts.ENGLISH.of(because.figures());
    }
}
