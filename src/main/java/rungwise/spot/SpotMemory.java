package rungwise.spot;

import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import rungwise.answer.Advisor;
import rungwise.compare.WhatIf;
import rungwise.diagnosis.Identifier;
import rungwise.diagnosis.SpotAnswer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.ladder.ChanceTable;
import rungwise.question.BadQuestion;
import rungwise.question.Named;
import rungwise.question.Problem;
import rungwise.question.Question;
import rungwise.question.QuestionReader;
import rungwise.shoplog.Attempt;
import rungwise.shoplog.AttemptReader;
import rungwise.shoplog.BadAttempt;
import rungwise.shoplog.Cursor;
import rungwise.shoplog.Kept;
import rungwise.shoplog.KeptSpot;
import rungwise.shoplog.Said;
import rungwise.shoplog.SenderKey;
import rungwise.shoplog.SpotPage;
import rungwise.shoplog.SpotStore;
import rungwise.shoplog.SpotSurface;
import rungwise.shoplog.UndoOrder;
import rungwise.shoplog.Undone;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Keeps a spot from the first question to the last try, and says at any time what to do next. For many threads. */
public final class SpotMemory {
    private final Advisor advisor;
    private final KnowledgeBase base;
    private final Identifier identifier;
    private final AttemptReader reader;
    private final SpotStore store;
    private final Supplier<ChanceTable> chances;
    private final InstantSource clock;

