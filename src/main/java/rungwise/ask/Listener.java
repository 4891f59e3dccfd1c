package rungwise.ask;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.words.AskedFact;
import rungwise.names.Names;
import rungwise.names.PlainAges;
import rungwise.names.Vocabulary;

/**
 * What a whole sentence tells, whatever was asked: "brake fluid, ten minutes ago, on the door" names a deposit, an age, a surface
 * and a place. The longest words that name something count, and what stands after "on" or "in" is rather where than what it is.
 */
final class Listener {
    private static final int LONGEST_RUN = 6;
    private static final int MOST_WORDS = 60;
    private static final int SHORTEST = 3;
    /** So many words say a reply in full; fewer could be about something else. */
    private static final int IN_FULL = 3;
    private static final String STOPS = ".*[,.;:!?]";

    private final KnowledgeBase base;
    private final Vocabulary vocabulary;
    private final Names deposits;
    private final Names surfaces;
    private final Names places;
    private final PlainAges ages;

    Listener(KnowledgeBase base, Vocabulary vocabulary) {
        this.base = base;
        this.vocabulary = vocabulary;
        this.deposits = vocabulary.deposits();
        this.surfaces = vocabulary.surfaces();
        this.places = vocabulary.places();
        this.ages = vocabulary.ages();
    }

    /**
     * What was heard, in the words in which it was said.
     *
     * @param place id of a place
     * @param signs what it looks and feels like, and where the vehicle was
     * @param facts other questions that were answered in full
     */
    record Heard(Optional<String> deposit, Optional<String> surface, Optional<String> place, Optional<String> age,
                 Map<AskedFact, AskedFact.Reply> signs, Map<AskedFact, AskedFact.Reply> facts) {
        boolean isEmpty() {
            return deposit.isEmpty() && surface.isEmpty() && place.isEmpty() && age.isEmpty() && signs.isEmpty() && facts.isEmpty();
        }
    }

    /** A word as it was said, and whether another clause begins after it. */
    private record Word(String said, boolean stops) {
        static Word of(String token) {
            return new Word(token.replaceAll("^[\"'(]+|[,.;:!?\"')]+$", ""), token.matches(STOPS));
        }
    }

    /** Listens to one line. */
    private final class Listening {
        private final List<Word> words;
        private final boolean whereFirst;
        private final boolean opening;
        private String deposit;
        private String surface;
        private String place;
        private String age;
        private final Map<AskedFact, AskedFact.Reply> signs = new LinkedHashMap<>();
        private final Map<AskedFact, AskedFact.Reply> facts = new LinkedHashMap<>();

        Listening(String line, boolean whereFirst, boolean opening) {
            List<Word> all = new ArrayList<>();
            for (String token : line.strip().split("\\s+")) {
                Word word = Word.of(token);
                if (!word.said().isEmpty() && all.size() < MOST_WORDS) {
                    all.add(word);
                }
            }
            this.words = all;
            this.opening = opening;
            this.whereFirst = whereFirst && all.stream().noneMatch(w -> Hearing.isWhere(w.said()));
        }

        Heard all() {
            boolean where = whereFirst;
            for (int from = 0; from < words.size();) {
                boolean begins = Hearing.isWhere(words.get(from).said());
                int to = takes(from, where);
                where = (where || begins) && !(to > from + 1 || !begins && to > from && words.get(to - 1).stops());
                from = Math.max(to, from + 1);
            }
            return new Heard(Optional.ofNullable(deposit), Optional.ofNullable(surface), Optional.ofNullable(place), Optional.ofNullable(age),
                    signs, facts);
        }

        /** Where the longest words end that tell something from here on; where they begin if none does. */
        private int takes(int from, boolean where) {
            int end = from;
            while (end < words.size() && end < from + LONGEST_RUN && (end == from || !words.get(end - 1).stops())) {
                end++;
            }
            for (int to = end; to > from; to--) {
                String run = String.join(" ", words.subList(from, to).stream().map(Word::said).toList());
                if (run.length() >= SHORTEST && (isAge(run, from) || tells(run, to - from, where))) {
                    return to;
                }
            }
            return from;
        }

        private boolean isAge(String run, int from) {
            boolean ahead = ages.isAhead(run) && (!opening || from > 0 && Hearing.isUntil(words.get(from - 1).said()));
            if (age != null || ahead || ages.iso(run).isEmpty()) {
                return false;
            }
            age = run;
            return true;
        }

        private boolean tells(String run, int many, boolean where) {
            boolean what = deposit == null && names(deposits, run);
            boolean on = surface == null && names(surfaces, run);
            boolean at = place == null && places.id(run).isPresent() && surfaces.id(run).isEmpty() && (where || on);
            if (what && !(where && (on || at))) {
                deposit = run;
                return true;
            }
            if (on) {
                surface = run;
            }
            if (at) {
                place = places.id(run).orElseThrow();
            }
            return on || at || replies(run, many);
        }

        private boolean replies(String run, int many) {
            for (AskedFact fact : base.questionWords().facts().values()) {
                if (fact.anyTime() || !fact.unnamed() && many < (fact.early() ? IN_FULL - 1 : IN_FULL)) {
                    continue;
                }
                Map<AskedFact, AskedFact.Reply> into = fact.unnamed() ? signs : facts;
                Optional<AskedFact.Reply> reply = vocabulary.replies(fact.replies()).id(run)
                        .flatMap(id -> fact.replies().stream().filter(r -> r.id().equals(id)).findFirst()).filter(r -> !r.gives().isEmpty());
                if (reply.isPresent()) {
                    into.putIfAbsent(fact, reply.get());
                    return true;
                }
            }
            return false;
        }
    }

    private static boolean names(Names names, String run) {
        return names.id(run).isPresent() || !names.mayBe(run).isEmpty();
    }

    /**
     * What a line tells.
     *
     * @param surfaceAsked whether it answers what it is on, so that a word that may be both is taken so
     */
    Heard hear(String line, boolean surfaceAsked) {
        return new Listening(line.toLowerCase(Locale.ROOT), surfaceAsked, true).all();
    }

    /** What a line tells besides the answer to something else: "overnight" is then rather how long the vehicle stays. */
    Heard beside(String line) {
        return new Listening(line.toLowerCase(Locale.ROOT), false, false).all();
    }
}
