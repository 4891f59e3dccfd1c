package rungwise.ask;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import rungwise.answer.Advisor;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.words.AskedFact;
import rungwise.ladder.ChanceTable;
import rungwise.names.Called;
import rungwise.names.Names;
import rungwise.names.Vocabulary;
import rungwise.question.BadQuestion;
import rungwise.question.PlainText;
import rungwise.question.Problem;
import rungwise.text.Texts;

/**
 * Asks what it is on, what it is, how long it has been there, and then only what would change the next step. Nobody has to know
 * anything; a word that may mean several things is asked back with how to tell them, and never guessed.
 */
public final class Conversation {
    private static final int HEARD_AT_MOST = 4;
    private static final int LISTED = 8;
    /** A shorter word within a sentence says nothing by itself. */
    private static final int SHORTEST = 3;

    private final KnowledgeBase base;
    private final Vocabulary vocabulary;
    private final Trials trials;
    private final Voice voice;
    private final Overheard overheard;
    private final Deque<Told> before = new ArrayDeque<>();
    /** Wide words that were said before it was asked what is meant by them. */
    private final Map<String, String> pending = new HashMap<>();
    private String meanwhile = "";

    public Conversation(Advisor advisor, ChanceTable chances, Voice voice) {
        this.base = advisor.knowledge();
        this.vocabulary = new Vocabulary(base);
        this.trials = new Trials(advisor, chances);
        this.voice = voice;
        this.overheard = new Overheard(base, vocabulary, trials, voice);
    }

    /** How a question ended. */
    private enum Turn {
        BACK, GONE
    }

    /** What is known after a question, or how it ended without an answer. */
    private record Outcome(Optional<Told> told, Optional<Turn> turn) {
        static Outcome of(Told told) {
            return new Outcome(Optional.of(told), Optional.empty());
        }

        static Outcome gone(Told told) {
            return new Outcome(Optional.of(told), Optional.of(Turn.GONE));
        }

        static Outcome of(Turn turn) {
            return new Outcome(Optional.empty(), Optional.of(turn));
        }
    }

    /** Talks until there is nothing left to ask, or nobody to ask. */
    public Told talk() {
        Told told = Told.nothing();
        for (Optional<Outcome> one = turn(told); one.isPresent(); one = turn(told)) {
            Optional<Turn> turn = one.get().turn();
            if (turn.filter(Turn.GONE::equals).isPresent()) {
                return one.get().told().orElse(told);
            }
            if (turn.isPresent()) {
                told = back(told);
            } else {
                before.push(told);
                told = one.get().told().orElseThrow();
            }
        }
        return told;
    }

    private Told back(Told told) {
        if (before.isEmpty()) {
            voice.say(say("nothing-before"));
            return told;
        }
        return before.pop();
    }

    /** The next question, asked; empty where there is none. */
    private Optional<Outcome> turn(Told told) {
        if (!told.wasAsked(Told.SURFACE)) {
            return Optional.of(named(told, Told.SURFACE, say("surface"), say("surface-such-as"), vocabulary.surfaces()));
        }
        Answer now = trials.answer(told);
        if (trials.isHeld(told, now)) {
            return Optional.empty();
        }
        if (!told.wasAsked(Told.DEPOSIT)) {
            return Optional.of(named(told, Told.DEPOSIT, say("deposit"), say("deposit-such-as"), vocabulary.deposits()));
        }
        long left = Math.round(base.decisions().value(DecisionId.QUESTIONS_AT_MOST)) - told.asked().size();
        if (left > 1 && told.openTry().isPresent() && trials.isOutcomeWorthAsking(told, now)) {
            return Optional.of(outcome(told));
        }
        Optional<AskedFact> next = left <= 0 ? Optional.empty() : left == 1 ? trials.danger(told, now).or(() -> trials.next(told, now))
                : trials.next(told, now);
        if (next.isEmpty()) {
            voice.say(say(left <= 0 ? "enough-asked" : "nothing-changes"));
        }
        next.ifPresent(f -> meanwhile(now));
        return next.map(f -> fact(told, f));
    }

