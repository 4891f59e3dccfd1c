package rungwise.question;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwise.Base;
import rungwise.knowledge.load.Mappers;
import tools.jackson.core.JacksonException;

/** What is sent in steers no terminal, and what is read is what stands there. */
class PlainTextTest {
    @Test
    void what_steers_a_terminal_is_shown_as_its_code() {
        assertThat(new Problem("/a\u001b", "\"\u001b[2J\u202e\u0007x\u009b\" is odd", "leave \u2028 out").toString())
                .isEqualTo("/a\\u001b: \"\\u001b[2J\\u202e\\u0007x\\u009b\" is odd; leave \\u2028 out");
        assertThat(PlainText.shown("naïve 漆 \ud83d\ude97 ~")).isEqualTo("naïve 漆 \ud83d\ude97 ~");
        assertThat(PlainText.shown("half \ud83d")).isEqualTo("half \\ud83d");
    }

    @Test
    void of_several_lines_only_the_ends_stay() {
        assertThat(PlainText.lines("a\u001b\n\tb\rc")).isEqualTo("a\\u001b\n\tb\\u000dc");
        assertThat(PlainText.named("id", "\u0007", "many", 2)).containsExactly("id", "\\u0007", "many", 2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"{\"contaminant\": \"tar\\u001b[31m\"}", "{\"done\": [\"x\\u0007\"]}", "{\"\\u001b]0;x\\u0007\": 1}",
            "{\"tried\": [{\"text\": \"a\\u001bb\", \"outcome\": \"harm\"}]}", "{\"facts\": {\"clearMicrons\": \"\\u001b\"}}"})
    void no_message_about_a_question_passes_a_control_character_on(String question) {
        assertThatThrownBy(() -> QuestionReader.read(Mappers.json().readTree(question), Base.advisor().knowledge()))
                .isInstanceOf(BadQuestion.class).satisfies(e -> assertThat(e.getMessage().codePoints()
                        .filter(c -> Character.isISOControl(c) && c != '\n').count()).isZero());
    }

    @ParameterizedTest
    @ValueSource(strings = {"{surface: &s clear_2k_sound, neighbours: [*s]}", "a: &x {b: 1}\nc: *x", "done: &d [washed]",
            "{contaminant: *nowhere}"})
    void anchors_and_aliases_are_refused_with_their_line(String yaml) {
        assertThatThrownBy(() -> Mappers.question().readTree(yaml)).isInstanceOf(JacksonException.class)
                .hasMessageContaining("anchor").satisfies(e -> assertThat(((JacksonException) e).getLocation().getLineNr()).isPositive());
    }

    @Test
    void a_star_or_an_ampersand_in_quotes_is_plain_text() {
        assertThat(Mappers.question().readTree("{a: \"*x\", b: '&y', c: R&D}").toString()).isEqualTo("{\"a\":\"*x\",\"b\":\"&y\",\"c\":\"R&D\"}");
    }
}
