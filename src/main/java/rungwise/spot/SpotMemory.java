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
import rungwise.question.QuestionReader;
import rungwise.shoplog.Attempt;
import rungwise.shoplog.AttemptReader;
import rungwise.shoplog.Kept;
import rungwise.shoplog.KeptSpot;
import rungwise.shoplog.Said;
import rungwise.shoplog.SenderKey;
import rungwise.shoplog.SpotStore;
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
     * @throws rungwise.shoplog.BadAttempt where it cannot be kept
     */
    public SpotTried attempt(String id, JsonNode attempt, Optional<SenderKey> key) {
        KeptSpot spot = kept(id);
        // what was told since might no longer go together with what came with it
        Optional<Attempt> before = key.flatMap(store::under);
        return before.isPresent() ? new SpotTried(spot.id(), before.get(), now(spot, false, false).answer()) : keep(spot, attempt, key);
    }

    private SpotTried keep(KeptSpot spot, JsonNode attempt, Optional<SenderKey> key) {
        AttemptOnSpot made = AttemptOnSpot.read(attempt, spot.id(), base, reader, (moment, also) ->
                AsOf.of(and(spot, also), moment, base).question());
        QuestionReader.read(AsOf.of(and(spot, made.said()), now(), base).question(), base);
        Kept kept = store.add(made.attempt(), made.said(), key);
        return new SpotTried(spot.id(), kept.attempt(), now(kept(spot.id()), false, false).answer());
    }

    /**
     * Adds what became known of a spot.
     *
     * @param facts fields of a question; lists of what was done, seen or agreed grow, all else takes the place of what was told
     * @throws BadQuestion where a question that says so would not be answered
     */
    public SpotNow tell(String id, JsonNode facts) {
        KeptSpot spot = kept(id);
        if (facts.has("tried")) {
            throw new BadQuestion(List.of(Problem.said("/tried", "tries-are-attempts")));
        }
        QuestionReader.read(facts, base);
        if (facts.isEmpty()) {
            throw new BadQuestion(List.of(Problem.said("", "nothing-told")));
        }
        Said said = new Said(now(), Optional.empty(), (ObjectNode) Named.inIds(facts, base), null, null);
        QuestionReader.read(AsOf.of(and(spot, said), now(), base).question(), base);
        store.tell(spot.id(), said);
        return now(kept(spot.id()), false, false);
    }

    /** An attempt with its spot, as what a sender's key stands for. */
    public static JsonNode on(String id, JsonNode attempt) {
        return JsonNodeFactory.instance.objectNode().put("spot", SpotStore.name(id)).set("attempt", attempt);
    }

    private KeptSpot kept(String id) {
        return store.one(id).orElseThrow(() -> new UnknownSpot(id));
    }

    private static KeptSpot and(KeptSpot spot, Said said) {
        return new KeptSpot(spot.id(), spot.at(), spot.question(), Stream.concat(spot.said().stream(), Stream.of(said)).toList(),
                spot.attempts());
    }

    private SpotNow now(KeptSpot spot, boolean all, boolean whatIf) {
        AsOf asOf = AsOf.of(spot, now(), base);
        SpotAnswer answer = SpotAnswer.to(advisor, identifier, QuestionReader.read(asOf.question(), base), all, whatIf, chances.get());
        return new SpotNow(spot.id(), spot.at(), asOf.question(), asOf.letGo(), spot.attempts(), answer);
    }
}