    /** A stop that more could lift is said at once, and not only when all was asked. */
    private void meanwhile(Answer now) {
        String text = now.isStopped() ? now.next().text() : "";
        if (!text.isEmpty() && !text.equals(meanwhile)) {
            voice.say(say("meanwhile", "text", text));
        }
        meanwhile = text;
    }

    private Outcome named(Told told, String id, String asks, String such, Names names) {
        put(told, asks, such);
        Told known = told;
        List<Called> listed = List.of();
        List<Called> wide = List.of();
        Optional<String> early = Optional.ofNullable(pending.remove(id));
        for (int heard = 0; heard < HEARD_AT_MOST; heard++) {
            Optional<String> said = early.isPresent() ? early : voice.hear();
            early = Optional.empty();
            if (said.isEmpty()) {
                return Outcome.gone(open(known, id, wide).orElse(known));
            }
            Optional<Outcome> steered = steered(said, known);
            if (steered.isPresent()) {
                return steered.get();
            }
            if (Hearing.isUnknown(said.get())) {
                return Outcome.of(open(known, id, wide).map(this::asAll).orElse(known.unknown(id)));
            }
            if (!listed.isEmpty() && Hearing.isNo(said.get())) {
                voice.say(say("other-word"));
                listed = List.of();
                continue;
            }
            if (listed.size() > 1 && Hearing.isYes(said.get())) {
                voice.say(say("which"));
                continue;
            }
            Optional<Called> meant = meant(said.get(), names, listed);
            if (meant.isEmpty()) {
                known = overheard.placeOf(said.get(), known, names);
            }
            List<Called> mayBe = meant.isPresent() ? List.of() : among(said.get(), id, known, names, listed);
            if (meant.isPresent() || mayBe.size() == 1) {
                return taken(known, id, meant.orElseGet(() -> mayBe.get(0)));
            }
            if (mayBe.isEmpty()) {
                Overheard.Found found = overheard.in(said.get(), id, known);
                pending.putAll(found.open());
                boolean more = found.told().isPresent();
                known = found.told().orElse(known);
                early = Optional.ofNullable(pending.remove(id));
                if (early.isPresent()) {
                    continue;
                }
                if (more && (known.wasAsked(id) || wide.isEmpty())) {
                    return Outcome.of(known);
                }
                if (more || !found.open().isEmpty()) {
                    continue;
                }
            }
            wide = mayBe.isEmpty() ? wide : mayBe;
            listed = mayBe.isEmpty() ? near(said.get(), names) : mayBe;
            voice.say(say(!mayBe.isEmpty() ? "may-be" : listed.isEmpty() ? nothingNear(id) : listed.size() == 1 ? "near-is" : "near-are",
                    "said", PlainText.shown(said.get())));
            list(listed.stream().map(t -> t.tell().isEmpty() ? t.name() : say("told-by", "name", t.name(), "tell", t.tell())).toList());
        }
        voice.say(say("given-up"));
        return Outcome.of(open(known, id, wide).map(this::asAll).orElse(known.unknown(id)));
    }

    /** Whoever names a surface that nobody knows is told how to tell surfaces apart: by the place first, then by its looks. */
    private static String nothingNear(String id) {
        return id.equals(Told.SURFACE) ? "nothing-near-surface" : "nothing-near";
    }

    /** What is meant by a letter of a list, by yes to the only one in it, by what it is called, or by part of that among those listed. */
    private static Optional<Called> meant(String said, Names names, List<Called> listed) {
        Optional<Called> named = Hearing.letter(said, listed.size()).map(listed::get)
                .or(Hearing.isYes(said) ? listed.stream()::findFirst : Optional::empty)
                .or(() -> Hearing.ways(said).stream().flatMap(w -> names.id(w).stream()).findFirst().map(names::called));
        List<Called> partly = named.isPresent() || listed.isEmpty() ? List.of()
                : partly(said, names, listed);
        return named.or(() -> partly.size() == 1 ? Optional.of(partly.get(0)) : Optional.empty());
    }

    /** Of what was listed, what a part of its name was said of. */
    private static List<Called> partly(String said, Names names, List<Called> listed) {
        return first(said, (n, w) -> n.partly(w).stream().filter(listed::contains).toList(), names);
    }

