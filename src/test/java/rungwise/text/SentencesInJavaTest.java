package rungwise.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Sentences lie in the message file: in Java no text holds two words side by side, save what no person reads. */
class SentencesInJavaTest {
    private static final Path SOURCES = Path.of("src/main/java/rungwise");
    private static final Pattern WORDS = Pattern.compile("[A-Za-z]{2,}[,.:;]? +[A-Za-z]{2,}");
    /** Text blocks, comments and characters are stepped over; the first group is what a text holds. */
    private static final Pattern TOKEN = Pattern.compile("\"\"\".*?\"\"\"|//[^\\n]*|/\\*.*?\\*/|'(?:[^'\\\\]|\\\\.)+'"
            + "|\"((?:[^\"\\\\\\n]|\\\\.)*)\"", Pattern.DOTALL);
    /** They say that the program itself is wrong, to whoever mends it. */
    private static final Pattern FOR_PROGRAMMERS = Pattern.compile("new (IllegalState|IllegalArgument)Exception\\(");
    private static final Map<String, String> NO_SENTENCES = Map.ofEntries(
            Map.entry("book/Binding.java", "what a browser reads"),
            Map.entry("book/BookFolder.java", "the first line by which a later book knows an earlier one"),
            Map.entry("http/Routes.java", "a content type"),
            Map.entry("knowledge/load/KnowledgeLoader.java", "how the parser begins a message"),
            Map.entry("knowledge/overlay/Worst.java", "a dilution as knowledge writes it, to be read again"),
            Map.entry("lint/Probes.java", "questions in YAML"),
            Map.entry("shoplog/Place.java", "SQL"),
            Map.entry("shoplog/Shoplog.java", "SQL"),
            Map.entry("shoplog/SenderKey.java", "SQL"),
            Map.entry("question/BrokenText.java", "how parsers begin their messages"),
            Map.entry("shoplog/SpotStore.java", "SQL"),
            Map.entry("shoplog/UndoneRows.java", "SQL"),
            Map.entry("workup/Mixing.java", "a dilution as knowledge writes it"));

    private static Map<String, String> sources() throws IOException {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                all.put(SOURCES.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
        }
        return all;
    }

    /** Texts that hold two words side by side. */
    private static List<String> sentences(String source) {
        List<String> found = new ArrayList<>();
        StringBuilder statement = new StringBuilder();
        var tokens = TOKEN.matcher(source);
        int from = 0;
        while (tokens.find()) {
            statement.append(source, from, tokens.start());
            from = tokens.end();
            int begins = Math.max(statement.lastIndexOf(";"), Math.max(statement.lastIndexOf("{"), statement.lastIndexOf("}")));
            String text = tokens.group(1);
            if (text != null && WORDS.matcher(text).find() && !FOR_PROGRAMMERS.matcher(statement.substring(begins + 1)).find()) {
                found.add(text);
            }
        }
        return found;
    }

    @Test
    void no_text_in_java_is_a_sentence_that_a_person_reads() throws IOException {
        Map<String, List<String>> found = new TreeMap<>();
        sources().forEach((file, source) -> {
            if (!NO_SENTENCES.containsKey(file) && !sentences(source).isEmpty()) {
                found.put(file, sentences(source));
            }
        });
        assertThat(found).isEmpty();
    }

    @Test
    void every_file_that_is_left_out_still_has_such_a_text() throws IOException {
        Map<String, String> sources = sources();
        assertThat(NO_SENTENCES.keySet()).allSatisfy(file -> assertThat(sentences(sources.get(file))).as(file).isNotEmpty());
    }

    @Test
    void a_sentence_is_found_wherever_it_stands_and_nothing_else_is() {
        assertThat(sentences("a(\"Wear \" + it); // \"not this one\"\nb(x ? \"leave it, and wait\" : 'c', \"log.not-kept\");"))
                .containsExactly("leave it, and wait");
        assertThat(sentences("@Option(names = \"--all\", description = \"print all of it\") boolean all;")).containsExactly("print all of it");
        assertThat(sentences("throw new IllegalStateException(\"no such id\"); throw new InputProblem(\"no such file\");"))
                .containsExactly("no such file");
    }
}
