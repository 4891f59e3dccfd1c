package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.answer.Answer;
import rungwise.question.Question;

/** Whoever tried a method and reads why it is not offered reads of the try, whatever else would have left it out. */
class TriedAndPassedOverTest {
    private static final long SEED = 20260212;
    private static final int QUESTIONS = 300;

    @Test
    void what_was_left_out_for_a_likelier_one_is_named_by_its_own_try() {
        Answer answer = Base.ask("{contaminant: volcanic_ash, age: P3D, surface: [clear_2k_sound], "
                + "tried: [{method: warm_compress, outcome: no-change}]}");
        assertThat(answer.passedOver()).filteredOn(p -> p.method().equals("warm_compress"))
                .singleElement().satisfies(p -> {
                    assertThat(p.step()).isEqualTo("changed-nothing");
                    assertThat(p.why()).contains("warm_compress").contains("no-change");
                });
    }

    @Test
    void what_could_do_nothing_from_the_start_is_named_by_its_own_try() {
        Answer answer = Base.ask("{contaminant: volcanic_ash, age: P3D, surface: [clear_2k_sound], "
                + "tried: [{method: alc_50, outcome: no-change}]}");
        assertThat(answer.passedOver()).filteredOn(p -> p.method().equals("alc_50"))
                .singleElement().satisfies(p -> assertThat(p.step()).isEqualTo("changed-nothing"));
    }

    @Test
    void of_drawn_questions_every_try_without_change_that_is_passed_over_is_named() {
        Random random = new Random(SEED);
        List<String> breaches = new ArrayList<>();
        Set<String> wouldBe = new TreeSet<>();
        int named = 0;
        for (int i = 0; i < QUESTIONS; i++) {
            Question fresh = DrawnQuestions.drawn(random);
            Answer before = Base.advisor().answer(fresh);
            List<String> open = new ArrayList<>(before.passedOver().stream().map(Answer.PassedOver::method).toList());
            before.rungs().forEach(r -> open.add(r.method()));
            if (open.isEmpty()) {
                continue;
            }
            List<Question.Tried> tried = new ArrayList<>();
            for (int t = 0; t <= random.nextInt(3); t++) {
                tried.add(DrawnQuestions.attempt(DrawnQuestions.pick(random, open), "no-change", 1, 1, true));
            }
            Set<String> methods = tried.stream().map(t -> t.method().orElseThrow()).collect(Collectors.toSet());
            before.passedOver().stream().filter(p -> methods.contains(p.method())).forEach(p -> wouldBe.add(p.step()));
            for (Answer.PassedOver one : Base.advisor().answer(new Made(fresh).tried(tried).made()).passedOver()) {
                if (methods.contains(one.method())) {
                    named++;
                    if (!one.step().equals("changed-nothing") || !one.why().contains(one.method())) {
                        breaches.add(one.method() + " " + one.step() + ": " + one.why() + " after " + methods + " on "
                                + fresh.contaminant() + fresh.surface());
                    }
                }
            }
        }
        assertThat(breaches).isEmpty();
        assertThat(named).isGreaterThan(QUESTIONS / 3);
        assertThat(wouldBe).as("what would else have been named").contains("pointless").hasSizeGreaterThanOrEqualTo(2);
    }
}
