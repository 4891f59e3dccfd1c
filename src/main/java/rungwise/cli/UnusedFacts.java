package rungwise.cli;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rungwise.answer.Answer;
import rungwise.knowledge.common.Sentence;
import rungwise.knowledge.load.Mappers;
import rungwise.question.FactUse;
import rungwise.text.Texts;
import tools.jackson.databind.JsonNode;

/** Facts that were given and did not count, as lines of text: those with one reason together. */
final class UnusedFacts {
    private UnusedFacts() {
    }

    /** What they are called, without their reasons. */
    static List<String> names(Answer answer) {
        JsonNode question = Mappers.json().valueToTree(answer.question());
        // what was done does not ask to have counted
        return answer.facts().unused().stream().map(FactUse.Unused::pointer).filter(p -> !p.startsWith("/done/") && !p.startsWith("/tried/"))
                .map(p -> name(p, question)).distinct().toList();
    }

    static List<String> lines(Answer answer) {
        if (answer.facts().unused().isEmpty()) {
            return List.of();
        }
        JsonNode question = Mappers.json().valueToTree(answer.question());
        Map<String, List<String>> byWhy = answer.facts().unused().stream().collect(Collectors.groupingBy(FactUse.Unused::why,
                LinkedHashMap::new, Collectors.mapping(u -> name(u.pointer(), question), Collectors.toList())));
        return byWhy.entrySet().stream().map(e -> Texts.said("unused.line", "facts", String.join(", ", e.getValue()),
                "why", Sentence.within(e.getKey()))).toList();
    }

    /** In plain words; of a list also the word that stands there. */
    private static String name(String pointer, JsonNode question) {
        String field = Arrays.stream(pointer.substring(1).split("/")).filter(s -> !s.matches("\\d+")).collect(Collectors.joining("-"));
        JsonNode value = question.at(pointer);
        return Texts.said("given." + field) + (pointer.matches(".*/\\d+") && value.isString() ? " " + value.asString().replace('_', ' ') : "");
    }
}
