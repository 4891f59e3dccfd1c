package rungwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.Gate;
import rungwise.laws.DrawnQuestions;
import rungwise.text.Texts;

/** The card of any spot is one page that fits its paper. */
class CardTest {
    /** It may only fall. */
    private static final long MEDIAN_WORDS = 185;
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
                cut += text.contains("Lines left out, ") ? 1 : 0;
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

    /** Photograph, measure, agree, mask, test, then what wets the spot: the same order on every card. */
    @Test
    void what_comes_first_comes_in_one_order_and_all_agreements_in_one_line() {
        int several = 0;
        for (Answer answer : ANSWERS) {
            List<Gate> gates = answer.next().steps().stream().map(s -> Base.advisor().knowledge().gates().get(s.step())).filter(Objects::nonNull).toList();
            assertThat(gates.stream().filter(g -> !g.first()).map(Gate::turn)).isSorted();
            assertThat(gates.stream().dropWhile(Gate::first)).noneMatch(Gate::first);
            several += gates.stream().filter(Gate::needsAgreement).count() > 1 ? 1 : 0;
            String text = String.join(" ", card(answer, 78, false));
            assertThat(text.split("Agree first: ", -1)).hasSizeLessThanOrEqualTo(2);
        }
        assertThat(several).as("cards with several agreements").isPositive();
    }

    @Test
    void every_agreement_can_stand_in_one_line_with_others() {
        assertThat(Base.advisor().knowledge().gates().values()).filteredOn(Gate::needsAgreement).allSatisfy(g -> assertThat(g.agrees()).as(g.id()).isNotEmpty());
    }

    @Test
    void what_would_be_reached_for_first_is_barred_first() {
        String card = String.join(" ", card(Base.ask("{contaminant: water_spot_mineral, surface: alu_anodised, age: P20D}"), 400, false));
        String never = card.substring(card.indexOf("NEVER"));
        assertThat(never).contains("acid");
        assertThat(never.indexOf("acid")).isLessThan(never.contains("Blot") ? never.indexOf("Blot") : never.length());
    }

    /** The test as it is on this material says no other figures than the test in full. */
    @Test
    void the_short_hidden_test_says_what_the_long_one_does() {
        String full = Base.advisor().knowledge().gates().get("test_spot").obtain();
        for (String figure : List.of("test-size", "test-size-solvent", "test-wait-paint", "test-wait-plastic")) {
            assertThat(full).contains(Texts.said("card." + figure).replace("30 min", "30 on plastic"));
        }
        assertThat(full).contains("until dry on cloth", "Colour, haze, tack or lifting fails it.");
        assertThat(Texts.said("card.test", "size", "5 cm", "wait", "5 min")).contains("Colour, haze, tack or lifting fails it.");
    }

    @Test
    void no_caution_for_people_is_left_out() {
        for (Answer answer : ANSWERS) {
            List<String> lines = card(answer, 78, false);
            boolean cut = lines.size() == Card.PAGE;
            answer.rungs().stream().limit(1).filter(r -> !cut && answer.next().method().filter(r.method()::equals).isPresent())
                    .flatMap(r -> r.risks().stream()).filter(Answer.Risk::toPeople).forEach(r -> {
                String card = String.join(" ", lines.stream().map(String::strip).toList()).toLowerCase(Locale.ROOT);
                for (String sentence : r.text().split("(?<=[.])\\s+")) {
                    assertThat(card).contains(sentence.toLowerCase(Locale.ROOT).replaceAll("\\.$", ""));
                }
            });
        }
    }

    /** Cards of every deposit where it is usually met, nothing else told: what a hurried reader has before the eyes. */
    @Test
    void a_usual_card_is_read_at_a_glance() {
        KnowledgeBase known = Base.advisor().knowledge();
        List<Long> words = new ArrayList<>();
        List<Integer> lines = new ArrayList<>();
        known.contaminants().values().forEach(c -> c.usualSurfaces().forEach(s -> {
            List<String> card = card(Base.ask("{contaminant: " + c.id() + ", surface: " + s + "}"), 78, false);
            words.add(card.stream().flatMap(l -> Arrays.stream(l.strip().split("\\s+"))).filter(w -> !w.isEmpty()).count());
            lines.add(card.size());
        }));
        Collections.sort(words);
        Collections.sort(lines);
        System.out.println("cards " + words.size() + ", median words " + words.get(words.size() / 2) + ", lines " + lines.get(lines.size() / 2));
        assertThat(words.get(words.size() / 2)).as("median words").isLessThanOrEqualTo(MEDIAN_WORDS);
    }
}
