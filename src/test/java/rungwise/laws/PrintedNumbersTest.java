package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.answer.Advisor;
import rungwise.compare.Comparison;
import rungwise.diagnosis.Identifier;
import rungwise.diagnosis.SpotAnswer;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.load.Mappers;
import rungwise.ladder.ChanceTable;
import rungwise.question.Question;
import rungwise.question.QuestionReader;
import tools.jackson.databind.JsonNode;

/** No answer pretends to know more digits than anybody measured. */
class PrintedNumbersTest {
    private static final Advisor ADVISOR = Base.advisor();
    private static final int DRAWN = 36;
    private static final int DIGITS = 6;

    @Test
    void a_figure_is_given_to_a_thousandth_of_small_ones_three_digits_and_of_large_ones_six() {
        assertThat(Stream.of(1.0671873729054748, 0.00012345, 0.98765, 1234.5678, 12_345_678.0, -2.00049, 0.0, 7.0)
                .map(Figures::given)).containsExactly(1.067, 0.000123, 0.988, 1234.57, 12_345_700.0, -2.0, 0.0, 7.0);
        assertThat(Figures.thousandths(0.0123)).isEqualTo(0.012);
        assertThat(Figures.thousandths(123_456.789)).isEqualTo(123_457);
    }

    @Test
    void no_answer_prints_a_number_of_more_than_six_digits() throws IOException {
        List<String> wrong = new ArrayList<>();
        List<Question> questions = new ArrayList<>();
        try (Stream<Path> spots = Files.list(Path.of("demo-data/spots"))) {
            for (Path spot : spots.sorted().toList()) {
                questions.add(QuestionReader.read(Mappers.question().readTree(Files.readString(spot)), ADVISOR.knowledge()));
            }
        }
        Random random = new Random(20260213);
        for (int i = 0; i < DRAWN; i++) {
            questions.add(i % 3 == 0 ? DrawnQuestions.tried(random, DrawnQuestions.drawn(random)) : DrawnQuestions.drawn(random));
        }
        int[] numbers = {0};
        for (Question question : questions) {
            look("", Mappers.json().valueToTree(ADVISOR.answer(question, true)), wrong, numbers);
        }
        look("/compared", Mappers.json().valueToTree(Comparison.of(ADVISOR.answer(questions.get(0), true),
                ADVISOR.answer(questions.get(1), true), List.of())), wrong, numbers);
        look("/signs", Mappers.json().valueToTree(SpotAnswer.to(ADVISOR, new Identifier(ADVISOR), QuestionReader.read(Mappers.question()
                .readTree("{observations: [v01, v05], surface: clear_2k_sound}"), ADVISOR.knowledge()), true, true,
                ChanceTable.PRIOR)), wrong, numbers);
        assertThat(wrong).isEmpty();
        assertThat(numbers[0]).isGreaterThan(10_000);
    }

    private static void look(String at, JsonNode node, List<String> wrong, int[] numbers) {
        if (node.isNumber()) {
            numbers[0]++;
            if (node.decimalValue().stripTrailingZeros().precision() > DIGITS) {
                wrong.add(at + " " + node);
            }
        }
        for (int i = 0; i < node.size() && node.isArray(); i++) {
            look(at + "/" + i, node.get(i), wrong, numbers);
        }
        // what the asker wrote is given back as it was written
        node.propertyStream().filter(p -> !p.getKey().equals("question")).forEach(p -> look(at + "/" + p.getKey(), p.getValue(), wrong,
                numbers));
    }
}