    /** What a word may mean: of what was listed, where it means or names some of that; else whatever it may. */
    private List<Called> among(String said, String id, Told told, Names names, List<Called> listed) {
        List<Called> mayBe = Hearing.ways(said).stream().map(w -> overheard.here(id, w, names, told)).filter(f -> !f.isEmpty()).findFirst()
                .orElse(List.of()).stream().limit(LISTED).toList();
        List<Called> both = mayBe.stream().filter(listed::contains).toList();
        List<Called> partly = listed.isEmpty() || !both.isEmpty() ? both
                : partly(said, names, listed);
        return !both.isEmpty() ? both : !partly.isEmpty() ? partly : mayBe;
    }

    /** A surface that stays one of several is all of them. */
    private static Optional<Told> open(Told told, String id, List<Called> wide) {
        return wide.isEmpty() || !id.equals(Told.SURFACE) ? Optional.empty()
                : Optional.of(told.with(id, id, wide.stream().map(Called::id).toList()));
    }

    private Told asAll(Told told) {
        voice.say(say("as-all"));
        return told;
    }

    private Outcome taken(Told told, String id, Called meant) {
        voice.say(say("taken", "name", meant.name()));
        return Outcome.of(told.with(id, id, List.of(meant.id())));
    }

    private static List<Called> near(String said, Names names) {
        List<Called> partly = first(said, (n, w) -> n.partly(w), names);
        return partly.isEmpty() ? first(said, (n, w) -> n.nearest(w), names) : partly;
    }

    private static List<Called> first(String said, BiFunction<Names, String, List<Called>> look, Names names) {
        return Hearing.ways(said).stream().map(w -> look.apply(names, w)).filter(f -> !f.isEmpty()).findFirst().orElse(List.of()).stream()
                .limit(LISTED).toList();
    }

    private Outcome fact(Told told, AskedFact fact) {
        List<AskedFact.Reply> replies = trials.replies(fact, told);
        Names names = vocabulary.replies(replies);
        put(told, fact.asks(), fact.gate().map(g -> base.gates().get(g).obtain()).orElse(""));
        list(replies.stream().map(AskedFact.Reply::says).toList());
        Told known = told;
        // danger that was named and not understood is never left open
        for (int heard = 0; heard < HEARD_AT_MOST || fact.anyTime(); heard++) {
            Optional<String> said = voice.hear();
            if (said.isEmpty()) {
                return Outcome.gone(known);
            }
            Optional<Outcome> steered = steered(said, known);
            if (steered.isPresent()) {
                return steered.get();
            }
            if (Hearing.isUnknown(said.get())) {
                return Outcome.of(known.unknown(fact.id()));
            }
            Optional<AskedFact.Reply> meant = Hearing.letter(said.get(), replies.size()).map(replies::get)
                    .or(() -> reply(said.get(), replies, names));
            if (meant.isPresent()) {
                return Outcome.of(known.with(fact.id(), Trials.gives(meant.get())));
            }
            Told before = known;
            Optional<Told> answered = freely(said.get(), fact, before).or(() -> within(said.get(), fact, replies, names, before));
            if (answered.isPresent()) {
                return Outcome.of(answered.get());
            }
            known = overheard.beside(said.get(), before);
            voice.say(!known.equals(before) ? fact.asks()
                    : wrong(said.get(), fact, before).orElseGet(() -> say("not-read", "said", PlainText.shown(said.get()))));
        }
        voice.say(say("given-up"));
        return Outcome.of(known.unknown(fact.id()));
    }

    /** What a try did of which only was said that it was made. */
    private Outcome outcome(Told told) {
        List<String> ids = List.copyOf(base.questionWords().outcomes().keySet());
        put(told, say("outcome", "tried", PlainText.shown(told.openTry().orElseThrow())), "");
        list(ids.stream().map(id -> base.questionWords().outcomes().get(id).meaning()).toList());
        Told known = told;
        for (int heard = 0; heard < HEARD_AT_MOST; heard++) {
            Optional<String> said = voice.hear();
            Optional<Outcome> steered = steered(said, known);
            if (steered.isPresent()) {
                return said.isEmpty() ? Outcome.gone(known) : steered.get();
            }
            if (Hearing.isUnknown(said.get())) {
                return Outcome.of(known.unknown(Told.OUTCOME));
            }
            Optional<String> meant = Hearing.letter(said.get(), ids.size()).map(ids::get).or(() -> overheard.ended(said.get()));
            if (meant.isPresent()) {
                return Outcome.of(known.ended(meant.get()));
            }
            known = overheard.beside(said.get(), known);
            voice.say(say("not-read", "said", PlainText.shown(said.get())));
        }
        voice.say(say("given-up"));
        return Outcome.of(known.unknown(Told.OUTCOME));
    }

