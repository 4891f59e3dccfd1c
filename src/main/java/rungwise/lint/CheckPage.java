package rungwise.lint;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwise.knowledge.load.KnowledgeFiles;
import rungwise.knowledge.load.Mappers;

/**
 * What a check looks for.
 *
 * @param id    the check
 * @param says  what it looks for, in a sentence
 * @param why   what comes of it
 * @param wrong sample that it finds: first its file as a comment, then the fields of an entry that matter, or a rule
 * @param right the same put right
 */
public record CheckPage(String id, String says, String why, String wrong, String right) {
    private static final String FOLDER = "lint";

    public CheckPage {
        Stream.of(id, says, why, wrong, right).forEach(Objects::requireNonNull);
    }

    /** Every page by id of its check. */
    public static Map<String, CheckPage> all() {
        Map<String, CheckPage> pages = new TreeMap<>();
        KnowledgeFiles.builtIn(FOLDER).forEach((name, text) -> {
            CheckPage page = Mappers.yaml().readValue(text, CheckPage.class);
            pages.put(page.id(), page);
        });
        return Collections.unmodifiableMap(pages);
    }

    public static Optional<CheckPage> of(String id) {
        return Optional.ofNullable(all().get(id));
    }

    /** As text for a person. */
    public String text() {
        return String.join("\n", List.of(id + ": " + says, why, "", "Wrong:", indented(wrong), "",
                "Right:", indented(right), ""));
    }

    private static String indented(String sample) {
        return Arrays.stream(sample.strip().split("\n")).map(l -> "  " + l).collect(Collectors.joining("\n"));
    }
}
