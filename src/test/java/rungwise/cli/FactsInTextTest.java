package rungwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.question.Question;
import rungwise.text.Texts;

/** What did not count is said at the end of the text, in full. */
class FactsInTextTest {
    private static List<String> lines(String yaml) {
        StringWriter text = new StringWriter();
        PrintWriter out = new PrintWriter(text);
        new AnswerText(Base.advisor().knowledge(), out).print(Base.ask(yaml));
        out.flush();
        return text.toString().lines().toList();
    }

    @Test
    void a_fact_that_did_not_count_is_the_last_that_is_said() {
        assertThat(lines("{contaminant: tar_spot, surface: clear_2k_sound, facts: {colour: light}, setting: {panelC: 20}}"))
                .endsWith("Did not count: colour of the vehicle – the panel was measured or stands in the shade, so its colour warms nothing.");
    }

    @Test
    void facts_with_one_reason_share_a_line_and_a_word_of_a_list_is_named() {
        assertThat(lines("{contaminant: tar_spot, surface: glass_tempered_side, facts: {clearMicrons: 40, totalFilmMicrons: {min: 90, max: 99}}, "
                + "consent: {granted: [g17]}}")).endsWith(
                "Did not count: film gauge reading, reading of the clear – nothing on this surface is counted in micrometres.",
                "Did not count: agreement to g17 – nothing in this answer asks for it.");
    }

    @Test
    void where_all_counted_nothing_is_said() {
        assertThat(lines("{contaminant: tar_spot, surface: clear_2k_sound}")).noneMatch(l -> l.startsWith("Did not count"));
    }

    /** Every field that a question may give, the fields of its fields too. */
    private static Stream<String> fields(Class<?> type, String before) {
        return Stream.of(type.getRecordComponents()).flatMap(c -> {
            String field = before + c.getName();
            Class<?> inner = Stream.of(Question.class.getDeclaredClasses()).filter(Class::isRecord)
                    .filter(r -> c.getGenericType().getTypeName().contains(r.getTypeName())).findFirst().orElse(null);
            boolean whole = List.of("facts-totalFilmMicrons", "setting-indoors", "mixing").contains(field);
            return inner == null || whole ? Stream.of(field) : fields(inner, field + "-");
        });
    }

    @Test
    void every_fact_is_called_in_plain_words() {
        List<String> fields = fields(Question.class, "").toList();
        assertThat(fields).hasSizeGreaterThan(45).contains("facts-vehicleYear", "setting-water-hardnessMgL", "tried-hoursAgo", "workers-sensitisedTo")
                .allSatisfy(f -> assertThat(Texts.ENGLISH.has("given." + f)).as(f).isTrue());
    }
}
