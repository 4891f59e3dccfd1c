package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import rungwise.Base;
import rungwise.Without;
import rungwise.diagnosis.Identifier;
import rungwise.diagnosis.SpotAnswer;
import rungwise.knowledge.load.Mappers;
import rungwise.ladder.ChanceTable;
import rungwise.question.FactUse;
import rungwise.question.Question;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** No fact falls silent, and none is called silent that was heard: put to questions that say much. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FactsTest {
    private static final int QUESTIONS = 150;
    private static final int A_QUESTION = 5;
    private static final long SEED = 20260214L;
    private static final Identifier IDENTIFIER = new Identifier(Base.advisor());

    private final Queue<String> astray = new ConcurrentLinkedQueue<>();
    private final Queue<String> untrue = new ConcurrentLinkedQueue<>();
    private final Map<String, Integer> reasons = new ConcurrentHashMap<>();
    private final AtomicInteger facts = new AtomicInteger();
    private final AtomicInteger used = new AtomicInteger();
    private final AtomicInteger usedThatChange = new AtomicInteger();

    @BeforeAll
    void ask() {
        IntStream.range(0, QUESTIONS).parallel().forEach(i -> ask(new Random(SEED + 7919L * i)));
        System.out.println("facts: " + QUESTIONS + " questions, " + facts + " facts, " + unused() + " unused facts left out one by one, " + untrue.size()
                + " of them changed the answer; of " + used + " used ones " + usedThatChange + " did; unused by reason: "
                + new TreeMap<>(reasons));
    }

    private void ask(Random r) {
        Question question = Talkative.question(r);
        boolean all = r.nextBoolean();
        SpotAnswer answer = answer(question, all);
        FactUse use = answer.answer().facts();
        List<String> told = new ArrayList<>(use.used());
        use.unused().forEach(u -> told.add(u.pointer()));
        if (told.size() != Set.copyOf(told).size()) {
            astray.add("twice: " + told + " of " + DrawnLawsTest.text(question));
        }
        leaves(Mappers.json().valueToTree(question), "").filter(leaf -> !Without.fact(question, leaf).equals(question))
                .peek(leaf -> facts.incrementAndGet()).filter(leaf -> told.stream().noneMatch(t -> (leaf + "/").startsWith(t + "/")))
                .forEach(leaf -> astray.add("silent: " + leaf + " of " + DrawnLawsTest.text(question)));
        String whole = said(answer);
        for (FactUse.Unused one : some(use, r)) {
            reasons.merge(one.why(), 1, Integer::sum);
            String less = said(answer(Without.fact(question, one.pointer()), all));
            if (!less.equals(whole)) {
                untrue.add(one + ": " + parting(whole, less) + " of " + DrawnLawsTest.text(question).replaceAll("\\s+", " "));
            }
        }
        String counted = DrawnQuestions.pick(r, use.used());
        if (!counted.startsWith("/surface")) {
            used.incrementAndGet();
            usedThatChange.addAndGet(said(answer(Without.fact(question, counted), all)).equals(whole) ? 0 : 1);
        }
    }

    /** Whatever stands in a question, whether it says something or not. */
    private static Stream<String> leaves(JsonNode node, String pointer) {
        return node.isObject() ? node.propertyStream().flatMap(p -> leaves(p.getValue(), pointer + "/" + p.getKey()))
                : node.isArray() ? IntStream.range(0, node.size()).boxed().flatMap(i -> leaves(node.get(i), pointer + "/" + i))
                : Stream.of(pointer);
    }

    /** A few of those, each from another field: what holds for one refusal holds for all. */
    private static List<FactUse.Unused> some(FactUse use, Random r) {
        List<FactUse.Unused> unused = new ArrayList<>(use.unused());
        Collections.shuffle(unused, r);
        Map<String, FactUse.Unused> byField = new LinkedHashMap<>();
        unused.forEach(u -> byField.putIfAbsent(u.pointer().replaceAll("\\d+", "*"), u));
        return byField.values().stream().limit(A_QUESTION).toList();
    }

    /** Where two answers part, in a few words of each. */
    private static String parting(String one, String other) {
        int at = 0;
        while (at < Math.min(one.length(), other.length()) && one.charAt(at) == other.charAt(at)) {
            at++;
        }
        return one.substring(Math.max(0, at - 150), Math.min(one.length(), at + 100)) + " | "
                + other.substring(Math.max(0, at - 30), Math.min(other.length(), at + 100));
    }

    private int unused() {
        return reasons.values().stream().mapToInt(n -> n).sum();
    }

    private static SpotAnswer answer(Question question, boolean all) {
        return SpotAnswer.to(Base.advisor(), IDENTIFIER, question, all, false, ChanceTable.PRIOR);
    }

    /** All that it says but what it was asked, and what it says of the facts. */
    private static String said(SpotAnswer answer) {
        ObjectNode tree = Mappers.json().valueToTree(answer);
        tree.remove(List.of("question", "facts"));
        return tree.toString();
    }

    @Test
    void each_fact_stands_once_used_or_unused() {
        assertThat(facts.get()).isGreaterThan(QUESTIONS * 10);
        assertThat(astray).isEmpty();
    }

    @Test
    void without_an_unused_fact_the_answer_is_the_same() {
        assertThat(unused()).isGreaterThan(QUESTIONS * 3);
        assertThat(reasons).hasSizeGreaterThan(12);
        assertThat(untrue).isEmpty();
    }

    @Test
    void without_a_used_fact_the_answer_is_often_another() {
        assertThat(usedThatChange.get() * 3).isGreaterThan(used.get());
    }
}
