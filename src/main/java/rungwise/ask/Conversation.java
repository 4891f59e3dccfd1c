package rungwise.ask;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
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
import tools.jackson.databind.JsonNode;

/**
 * Asks what it is on, what it is, how long it has been there, and then only what would change the next step. Nobody has to know
 * anything; a word that may mean several things is asked back with how to tell them, and never guessed.
 */
public final class Conversation {
    private static final int HEARD_AT_MOST = 4;
    private static final int LISTED = 8;

    private final KnowledgeBase base;
    private final Vocabulary vocabulary;
    private final Trials trials;
    private final Voice voice;
    private final Deque<Told> before = new ArrayDeque<>();
    private String meanwhile = "";

    public Conversation(Advisor advisor, ChanceTable chances, Voice voice) {
        this.base = advisor.knowledge();
        this.vocabulary = new Vocabulary(base);
        this.trials = new Trials(advisor, chances);
        this.voice = voice;
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
                return told;
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
        List<Called> listed = List.of();
        boolean wide = false;
        for (int heard = 0; heard < HEARD_AT_MOST; heard++) {
            Optional<String> said = voice.hear();
            Optional<Outcome> steered = steered(said, told);
            if (steered.isPresent()) {
                return steered.get();
            }
            if (Hearing.isUnknown(said.get())) {
                return Outcome.of(wide && id.equals(Told.SURFACE) ? all(told, id, listed) : told.unknown(id));
            }
            Optional<Called> meant = Hearing.letter(said.get(), listed.size()).map(listed::get)
                    .or(() -> Hearing.ways(said.get()).stream().flatMap(w -> names.id(w).stream()).findFirst().map(names::called));
            if (meant.isPresent()) {
                voice.say(say("taken", "name", meant.get().name()));
                return Outcome.of(told.with(id, id, List.of(meant.get().id())));
            }
            List<Called> mayBe = first(said.get(), Names::mayBe, names);
            wide = !mayBe.isEmpty();
            listed = wide ? mayBe : near(said.get(), names);
            voice.say(say(wide ? "may-be" : listed.isEmpty() ? "nothing-near" : "near-are", "said", PlainText.shown(said.get())));
            list(listed.stream().map(t -> t.tell().isEmpty() ? t.name() : say("told-by", "name", t.name(), "tell", t.tell())).toList());
        }
        voice.say(say("given-up"));
        return Outcome.of(told.unknown(id));
    }

    /** A surface that may be several is taken to be as delicate as all of them. */
    private Told all(Told told, String id, List<Called> listed) {
        voice.say(say("as-all"));
        return told.with(id, id, listed.stream().map(Called::id).toList());
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
        List<AskedFact.Reply> replies = fact.on(trials.kinds(told));
        Names names = vocabulary.replies(replies);
        put(told, fact.asks(), fact.gate().map(g -> base.gates().get(g).obtain()).orElse(""));
        list(replies.stream().map(AskedFact.Reply::says).toList());
        // danger that was named and not understood is never left open
        for (int heard = 0; heard < HEARD_AT_MOST || fact.anyTime(); heard++) {
            Optional<String> said = voice.hear();
            Optional<Outcome> steered = steered(said, told);
            if (steered.isPresent()) {
                return steered.get();
            }
            if (Hearing.isUnknown(said.get())) {
                return Outcome.of(told.unknown(fact.id()));
            }
            Optional<AskedFact.Reply> meant = Hearing.letter(said.get(), replies.size()).map(replies::get)
                    .or(() -> reply(said.get(), replies, names));
            if (meant.isPresent()) {
                return Outcome.of(told.with(fact.id(), Trials.gives(meant.get())));
            }
            Optional<JsonNode> freely = fact.takes().flatMap(t -> Hearing.freely(t, said.get(), vocabulary.ages()));
            if (freely.isEmpty()) {
                voice.say(say("not-read", "said", PlainText.shown(said.get())));
                continue;
            }
            Optional<Told> sound = sound(told.with(fact.id(), freely.get()));
            if (sound.isPresent()) {
                return Outcome.of(sound.get());
            }
        }
        voice.say(say("given-up"));
        return Outcome.of(told.unknown(fact.id()));
    }

    private static Optional<AskedFact.Reply> danger(String said, List<AskedFact.Reply> stops, Names names) {
        return reply(said, stops, names).or(() -> Hearing.isDenied(said) ? Optional.empty()
                : Hearing.within(said).stream().flatMap(run -> reply(run, stops, names).stream()).findFirst());
    }

    private static Optional<AskedFact.Reply> reply(String said, List<AskedFact.Reply> replies, Names names) {
        return Hearing.ways(said).stream().flatMap(w -> names.id(w).stream()).findFirst()
                .flatMap(id -> replies.stream().filter(r -> r.id().equals(id)).findFirst());
    }

    /** What was told, where a question may say it. */
    private Optional<Told> sound(Told told) {
        try {
            told.question(base);
            return Optional.of(told);
        } catch (BadQuestion bad) {
            Problem first = bad.problems().get(0);
            voice.say(say("wrong", "wrong", first.wrong(), "remedy", first.remedy()));
            return Optional.empty();
        }
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
