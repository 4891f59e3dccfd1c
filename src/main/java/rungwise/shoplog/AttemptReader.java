package rungwise.shoplog;

import java.lang.reflect.RecordComponent;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.regex.Pattern;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.load.Mappers;
import rungwise.question.BadQuestion;
import rungwise.question.Named;
import rungwise.question.Problem;
import rungwise.question.Question;
import rungwise.question.QuestionReader;
import rungwise.question.WrongKind;
import rungwise.text.Near;
import rungwise.text.Texts;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.databind.exc.UnrecognizedPropertyException;
import tools.jackson.databind.node.ObjectNode;

/**
 * Reads an attempt from a parsed tree and checks it against what is known. Contaminant, age, surface, facts and setting
 * are read as those of a question are.
 */
public final class AttemptReader {
    private static final ObjectMapper MAPPER = Mappers.json();
    private static final List<String> ASKED = List.of("contaminant", "age", "surface", "facts", "setting");
    private static final List<String> METHODS = List.of("method", "advised");
    private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} ._/-]{0,63}");
    private static final Pattern ID = Pattern.compile("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");
    private static final Pattern REVISION = Pattern.compile("[0-9a-f]{12}");
    /** A deposit is not older than now: what lies further ahead than two clocks may differ was mistyped. */
    private static final Duration CLOCKS_DIFFER_BY = Duration.ofMinutes(5);
    private static final Instant EARLIEST = Instant.parse("1990-01-01T00:00:00Z");
    private static final int NOTE_CHARACTERS = 4_000;
    private static final int PHOTO_CHARACTERS = 500;

    private final KnowledgeBase base;
    private final InstantSource clock;
    private final Named named;

    /**
     * A reader.
     *
     * @param clock for attempts that do not say when they were made
     */
    public AttemptReader(KnowledgeBase base, InstantSource clock) {
        this.base = base;
        this.clock = clock;
        this.named = new Named(base);
    }

    /** What an attempt says beside what it shares with a question. */
    private record Rest(Optional<String> id, Optional<String> at, Optional<String> shop, Optional<String> bay,
                        Optional<String> spot, Optional<String> method, Optional<String> advised,
                        List<String> notFollowedBecause, Optional<String> outcome, Optional<Boolean> prepared,
                        OptionalDouble minutes, Optional<String> note, Optional<String> photo,
                        Optional<String> revision) {
        private Rest {
            id = or(id);
            at = or(at);
            shop = or(shop);
            bay = or(bay);
            spot = or(spot);
            method = or(method);
            advised = or(advised);
            notFollowedBecause = notFollowedBecause == null ? List.of() : List.copyOf(notFollowedBecause);
            outcome = or(outcome);
            prepared = or(prepared);
            minutes = minutes == null ? OptionalDouble.empty() : minutes;
            note = or(note);
            photo = or(photo);
            revision = or(revision);
        }

        private static <T> Optional<T> or(Optional<T> given) {
            return given == null ? Optional.empty() : given;
        }
    }

    /**
     * The attempt.
     *
     * @throws BadAttempt where a field is unknown, of the wrong kind, out of range, or names what is not known
     */
    public Attempt read(JsonNode tree) {
        if (!(tree instanceof ObjectNode whole)) {
            throw new BadAttempt(List.of(Problem.said("", "no-attempt", "kind",
                    tree.getNodeType().toString().toLowerCase(Locale.ROOT))));
        }
        List<Problem> problems = new ArrayList<>();
        ObjectNode other = whole.deepCopy();
        ObjectNode asked = MAPPER.createObjectNode();
        for (String field : ASKED) {
            Optional.ofNullable(other.remove(field)).ifPresent(value -> asked.set(field, value));
        }
        Optional<Question> question = question(asked, problems);
        methods(other, problems);
        Optional<Rest> rest = rest(other, problems);
        if (!whole.has("contaminant")) {
            problems.add(Problem.said("/contaminant", "contaminant-missing"));
        }
        rest.ifPresent(r -> check(r, problems));
        if (!problems.isEmpty()) {
            throw new BadAttempt(problems);
        }
        return attempt(question.orElseThrow(), rest.orElseThrow());
    }

    private Optional<Question> question(ObjectNode asked, List<Problem> problems) {
        try {
            return Optional.of(QuestionReader.read(asked, base));
        } catch (BadQuestion bad) {
            problems.addAll(bad.problems());
            return Optional.empty();
        }
    }

    /** Methods may be said as the trade calls them. */
    private void methods(ObjectNode other, List<Problem> problems) {
        for (String field : METHODS) {
            if (other.path(field).isString()) {
                other.put(field, named.method("/" + field, other.path(field).stringValue(), problems));
            } else if (other.has(field) && !other.path(field).isNull()) {
                problems.add(Problem.said("/" + field, "method-no-word", "field", field));
                other.remove(field);
            }
        }
    }

    private static Optional<Rest> rest(ObjectNode other, List<Problem> problems) {
        try {
            return Optional.of(MAPPER.treeToValue(other, Rest.class));
        } catch (UnrecognizedPropertyException e) {
            List<String> fields = new ArrayList<>(ASKED);
            Arrays.stream(Rest.class.getRecordComponents()).map(RecordComponent::getName).forEach(fields::add);
            problems.add(Problem.said("/" + pointed(e.getPropertyName()), "no-field-of-an-attempt", "field",
                    e.getPropertyName(), "near", Near.among(e.getPropertyName(), fields, Texts.said("near.fields"))));
        } catch (JacksonException e) {
            problems.add(WrongKind.in(other, e));
        }
        return Optional.empty();
    }

    private static String pointed(String field) {
        return field.replace("~", "~0").replace("/", "~1");
    }

    private void check(Rest rest, List<Problem> problems) {
        rest.id().filter(i -> !ID.matcher(i).matches()).ifPresent(i -> problems.add(Problem.said("/id", "no-id-of-a-log", "id", i)));
        rest.at().ifPresent(a -> time(a).ifPresentOrElse(t -> {
            Instant now = clock.instant().truncatedTo(ChronoUnit.SECONDS);
            if (t.isAfter(now.plus(CLOCKS_DIFFER_BY))) {
                problems.add(Problem.said("/at", "time-ahead", "time", a, "now", now));
            } else if (t.isBefore(EARLIEST)) {
                problems.add(Problem.said("/at", "time-long-ago", "time", a));
            }
        }, () -> problems.add(Problem.said("/at", "no-time", "time", a))));
        name("/shop", rest.shop(), problems);
        name("/bay", rest.bay(), problems);
        name("/spot", rest.spot(), problems);
        if (rest.method().isEmpty()) {
            problems.add(Problem.said("/method", "method-missing"));
        }
        for (int i = 0; i < rest.notFollowedBecause().size(); i++) {
            known("/notFollowedBecause/" + i, rest.notFollowedBecause().get(i), base.notFollowed().keySet(), problems);
        }
        if (rest.outcome().flatMap(Outcome::of).isEmpty()) {
            String words = String.join(", ", Outcome.words());
            problems.add(rest.outcome().map(o -> Problem.said("/outcome", "no-outcome", "word", o, "words", words))
                    .orElseGet(() -> Problem.said("/outcome", "outcome-missing", "words", words)));
        }
        rest.minutes().ifPresent(m -> {
            if (!(m >= 0 && m <= 100_000)) {
                problems.add(Problem.said("/minutes", "minutes-out-of-range", "value", Figures.exact(m)));
            }
        });
        text("/note", rest.note(), NOTE_CHARACTERS, problems);
        text("/photo", rest.photo(), PHOTO_CHARACTERS, problems);
        rest.revision().filter(r -> !REVISION.matcher(r).matches()).ifPresent(r -> problems.add(Problem.said("/revision",
                "no-revision", "revision", r)));
    }

    static void name(String pointer, Optional<String> name, List<Problem> problems) {
        name.filter(n -> !NAME.matcher(n).matches()).ifPresent(n -> problems.add(Problem.said(pointer, "no-short-name")));
    }

    private static void known(String pointer, String id, Collection<String> known, List<Problem> problems) {
        if (!known.contains(id)) {
            problems.add(known.size() <= 12
                    ? Problem.said(pointer, "unknown-of-few", "word", id, "words", String.join(", ", known))
                    : Problem.said(pointer, "unknown", "word", id, "near", Near.to(id, known)));
        }
    }

    /** What a database cannot hold, or gives back changed, is not taken in. */
    static void text(String pointer, Optional<String> text, int most, List<Problem> problems) {
        text.ifPresent(t -> {
            if (t.length() > most) {
                problems.add(Problem.said(pointer, "too-long", "most", most));
            }
            if (t.codePoints().anyMatch(c -> c < ' ' && c != '\n' && c != '\t' || c >= 0xD800 && c <= 0xDFFF)) {
                problems.add(Problem.said(pointer, "control-character"));
            }
        });
    }

    private static Optional<Instant> time(String text) {
        try {
            return Optional.of(OffsetDateTime.parse(text).toInstant().truncatedTo(ChronoUnit.MILLIS));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private Attempt attempt(Question question, Rest rest) {
        return new Attempt(rest.id().orElseGet(() -> UUID.randomUUID().toString()),
                rest.at().flatMap(AttemptReader::time).orElseGet(() -> clock.instant().truncatedTo(ChronoUnit.MILLIS)),
                rest.shop().orElse("here"), rest.bay(), rest.spot().map(SpotName::kept),
                question.contaminant().orElse(Question.UNKNOWN), question.age(),
                question.surface().stream().distinct().toList(), question.facts(),
                question.setting(), rest.method().orElseThrow(), rest.advised(), rest.notFollowedBecause(),
                Outcome.of(rest.outcome().orElseThrow()).orElseThrow(), rest.prepared().orElse(true), rest.minutes(),
                rest.note().filter(n -> !n.isEmpty()), rest.photo().filter(p -> !p.isEmpty()),
                rest.revision().orElse(base.revision()));
    }
}
