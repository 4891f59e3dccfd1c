package rungwise.shoplog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Attempts come back from a file as they went out. */
class ExchangeTest {
    private static final List<String> NOTES = List.of("plain", "a,b;c \"quoted\"", "two\nlines\n", "=1+1", "'=1+1", "'x",
            "-5", "@a", "+b", "  spaces  ", "\ttab", "é 😀", "#no comment", "null");

    private static List<Attempt> attempts() {
        List<Attempt> attempts = new ArrayList<>();
        Random random = new Random(7);
        for (String note : NOTES) {
            Attempt a = Adversary.attempt(random);
            attempts.add(new Attempt(a.id(), a.at(), a.shop(), a.bay(), a.spot(), a.contaminant(), a.age(),
                    List.of("clear_2k_sound", "wrap_gloss"), Made.attempt("{contaminant: unknown, method: alc_gel, outcome: "
                    + "harm, facts: {totalFilmMicrons: {min: 104, max: 118.5}, refinished: false, vehicleYear: 2012, "
                    + "priorDamage: [stone chips, dents]}}").facts(), Made.attempt("{contaminant: unknown, method: alc_gel, "
                    + "outcome: harm, setting: {airC: -2.5, sun: direct, indoors: {volumeM3: 180, airChangesPerHour: 2}}}")
                    .setting(), a.method(), a.advised(), List.of("no_time", "weather"), a.outcome(), a.prepared(),
                    java.util.OptionalDouble.of(2.5), java.util.Optional.of(note), java.util.Optional.of(note),
                    a.revision()));
        }
        attempts.add(Made.tar("aliph_tar", "cleared", ""));
        return attempts;
    }

    private static void comesBack(Function<StringWriter, Consumer<Attempt>> out,
                                  BiFunction<StringReader, AttemptReader, Iterator<Attempt>> in) {
        StringWriter text = new StringWriter();
        attempts().forEach(out.apply(text));
        List<Attempt> back = new ArrayList<>();
        in.apply(new StringReader(text.toString()), Made.READER).forEachRemaining(back::add);
        List<Attempt> sent = attempts();
        assertThat(back).hasSameSizeAs(sent);
        for (int i = 0; i < sent.size() - 1; i++) {
            assertThat(back.get(i)).isEqualTo(sent.get(i));
        }
    }

    @Test
    void json_lines_come_back_exactly() {
        comesBack(Exchange::lines, Exchange::fromLines);
    }

    @Test
    void csv_comes_back_exactly() {
        comesBack(Exchange::csv, Exchange::fromCsv);
    }

    @Test
    void a_spreadsheet_takes_no_note_for_a_formula() {
        StringWriter text = new StringWriter();
        Exchange.csv(text).accept(Made.tar("aliph_tar", "cleared", "note: \"=HYPERLINK(1)\""));
        assertThat(text.toString()).contains("'=HYPERLINK(1)").doesNotContain(",=HYPERLINK");
    }

    @Test
    void columns_come_in_any_order_and_a_strange_one_is_named_with_a_near_one() {
        Iterator<Attempt> read = Exchange.fromCsv(new StringReader("\uFEFFoutcome,method,contaminant\ncleared,aliph_tar,"
                + "tar_spot\n\nharm,alc_gel,tar_spot\n"), Made.READER);
        List<Outcome> outcomes = new ArrayList<>();
        read.forEachRemaining(a -> outcomes.add(a.outcome()));
        assertThat(outcomes).containsExactly(Outcome.CLEARED, Outcome.HARM);
        assertThatThrownBy(() -> Exchange.fromCsv(new StringReader("outcom,method\nx,y\n"), Made.READER))
                .isInstanceOf(BadAttempt.class).hasMessageContaining("outcom").hasMessageContaining("did you mean outcome");
    }

    @Test
    void every_wrong_row_is_named_with_its_field() {
        Iterator<Attempt> read = Exchange.fromCsv(new StringReader("contaminant,method,outcome\ntar_spot,aliph_tar,cleared\n"
                + "tar_spt,aliph_tar,cleared\ntar_spot,aliph_tar,gone\n"), Made.READER);
        assertThatThrownBy(() -> read.forEachRemaining(a -> { })).isInstanceOf(BadAttempt.class)
                .hasMessageContaining("row 3 /contaminant").hasMessageContaining("row 4 /outcome");
        Iterator<Attempt> lines = Exchange.fromLines(new StringReader("{\"contaminant\":\"tar_spot\",\"method\":\"aliph_tar\","
                + "\"outcome\":\"cleared\"}\n{broken\n"), Made.READER);
        assertThatThrownBy(() -> lines.forEachRemaining(a -> { })).isInstanceOf(BadAttempt.class)
                .hasMessageContaining("row 2");
    }
}
