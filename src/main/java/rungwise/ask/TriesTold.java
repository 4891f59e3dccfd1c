package rungwise.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungwise.names.Names;
import rungwise.names.Vocabulary;
import rungwise.text.Texts;

/**
 * What a line says of tries: "tried shampoo, came off partly" and "vinegar did not touch it" name what was put on and what it did.
 * What was put on is taken out of the line, so that petrol on a cloth is no spill of petrol.
 */
final class TriesTold {
    /** A point within a figure parts nothing. */
    private static final Pattern CLAUSE = Pattern.compile("\\s*(?:[,;:!?]|\\.(?!\\d))+\\s*|\\s+(?=(?:" + any("ask.words.parting") + ")\\s)");
    private static final Pattern LINKED = Pattern.compile("^(?:" + any("ask.words.parting") + ")\\s+");
    /** Said for certain of a try, whatever follows. */
    private static final Pattern TRYING = Pattern.compile("\\b(?:" + any("ask.words.trying") + ")\\b\\s*");
    /** Said of a try where a product follows: a used car and a seat that was rubbed are none. */
    private static final Pattern USING = Pattern.compile("\\b(?:" + any("ask.words.using") + ")\\b\\s*");
    private static final Pattern PLACED = Pattern.compile("\\s(?=(?:" + any("ask.words.where") + ")\\s)");
    private static final Pattern NONE = Pattern.compile("(?:" + any("ask.words.none-tried") + ")\\b.*");

    private final Names products;
    private final Names outcomes;
    private final Names deposits;

    TriesTold(Vocabulary vocabulary) {
        this.products = vocabulary.everydayProducts();
        this.outcomes = vocabulary.outcomes();
        this.deposits = vocabulary.deposits();
    }

    private static String any(String id) {
        return Stream.of(Texts.said(id).split(", ")).sorted(Comparator.comparingInt(String::length).reversed())
                .map(Pattern::quote).collect(Collectors.joining("|"));
    }

    /**
     * One try.
     *
     * @param outcome id of how it ended; empty where nobody said
     */
    record One(String text, Optional<String> outcome) {
    }

    /**
     * What was heard.
     *
     * @param none whether it was said that nothing was tried
     * @param rest the line without it
     */
    record Heard(List<One> tries, boolean none, String rest) {
    }

    Heard in(String line) {
        List<String> clauses = Stream.of(CLAUSE.split(line.strip())).filter(c -> !c.isBlank()).toList();
        List<One> tries = new ArrayList<>();
        List<String> rest = new ArrayList<>();
        boolean none = false;
        for (int i = 0; i < clauses.size(); i++) {
            String clause = clauses.get(i).toLowerCase(Locale.ROOT);
            Optional<Said> said = said(clause, others(clauses, i));
            if (said.isEmpty()) {
                rest.add(clauses.get(i));
                continue;
            }
            rest.addAll(said.get().beside());
            if (said.get().text().isEmpty()) {
                none = true;
                continue;
            }
            String text = said.get().text();
            Optional<String> outcome = said.get().outcome();
            for (; outcome.isEmpty() && i + 1 < clauses.size() && endsAsProduct(clauses.get(i + 1)); i++) {
                text += ", " + linked(clauses.get(i + 1));
            }
            if (outcome.isEmpty() && i + 1 < clauses.size()) {
                outcome = ended(clauses.get(i + 1));
                i += outcome.isPresent() ? 1 : 0;
            }
            tries.add(new One(text, outcome));
        }
        return new Heard(List.copyOf(tries), none && tries.isEmpty(), tries.isEmpty() && !none ? line : String.join(", ", rest));
    }

    /** A reply to what was tried: all that was said is what was put on, save how it ended. */
    List<One> asked(String said) {
        Heard heard = in(said);
        if (!heard.tries().isEmpty()) {
            return heard.tries();
        }
        Optional<String> outcome = Stream.of(CLAUSE.split(said.strip())).skip(1).flatMap(c -> ended(c).stream()).findFirst();
        return List.of(new One(said, outcome));
    }

