package rungwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.answer.Answer;
import rungwise.laws.DrawnQuestions;

/** The card of any spot is one page that fits its paper. */
class CardTest {
    private static final List<Answer> ANSWERS = answers();

    private static List<Answer> answers() {
        Random random = new Random(5);
        List<Answer> answers = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            answers.add(Base.advisor().answer(DrawnQuestions.drawn(random)));
        }
        return answers;
    }

    private static List<String> card(Answer answer, int width, boolean plain) {
        return new Card(Base.advisor().knowledge(), width, plain).lines(answer, "spot.yaml");
    }

    @Test
    void no_card_is_longer_or_wider_than_its_page() {
        for (Answer answer : ANSWERS) {
            for (int width : new int[] {78, 40}) {
                List<String> lines = card(answer, width, false);
                assertThat(lines).hasSizeLessThanOrEqualTo(Card.PAGE).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(width));
            }
        }
        assertThat(ANSWERS.stream().filter(a -> card(a, 78, false).size() > 15).count()).as("cards that say something").isGreaterThan(80);
        assertThat(ANSWERS.stream().filter(a -> card(a, 78, false).size() == Card.PAGE).count()).as("cards that are cut").isLessThan(80);
    }

    /** What stands beyond the page is cut, never what defers to the data sheets, however it is wrapped. */
    @Test
    void every_card_ends_by_deferring_to_the_data_sheets() {
        int cut = 0;
        for (Answer answer : ANSWERS) {
            for (int width : new int[] {78, 40}) {
                String text = String.join(" ", card(answer, width, false).stream().map(String::strip).toList());
                assertThat(text).contains("Safety data sheets and local codes come first.").endsWith(answer.revision());
                cut += text.contains("lines more: --all") ? 1 : 0;
            }
        }
        assertThat(cut).as("cards that are cut").isPositive();
    }

    @Test
    void a_plain_card_has_ascii_alone_and_says_the_same() {
        int replaced = 0;
        for (Answer answer : ANSWERS) {
            List<String> rich = card(answer, 78, false);
            List<String> plain = card(answer, 78, true);
            assertThat(plain).allMatch(l -> l.chars().allMatch(c -> c >= 32 && c < 127));
            replaced += rich.equals(plain) ? 0 : 1;
        }
        assertThat(replaced).as("cards with a letter that ASCII lacks").isPositive();
    }

    @Test
    void a_stopped_card_names_no_method_to_try_and_a_hold_nothing_but_the_hold() {
        int stopped = 0;
        for (Answer answer : ANSWERS) {
            List<String> labels = card(answer, 78, false).stream().map(l -> l.substring(0, Math.min(9, l.length())).strip()).filter(l -> !l.isEmpty()).toList();
            if (answer.isStopped()) {
                stopped++;
                assertThat(labels).doesNotContain("THEN", "MIX", "HOW", "NEVER", "NOT NOW");
                assertThat(labels.contains("TELL ME")).as("only first aid is told of: %s", labels).isEqualTo(labels.contains("AT ONCE"));
                assertThat(answer.hold().isEmpty() || List.of("HOLD", "UNTIL", "WEAR", "CALL").containsAll(labels)).as("%s", labels).isTrue();
            } else {
                assertThat(labels).doesNotContain("HOLD");
            }
        }
        assertThat(stopped).isGreaterThan(10);
    }
}
