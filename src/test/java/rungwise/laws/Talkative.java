package rungwise.laws;

import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungwise.Base;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.load.Mappers;
import rungwise.question.BadQuestion;
import rungwise.question.ClosedLists;
import rungwise.question.Question;
import rungwise.question.QuestionReader;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Drawn questions that say more than others: whatever a question may say stands in some of them. */
final class Talkative {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    private static final ClosedLists WORDS = new ClosedLists(KNOWN);
    private static final List<String> SENSITISERS = Stream.concat(KNOWN.agents().keySet().stream(), KNOWN.agents().values()
            .stream().flatMap(a -> a.sensitisers().stream())).distinct().sorted().toList();

    private final Random r;
    private final ObjectNode tree;

    private Talkative(Random r) {
        this.r = r;
        Question drawn = whereItIsMet(DrawnQuestions.drawn(r));
        this.tree = Mappers.json().valueToTree(r.nextInt(3) == 0 ? DrawnQuestions.tried(r, drawn) : drawn);
    }

    /** Half of them on a surface where it is usual, as more is read there. */
    private Question whereItIsMet(Question q) {
        List<String> usual = q.contaminant().map(KNOWN.contaminants()::get).map(Contaminant::usualSurfaces).orElse(List.of());
        return usual.isEmpty() || r.nextBoolean() ? q : new Made(q).surface(List.of(DrawnQuestions.pick(r, usual))).made();
    }

    static Question question(Random r) {
        while (true) {
            try {
                return QuestionReader.read(new Talkative(r).told(), KNOWN);
            } catch (BadQuestion contradictory) {
                // some words may not stand together
                continue;
            }
        }
    }

    private ObjectNode told() {
        ObjectNode facts = (ObjectNode) tree.get("facts");
        maybe(() -> facts.put("place", pick("/facts/place")));
        maybe(() -> facts.put("soiling", pick("/facts/soiling")));
        maybe(() -> facts.put("protection", pick("/facts/protection")));
        maybe(() -> add(facts.withArray("priorDamage"), WORDS.words("/facts/priorDamage/*")));
        maybe(() -> ((ObjectNode) tree.get("extent")).put("areaM2", r.nextInt(30) / 10.0 + 0.1));
        maybe(() -> add(tree.withArray("done"), WORDS.words("/done/*")));
        maybe(() -> add(tree.withArray("passedTests"), List.copyOf(KNOWN.methods().keySet())));
        maybe(() -> add((ArrayNode) tree.at("/consent/granted"), List.copyOf(KNOWN.methods().keySet())));
        maybe(() -> add((ArrayNode) tree.at("/consent/refused"), List.copyOf(KNOWN.methods().keySet())));
        maybe(() -> add(tree.withArray("observations"), List.copyOf(KNOWN.observations().keySet())));
        maybe(() -> tree.withArray("observations").add(DrawnQuestions.pick(r, List.of("v66", "v15", "v21", "v02"))));
        tree.withArray("workers").forEach(w -> add(((ObjectNode) w).withArray("sensitisedTo"), SENSITISERS));
        maybe(this::tried);
        if (r.nextInt(6) == 0) {
            tree.remove("contaminant");
        }
        return tree;
    }

    private Object tried() {
        ObjectNode one = tree.withArray("tried").addObject().put("outcome", DrawnQuestions.pick(r, List.of("no-change", "partly", "harm")))
                .put("hoursAgo", r.nextInt(40)).put("text", DrawnQuestions.pick(r, List.of("something", "household bleach", "vinegar", "twice")));
        maybe(() -> one.put("substance", DrawnQuestions.pick(r, KNOWN.agents().keySet())));
        return maybe(() -> one.put("prepared", r.nextBoolean()));
    }

    /** One time in three. */
    private Object maybe(Supplier<?> say) {
        return r.nextInt(3) == 0 ? say.get() : tree;
    }

    private String pick(String field) {
        return DrawnQuestions.pick(r, WORDS.words(field));
    }

    /** One or two that are not there yet. */
    private ArrayNode add(ArrayNode list, List<String> words) {
        IntStream.rangeClosed(0, r.nextInt(2)).mapToObj(i -> DrawnQuestions.pick(r, words))
                .filter(w -> list.valueStream().noneMatch(n -> n.asString().equals(w))).forEach(list::add);
        return list;
    }
}