    /** How a try ended, as a whole clause says it. */
    Optional<String> ended(String clause) {
        String said = linked(clause);
        String[] words = said.split("\\s+");
        // with a word or two before it or more after it: "it came off partly", "came off partly with a cloth"
        Stream<String> parts = IntStream.range(0, Math.max(0, words.length - 1)).boxed()
                .flatMap(cut -> Stream.of(join(words, cut, words.length), join(words, 0, words.length - cut)));
        return Stream.concat(Hearing.ways(said).stream(), parts).flatMap(w -> outcomes.id(w).stream()).findFirst();
    }

    /** A clause that tells a try; an empty text says that there was none. */
    private record Said(String text, Optional<String> outcome, List<String> beside) {
    }

    private Optional<Said> said(String clause, String others) {
        Matcher none = NONE.matcher(linked(clause));
        if (none.matches()) {
            return Optional.of(new Said("", Optional.empty(), List.of()));
        }
        Matcher trying = TRYING.matcher(clause);
        Matcher using = USING.matcher(clause);
        if (trying.find()) {
            return Optional.of(after(clause, trying));
        }
        if (using.find() && !isUntold(after(clause, using).text())) {
            return Optional.of(after(clause, using));
        }
        return ending(linked(clause)).filter(e -> isProduct(e.text())).filter(e -> !isDeposit(e.text()) || isDeposit(others));
    }

    private Said after(String clause, Matcher verb) {
        String before = clause.substring(0, verb.start()).strip();
        String after = clause.substring(verb.end()).strip();
        Matcher placed = PLACED.matcher(after);
        int cut = placed.find() ? placed.start() : after.length();
        Said put = ending(after.substring(0, cut)).orElse(new Said(after.substring(0, cut), Optional.empty(), List.of()));
        return new Said(put.text().isEmpty() ? Texts.said("tried.unnamed") : put.text(), put.outcome().or(() -> ended(after.substring(cut).strip())),
                Stream.of(before, after.substring(cut).strip()).filter(b -> !b.isEmpty()).toList());
    }

    /** What was put on, where the words after it say how that ended. */
    private Optional<Said> ending(String clause) {
        String[] words = clause.strip().split("\\s+");
        return IntStream.range(1, words.length - 1).boxed().flatMap(from -> outcomes.id(join(words, from, words.length)).stream()
                .map(outcome -> new Said(join(words, 0, from), Optional.of(outcome), List.of()))).findFirst();
    }

    private static String join(String[] words, int from, int to) {
        return String.join(" ", List.of(words).subList(from, to));
    }

    private static String linked(String clause) {
        return LINKED.matcher(clause.strip().toLowerCase(Locale.ROOT)).replaceFirst("");
    }

    private static String others(List<String> clauses, int but) {
        return IntStream.range(0, clauses.size()).filter(i -> i != but).mapToObj(clauses::get).collect(Collectors.joining(", "));
    }

    private boolean isProduct(String said) {
        return Hearing.ways(linked(said)).stream().anyMatch(w -> products.id(w).isPresent());
    }

    /** "and a soft brush" goes on with what was put on; "and water spots" does not. */
    private boolean endsAsProduct(String said) {
        String[] words = linked(said).split("\\s+");
        return !TRYING.matcher(said.toLowerCase(Locale.ROOT)).find() && IntStream.range(0, words.length).anyMatch(from -> products.id(join(words, from, words.length)).isPresent());
    }

    private boolean isUntold(String said) {
        return Hearing.runs(said).stream().noneMatch(run -> products.id(run).isPresent());
    }

    private boolean isDeposit(String said) {
        return Hearing.runs(said).stream().anyMatch(run -> deposits.id(run).isPresent() || !deposits.mayBe(run).isEmpty());
    }
}
