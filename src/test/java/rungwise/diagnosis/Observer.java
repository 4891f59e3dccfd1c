package rungwise.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.deposit.Observation;
import rungwise.question.Question;
import rungwise.question.QuestionReader;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * Somebody who looks at a spot: one word of each kind, by what the deposit calls for, and with some chance a mistaken one. It knows which
 * words belong to which deposit and what is taken for what, and nothing of how the program weighs them.
 */
final class Observer {
    static final List<String> KINDS = List.of("place", "colour", "form", "feel", "near", "water");
    private static final Set<String> NO_SPOT = Set.of("unknown_deposit", "etch_beneath", "ghost_beneath");
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    private static final Map<String, List<Observation>> WORDS = new LinkedHashMap<>();
    private static final List<Contaminant> DEPOSITS = KNOWN.contaminants().values().stream().filter(c -> !NO_SPOT.contains(c.id())).toList();
    private static final Map<String, Question> ON = new java.util.TreeMap<>();

    static {
        KINDS.forEach(kind -> WORDS.put(kind, KNOWN.observations().values().stream().filter(o -> o.word() && o.group().equals(kind)).toList()));
    }

    private final Random random;
    private final double errs;
    private final boolean byLookAlike;

    /**
     * Somebody.
     *
     * @param errs        how often a word is mistaken
     * @param byLookAlike whether mistaken words are those of what it is taken for, or any of the kind
     */
    Observer(long seed, double errs, boolean byLookAlike) {
        this.random = new Random(seed);
        this.errs = errs;
        this.byLookAlike = byLookAlike;
    }

    /** A spot that somebody looked at. */
    record Seen(Contaminant deposit, Spot spot) {
    }

    Contaminant deposit() {
        double left = random.nextDouble() * DEPOSITS.stream().mapToDouble(c -> KNOWN.signs().frequencyOf(c.id()).weight()).sum();
        for (Contaminant one : DEPOSITS) {
            left -= KNOWN.signs().frequencyOf(one.id()).weight();
            if (left <= 0) {
                return one;
            }
        }
        throw new IllegalStateException("weights do not add up");
    }

    Seen look(int kinds, boolean onSurface) {
        Contaminant deposit = deposit();
        return new Seen(deposit, new Spot(on(onSurface ? surface(deposit) : Question.UNKNOWN).noticing(words(deposit, kinds), List.of()),
                java.util.Optional.empty(), List.of(), false));
    }

    String surface(Contaminant deposit) {
        List<String> usual = deposit.usualSurfaces();
        return any(usual.isEmpty() ? List.copyOf(KNOWN.surfaces().keySet()) : usual);
    }

    static Question on(String surface) {
        return ON.computeIfAbsent(surface, s -> QuestionReader.read(JsonNodeFactory.instance.objectNode().put("surface", s)
                .set("setting", JsonNodeFactory.instance.objectNode().put("panelC", 20).put("sun", "shade")), KNOWN));
    }

    List<String> words(Contaminant deposit, int kinds) {
        List<String> of = new ArrayList<>(KINDS);
        java.util.Collections.shuffle(of, random);
        List<String> said = new ArrayList<>();
        of.subList(0, kinds).forEach(kind -> word(deposit, kind, said));
        return said;
    }

    private void word(Contaminant deposit, String kind, List<String> said) {
        List<Observation> own = own(deposit.id(), kind);
        List<Observation> from = own;
        if (random.nextDouble() < errs) {
            List<String> alike = deposit.recognise().lookAlikes().stream().filter(KNOWN.contaminants()::containsKey).toList();
            List<Observation> theirs = byLookAlike && !alike.isEmpty() ? own(any(alike), kind) : List.of();
            from = theirs.isEmpty() ? WORDS.get(kind) : theirs;
        }
        if (!from.isEmpty()) {
            said.add(any(from).id());
        }
    }

    private static List<Observation> own(String deposit, String kind) {
        return WORDS.get(kind).stream().filter(o -> o.pointsTo().contains(deposit)).toList();
    }

    /** The outcome of a check: what the deposit is known to show four times in five, and otherwise anything, or nothing. */
    java.util.Optional<Observation> makes(List<Observation> outcomes, Contaminant deposit) {
        List<Observation> own = outcomes.stream().filter(o -> o.pointsTo().contains(deposit.id())).toList();
        if (random.nextDouble() < 0.8) {
            return own.isEmpty() ? java.util.Optional.empty() : java.util.Optional.of(any(own));
        }
        int at = random.nextInt(outcomes.size() + 1);
        return at == outcomes.size() ? java.util.Optional.empty() : java.util.Optional.of(outcomes.get(at));
    }

    <T> T any(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }
}
