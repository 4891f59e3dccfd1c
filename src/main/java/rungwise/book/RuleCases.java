package rungwise.book;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import rungwise.answer.Advisor;
import rungwise.knowledge.load.Mappers;
import rungwise.question.BadQuestion;
import rungwise.question.QuestionReader;
import rungwise.rules.RuleBook;
import tools.jackson.databind.JsonNode;

/** Which cases fire which rule. */
public final class RuleCases {
    private final Map<String, List<String>> byRule = new TreeMap<>();

    private RuleCases() {
    }

    /** Answers every case of a folder, each from a cold start, so that a rule whose conclusion is kept shows too. */
    public static RuleCases of(Path folder, Advisor advisor) throws IOException {
        RuleCases all = new RuleCases();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
                for (JsonNode one : Mappers.yaml().readTree(Files.readString(file))) {
                    all.add(one, advisor);
                }
            }
        }
        return all;
    }

    List<String> of(String rule) {
        return byRule.getOrDefault(rule, List.of());
    }

    private void add(JsonNode one, Advisor advisor) {
        RuleBook book = advisor.rules().unfired();
        try {
            new Advisor(advisor.knowledge(), book).answer(QuestionReader.read(one.path("question"),
                    advisor.knowledge()));
        } catch (BadQuestion refused) {
            return; // a case of a wrong question fires nothing
        }
        book.fired().forEach(rule -> byRule.computeIfAbsent(rule, r -> new ArrayList<>())
                .add(one.path("name").asString()));
    }
}
