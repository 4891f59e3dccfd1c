package rungwise.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Sentences of the program and of the message file fit each other, also those that are said only where something fails. */
class MessagesTest {
    private static final Path SOURCES = Path.of("src/main/java");
    /** Calls that take the id of a sentence, by what they put before it, and the place of the id among what they take. */
    private static final List<Call> CALLS = List.of(new Call("Problem.said(", "wrong.", 1), new Call("Refused.said(", "refusal.", 1),
            new Call("InputProblem.said(", "cli.", 0), new Call("Texts.said(", "", 0));
    private static final Pattern PREFIX = Pattern.compile("String say\\(String id, Object\\.\\.\\. named\\) \\{\\s*return "
            + "Texts\\.said\\(\"([a-z.]+)\" \\+ id, named\\);");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
    private static final Pattern PLACE = Pattern.compile("\\{(\\w+)}");
    private static final Set<String> KINDS = Set.of("ask", "wrong", "refusal", "refused", "cli", "text", "compare", "identify", "log", "kind", "near",
            "place", "fault", "overlay", "lint", "rule", "diagnosis", "ladder", "learned", "check", "cases", "product", "book");

    private record Call(String opens, String prefix, int place) {
    }

    /** A sentence that is asked for, with the names of what is put into it. */
    private record Asked(String where, String id, Set<String> names) {
    }

    private static Map<String, String> sources() throws IOException {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                all.put(SOURCES.relativize(file).toString(), Files.readString(file));
            }
        }
        return all;
    }

    /** What stands between the brackets of a call, parted by its commas. */
    private static List<String> parts(String source, int from) {
        List<String> parts = new ArrayList<>();
        StringBuilder part = new StringBuilder();
        int depth = 0;
        boolean quoted = false;
        for (int i = from; i < source.length(); i++) {
            char c = source.charAt(i);
            if (quoted && c == '\\') {
                part.append(c).append(source.charAt(++i));
                continue;
            }
            quoted ^= c == '"';
            if (!quoted) {
                depth += c == '(' ? 1 : c == ')' ? -1 : 0;
                if (depth < 0 || c == ',' && depth == 0) {
                    parts.add(part.toString());
                    part.setLength(0);
                    if (depth < 0) {
                        return parts;
                    }
                    continue;
                }
            }
            part.append(c);
        }
        throw new IllegalStateException("a call does not end");
    }

    private static List<String> literals(String text) {
        return LITERAL.matcher(text).results().map(r -> r.group(1)).toList();
    }

    private static List<Asked> asked() throws IOException {
        List<Asked> asked = new ArrayList<>();
        sources().forEach((name, source) -> {
            List<Call> calls = new ArrayList<>(CALLS);
            Matcher prefix = PREFIX.matcher(source);
            if (prefix.find()) {
                calls.add(new Call(" say(", prefix.group(1), 0));
                calls.add(new Call("(say(", prefix.group(1), 0));
            }
            for (Call call : calls) {
                for (int at = source.indexOf(call.opens()); at >= 0; at = source.indexOf(call.opens(), at + 1)) {
                    if (Character.isLetter(call.opens().charAt(0)) && at > 0 && Character.isLetter(source.charAt(at - 1))) {
                        continue;
                    }
                    List<String> parts = parts(source, at + call.opens().length());
                    String id = parts.get(call.place());
                    // an id that is put together, or handed on, is known only when the program runs
                    if (literals(id).isEmpty() || id.matches("(?s).*\"\\s*\\+.*")) {
                        continue;
                    }
                    Set<String> names = new TreeSet<>();
                    for (int i = call.place() + 1; i < parts.size(); i += 2) {
                        names.addAll(literals(parts.get(i)));
                    }
                    ids(id).forEach(one -> asked.add(new Asked(name, call.prefix() + one, names)));
                }
            }
        });
        return asked;
    }

    /** Of a choice, what it may come out as, and not what it is made by. */
    private static List<String> ids(String id) {
        return id.contains("?") ? literals(id.substring(id.indexOf('?'))) : literals(id);
    }

    private static Set<String> places(String sentence) {
        return PLACE.matcher(sentence).results().map(r -> r.group(1)).collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void every_sentence_that_is_asked_for_is_there_and_gets_all_that_it_names() throws IOException {
        List<String> wrong = new ArrayList<>();
        List<Asked> all = asked();
        for (Asked one : all) {
            List<String> ids = one.id().startsWith("wrong.") ? List.of(one.id(), one.id() + ".do") : List.of(one.id());
            for (String id : ids) {
                if (!Texts.ENGLISH.has(id)) {
                    wrong.add(one.where() + " asks for " + id);
                } else if (!one.names().containsAll(places(Texts.ENGLISH.all().get(id)))) {
                    wrong.add(one.where() + " gives " + one.names() + " to " + Texts.ENGLISH.all().get(id));
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(all).hasSizeGreaterThan(150);
    }

    @Test
    void every_sentence_is_asked_for() throws IOException {
        Set<String> said = new TreeSet<>();
        for (String source : sources().values()) {
            said.addAll(literals(source));
        }
        assertThat(Texts.ENGLISH.all().keySet()).filteredOn(id -> KINDS.contains(id.split("\\.")[0]))
                // a kind of refusal, an action, an opening and a step are said by words of the program or of knowledge
                .filteredOn(id -> !id.matches("refused\\..*|rule\\.kind\\..*|book\\.(chance|chapter|cites)\\..*|identify\\.verdict\\..*|text\\.(action|opens|passed-over|next-door|state)\\..*"))
                .filteredOn(id -> !id.matches("log\\.(full|busy|unreachable)"))
                .filteredOn(id -> !said.contains(id) && !said.contains(id.replaceFirst("\\.do$", "").replaceFirst("^[a-z]+\\.", "")))
                .isEmpty();
    }
}