    /**
     * The memory.
     *
     * @param chances asked after each attempt was kept
     */
    public SpotMemory(Advisor advisor, SpotStore store, Supplier<ChanceTable> chances, InstantSource clock) {
        this.advisor = advisor;
        this.base = advisor.knowledge();
        this.identifier = new Identifier(advisor);
        this.reader = new AttemptReader(base, clock);
        this.store = store;
        this.chances = chances;
        this.clock = clock;
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MILLIS);
    }

    /**
     * Keeps a new spot.
     *
     * @param question as for a ladder
     * @throws BadQuestion where a ladder would not be answered
     */
    public SpotNow begin(JsonNode question, Optional<SenderKey> key) {
        boolean whatIf = WhatIf.isAsked(question);
        JsonNode bare = WhatIf.without(question);
        QuestionReader.read(bare, base);
        return now(store.begin(Named.inIds(bare, base), now(), key), false, whatIf);
    }

    /**
     * The spot as it stands now.
     *
     * @param id  as somebody says it
     * @param all judge every remover
     * @throws UnknownSpot where there is none
     * @throws BadQuestion where this revision no longer knows what was told of it
     */
    public SpotNow show(String id, boolean all) {
        return now(kept(id), all, false);
    }

    /**
     * Keeps an attempt on a spot.
     *
     * @param attempt the fields that an attempt has and the spot does not know, and what became known with it
     * @throws BadAttempt where it cannot be kept
     */
    public SpotTried attempt(String id, JsonNode attempt, Optional<SenderKey> key) {
        KeptSpot spot = kept(id);
        // what was told since might no longer go together with what came with it
        Optional<Attempt> before = key.flatMap(store::under);
        return before.isPresent() ? new SpotTried(spot.id(), before.get(), now(spot, false, false).answer()) : keep(spot, attempt, key);
    }

    private SpotTried keep(KeptSpot spot, JsonNode attempt, Optional<SenderKey> key) {
        AttemptOnSpot made = AttemptOnSpot.read(attempt, spot.id(), base, reader, (moment, also) ->
                AsOf.of(and(spot, also), moment, now(), base).question());
        QuestionReader.read(AsOf.of(and(spot, made.said()), now(), now(), base).question(), base);
        Kept kept = store.add(made.attempt(), made.said(), key);
        return new SpotTried(spot.id(), kept.attempt(), now(kept(spot.id()), false, false).answer());
    }

    /**
     * Adds what became known of a spot.
     *
     * @param facts fields of a question; lists of what was done, seen or agreed grow, all else takes the place of what was told
     * @param key   of the sender: the second time it comes nothing is added
     * @throws BadQuestion where a question that says so would not be answered
     */
    public SpotNow tell(String id, JsonNode facts, Optional<SenderKey> key) {
        KeptSpot spot = kept(id);
        if (key.filter(store::isTold).isPresent()) {
            return now(spot, false, false);
        }
        if (facts.has("tried")) {
            throw new BadQuestion(List.of(Problem.said("/tried", "tries-are-attempts")));
        }
        QuestionReader.read(facts, base);
        if (facts.isEmpty()) {
            throw new BadQuestion(List.of(Problem.said("", "nothing-told")));
        }
        Said said = new Said(now(), Optional.empty(), (ObjectNode) Named.inIds(facts, base), null, null);
        QuestionReader.read(AsOf.of(and(spot, said), now(), now(), base).question(), base);
        store.tell(spot.id(), said, key);
        return now(kept(spot.id()), false, false);
    }

    /**
     * Takes an attempt back that was mistyped, with what was told in the same breath. It stays in the log, and who took it back, when
     * and why is kept beside it; it is no longer tried here nor learned from.
     *
     * @param order see {@link UndoOrder}
     * @throws BadAttempt where it does not say which, or why
     */
    public SpotNow undo(String id, JsonNode order, Optional<SenderKey> key) {
        KeptSpot spot = kept(id);
        UndoOrder undo = UndoOrder.read(order);
        List<String> ids = Stream.concat(spot.attempts().stream(), spot.undone().stream().map(Undone::attempt)).map(Attempt::id)
                .filter(one -> one.startsWith(undo.attempt())).toList();
        if (ids.size() != 1) {
            throw new BadAttempt(List.of(Problem.said("/attempt", ids.isEmpty() ? "no-attempt-of-the-spot" : "several-attempts", "mark",
                    undo.attempt(), "spot", spot.id(), "many", ids.size())));
        }
        store.undo(ids.get(0), undo, now(), key);
        return now(kept(spot.id()), false, false);
    }

    /** The attempt that was made last on a spot, if any was. */
    public Optional<Attempt> lastTried(String id) {
        List<Attempt> attempts = kept(id).attempts();
        return attempts.isEmpty() ? Optional.empty() : Optional.of(attempts.get(attempts.size() - 1));
    }

    /**
     * Spots, those kept first first.
     *
     * @param all also those that the last try took off
     */
    public SpotsListed list(Optional<Cursor> from, int limit, boolean all) {
        SpotPage page = store.page(from, limit, all);
        return new SpotsListed(page.items().stream().map(this::listed).toList(), page.next().text(), page.more());
    }

    private SpotListed listed(KeptSpot spot) {
        JsonNode question = asOf(spot).question();
        List<Attempt> attempts = spot.attempts();
        return new SpotListed(spot.id(), spot.at(), question.path("contaminant").asString(Question.UNKNOWN), SpotSurface.of(question), spot.isOpen(),
                attempts.stream().skip(Math.max(0, attempts.size() - 1)).findFirst().map(last -> new SpotListed.Last(last.at(), last.method(),
                        last.outcome().word())));
    }

    /** What is said of a spot, with the spot, as what a sender's key stands for; keys that are kept already hold it to this form. */
    public static JsonNode on(String id, JsonNode said) {
        return JsonNodeFactory.instance.objectNode().put("spot", SpotStore.name(id)).set("attempt", said);
    }

    private KeptSpot kept(String id) {
        return store.one(id).orElseThrow(() -> new UnknownSpot(id));
    }

    private static KeptSpot and(KeptSpot spot, Said said) {
        return new KeptSpot(spot.id(), spot.at(), spot.question(), Stream.concat(spot.said().stream(), Stream.of(said)).toList(),
                spot.attempts(), spot.undone());
    }

    private SpotNow now(KeptSpot spot, boolean all, boolean whatIf) {
        AsOf asOf = asOf(spot);
        SpotAnswer answer = SpotAnswer.to(advisor, identifier, QuestionReader.read(asOf.question(), base), all, whatIf, chances.get());
        return new SpotNow(spot.id(), spot.at(), asOf.question(), asOf.letGo(), spot.attempts(), spot.undone(), answer);
    }

    private AsOf asOf(KeptSpot spot) {
        return AsOf.of(spot, now(), now(), base);
    }
}
