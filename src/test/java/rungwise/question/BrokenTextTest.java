package rungwise.question;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwise.knowledge.load.Mappers;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.ObjectMapper;

/** What is said of a text that cannot be read is ours, and says where. */
class BrokenTextTest {
    private static BrokenText of(ObjectMapper mapper, byte[] text) {
        return BrokenText.of(catchThrowableOfType(JacksonException.class, () -> mapper.readTree(text)), mapper, text);
    }

    private static void plain(BrokenText broken) {
        assertThat(broken.why() + broken.remedy()).isNotBlank().doesNotContainPattern("(?i)redacted|`|source|feature|stream|token|jackson|code \\d|in reader|scalar");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
        "{|ends before", "{\"a\":1,\"a\":2}|\"a\" stands a second time", "{} {}|behind the end", "no|\"no\" stands without quotes",
        "{\"a\":NaN}|NaN is no number", "{\"a\":01}|not written as one", "{\"a\":+1}|not written as one", "{\"a\":\"\\q\"}|behind a backslash",
        "{\"a\":1]|missing or one too many", "{'a':1}|missing or one too many", "{\"a\" 1}|missing or one too many",
        "{\"a\":1111111111111111111111111111111111}|more than 30 digits", "[[[[[[[[[[[[[[[[[[[[[[[[[[|deeper than 20"})
    void json_that_is_broken_is_told_in_plain_words_with_its_place(String text, String why) {
        BrokenText broken = of(Mappers.json(), text.getBytes(StandardCharsets.UTF_8));
        assertThat(broken.why()).contains(why);
        assertThat(broken.at().orElseThrow().line()).isEqualTo(1);
        assertThat(broken.said()).startsWith("at line 1, column ");
        plain(broken);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
        "a: [|1|ends before", "a: b: c|1|second field", "a:\\n\\tb: 1|2|a tab", "a: 1\\na: 2|2|\"a\" stands a second time", "- a\\nb: 1|2|indented alike",
        "a: 'x|1|ends before", "a: @b|1|missing or one too many", "a: &x 1\\nb: *x|2|alias", "a: 1\\n---\\nb: 1|3|behind the end", "a: {b|1|ends before",
        "\"a\\q\"|1|behind a backslash"})
    void yaml_that_is_broken_is_told_in_plain_words_with_its_line(String text, int line, String why) {
        BrokenText broken = of(Mappers.question(), text.replace("\\n", "\n").replace("\\t", "\t").getBytes(StandardCharsets.UTF_8));
        assertThat(broken.why()).contains(why);
        assertThat(broken.at().orElseThrow().line()).isEqualTo(line);
        plain(broken);
    }

    @Test
    void bytes_that_are_no_letters_and_letters_without_end_are_told_so() {
        assertThat(of(Mappers.json(), new byte[] {'"', (byte) 0xff, '"'}).why()).contains("not UTF-8");
        assertThat(of(Mappers.json(), ("{\"a\":\"" + "x".repeat(5_000) + "\"}").getBytes(StandardCharsets.UTF_8)).why()).contains("4000 characters");
        assertThat(of(Mappers.json(), new byte[] {'"', 7, '"'}).why()).contains("control character");
        String word = of(Mappers.json(), "y".repeat(300).getBytes(StandardCharsets.UTF_8)).why();
        assertThat(word).hasSizeLessThan(100).contains("…");
        assertThat(of(Mappers.json(), "{\"\\u001b\":1,\"\\u001b\":2}".getBytes(StandardCharsets.UTF_8)).why()).contains("\\u001b").doesNotContain("\u001b");
    }

    @Test
    void what_nobody_foresaw_is_still_said_in_plain_words() {
        BrokenText broken = BrokenText.of(new tools.jackson.core.exc.StreamReadException(null, "Something `Feature.X` (Source: REDACTED)"));
        assertThat(broken.at()).isEqualTo(Optional.empty());
        assertThat(broken.said()).isEqualTo("what stands there does not belong there");
    }
}
