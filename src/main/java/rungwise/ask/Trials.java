package rungwise.ask;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwise.answer.Advisor;
import rungwise.answer.Answer;
import rungwise.diagnosis.Identifier;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.load.Mappers;
import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.knowledge.words.AskedFact;
import rungwise.ladder.ChanceTable;
import rungwise.names.Whereabouts;
import rungwise.question.Question;
import tools.jackson.databind.JsonNode;

/** Tries out every reply to every fact that may still be asked, and so finds the one worth asking: whether it is is never guessed. */
final class Trials {
    private final Advisor advisor;
    private final KnowledgeBase base;
    private final Identifier identifier;
    private final ChanceTable chances;
    /** By the question: where nobody knew the last answer, and after "back", all was tried before. */
    private final Map<JsonNode, Step> tried = new ConcurrentHashMap<>();

    Trials(Advisor advisor, ChanceTable chances) {
        this.advisor = advisor;
        this.base = advisor.knowledge();
        this.identifier = new Identifier(advisor);
        this.chances = chances;
    }

    /**
     * What asking for a fact could bring.
     *
     * @param holds whether a reply would stop all work, or would let it go on
     * @param steps how many different next steps its replies lead to
     * @param whole how many there are with what must be done first
     */
    private record Worth(AskedFact fact, boolean holds, long steps, long whole) {
        private static final Comparator<Worth> MOST = Comparator.comparing(Worth::holds).thenComparing(Worth::steps)
                .thenComparing(Worth::whole).thenComparing(w -> w.fact().id(), Comparator.reverseOrder());
    }

    Answer answer(Told told) {
        Question question = told.question(base);
        return identifier.canStandFor(question) ? identifier.ladder(question, false, chances) : advisor.answer(question, false, chances);
    }

    /** Whether work is stopped by what was told, and not merely because nobody knows yet what it is. */
    boolean isHeld(Told told, Answer answer) {
        Question question = answer.question();
        return answer.isStopped() && (told.isNamed() || !question.circumstances().isEmpty()
                || question.observations().stream().map(base.observations()::get).anyMatch(o -> o.stops().isPresent()));
    }

    /** The fact to ask for next; empty where none would change the next step. */
    Optional<AskedFact> next(Told told, Answer now) {
        List<AskedFact> open = open(told, now);
        return most(open.stream().filter(AskedFact::early), told, now)
                .or(() -> most(open.stream().filter(AskedFact::anyTime), told, now))
                .or(() -> most(open.stream().filter(f -> !f.early() && !f.anyTime()), told, now));
    }

    /** Danger where it was not asked for yet: a talk that ends at its last question does not end without it. */
    Optional<AskedFact> danger(Told told, Answer now) {
        return most(open(told, now).stream().filter(AskedFact::anyTime), told, now);
    }

    /** Whether what the last try did changes the next step. */
    boolean isOutcomeWorthAsking(Told told, Answer now) {
        Set<Step> steps = new HashSet<>(base.questionWords().outcomes().keySet().stream().toList().parallelStream().map(told::ended)
                .map(this::step).toList());
        steps.add(Step.of(now, base));
        return steps.size() > 1;
    }

    /** What may still be asked: once each, and only what this surface can have. */
    List<AskedFact> open(Told told, Answer now) {
        List<Surface> here = surfaces(told);
        boolean signs = !told.isNamed() && told.asked().stream().filter(id -> base.questionWords().facts().containsKey(id)
                && base.questionWords().facts().get(id).unnamed()).count() < base.decisions().value(DecisionId.SIGNS_AT_MOST);
        return base.questionWords().facts().values().stream().filter(f -> !told.wasAsked(f.id()) && here.stream().anyMatch(f::isOn))
                .filter(f -> !f.unnamed() || signs && replies(f, told).size() > 1).filter(f -> !f.touches() || !now.isStopped()).toList();
    }

    /** What may be replied to it where the spot is: a sign that is met on the other side of the vehicle only is left out. */
    List<AskedFact.Reply> replies(AskedFact fact, Told told) {
        Whereabouts where = whereabouts(told);
        Set<SurfaceKind> kinds = surfaces(told).stream().filter(fact::isOn).flatMap(s -> s.kinds().stream()).collect(Collectors.toSet());
        return fact.on(kinds).stream().filter(r -> observations(r).map(base.observations()::get).noneMatch(where::isPointless)).toList();
    }

    private static Stream<String> observations(AskedFact.Reply reply) {
        return reply.gives().get("observations") instanceof List<?> ids ? ids.stream().map(Object::toString) : Stream.empty();
    }

    Whereabouts whereabouts(Told told) {
        Question question = told.question(base);
        return new Whereabouts(question.surface(), question.facts().place(), base);
    }

    /** What it may be on. */
    private List<Surface> surfaces(Told told) {
        List<String> surfaces = told.question(base).surface();
        return surfaces.contains(Question.UNKNOWN) ? List.copyOf(base.surfaces().values()) : surfaces.stream().map(base.surfaces()::get).toList();
    }

    private Optional<AskedFact> most(Stream<AskedFact> facts, Told told, Answer now) {
        Step step = Step.of(now, base);
        return facts.map(f -> worth(f, told, step)).filter(w -> w.whole() > 1).max(Worth.MOST).map(Worth::fact);
    }

    private Worth worth(AskedFact fact, Told told, Step now) {
        Set<Step> steps = new HashSet<>(replies(fact, told).stream().filter(r -> !r.gives().isEmpty()).toList().parallelStream()
                .map(r -> told.with(fact.id(), gives(r))).map(this::step).toList());
        steps.add(now);
        return new Worth(fact, steps.stream().map(s -> s.action().hold()).distinct().count() > 1,
                steps.stream().map(Step::action).distinct().count(), steps.size());
    }

    private Step step(Told told) {
        return tried.computeIfAbsent(told.tree(), t -> Step.of(answer(told), base));
    }

    static JsonNode gives(AskedFact.Reply reply) {
        return Mappers.json().valueToTree(reply.gives());
    }
}