    private static Optional<AskedFact.Reply> danger(String said, List<AskedFact.Reply> stops, Names names) {
        return reply(said, stops, names).or(() -> Hearing.isDenied(said) ? Optional.empty()
                : Hearing.within(said).stream().flatMap(run -> reply(run, stops, names).stream()).findFirst());
    }

    private static Optional<AskedFact.Reply> reply(String said, List<AskedFact.Reply> replies, Names names) {
        return Hearing.ways(said).stream().flatMap(w -> names.id(w).stream()).findFirst()
                .flatMap(id -> replies.stream().filter(r -> r.id().equals(id)).findFirst());
    }

    private Optional<Told> freely(String said, AskedFact fact, Told told) {
        return fact.takes().flatMap(t -> Hearing.freely(t, said, vocabulary)).map(v -> told.with(fact.id(), v)).filter(t -> problem(t).isEmpty())
                .map(t -> fact.id().equals(Told.TRIED) && overheard.tellsOutcome(said) ? t.hearing(Told.OUTCOME, Told.NOTHING) : t);
    }

    /** A reply within more that was said; nothing of a sentence that denies something else. */
    private Optional<Told> within(String said, AskedFact fact, List<AskedFact.Reply> replies, Names names, Told told) {
        return Hearing.runs(said).stream().filter(run -> !run.equals(said) && Hearing.isTaken(run, said))
                .flatMap(run -> reply(run, replies, names).map(r -> told.with(fact.id(), Trials.gives(r)))
                        .or(() -> run.length() < SHORTEST ? Optional.empty() : freely(run, fact, told)).stream()).findFirst()
                .map(t -> overheard.beside(said, t));
    }

    /** Why a question cannot say what was told; empty where it can. */
    private Optional<Problem> problem(Told told) {
        try {
            told.question(base);
            return Optional.empty();
        } catch (BadQuestion bad) {
            return Optional.of(bad.problems().get(0));
        }
    }

    private Optional<String> wrong(String said, AskedFact fact, Told told) {
        return fact.takes().flatMap(t -> Hearing.freely(t, said, vocabulary)).flatMap(v -> problem(told.with(fact.id(), v)))
                .map(p -> say("wrong", "wrong", p.wrong(), "remedy", p.remedy()));
    }

    /** What is understood whatever was asked: nobody there, back, and danger. */
    private Optional<Outcome> steered(Optional<String> said, Told told) {
        if (said.isEmpty()) {
            return Optional.of(Outcome.of(Turn.GONE));
        }
        if (Hearing.isBack(said.get())) {
            return Optional.of(Outcome.of(Turn.BACK));
        }
        return base.questionWords().facts().values().stream().filter(AskedFact::anyTime).flatMap(f -> {
            List<AskedFact.Reply> stops = f.replies().stream().filter(r -> !r.gives().isEmpty()).toList();
            return danger(said.get(), stops, vocabulary.replies(stops)).stream().map(r -> Outcome.of(asIf(told).with(f.id(), Trials.gives(r))));
        }).findFirst();
    }

    /** Danger ends the talk, so that what was not asked yet is left open. */
    private static Told asIf(Told told) {
        return told.wasAsked(Told.SURFACE) ? told : told.unknown(Told.SURFACE);
    }

    private void put(Told told, String asks, String how) {
        voice.say("");
        voice.say(say("question", "number", told.asked().size() + 1, "asks", asks));
        if (!how.isEmpty()) {
            voice.say(say("how", "how", how));
        }
    }

    private void list(List<String> choices) {
        IntStream.range(0, choices.size()).forEach(i -> voice.offer(Hearing.letter(i), choices.get(i)));
    }

    private static String say(String id, Object... named) {
        return Texts.said("ask." + id, named);
    }
}
