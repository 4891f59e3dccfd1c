package rungwise.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Names that share words are said with those words once. */
class AlikeTest {
    @Test
    void what_ends_alike_ends_once() {
        assertThat(Alike.names(List.of("Strong alkaline cleaner", "Medium alkaline cleaner", "Mild alkaline cleaner"), "Medium alkaline cleaner"))
                .isEqualTo("Strong, medium, mild alkaline cleaner");
    }

    @Test
    void what_begins_alike_begins_once() {
        assertThat(Alike.names(List.of("Alcohol 70 %", "Alcohol 90 %", "Panel wipe blend"), "Alcohol 90 %")).isEqualTo("Alcohol 70 %, 90 %");
    }

    @Test
    void what_shares_no_word_stays_by_itself() {
        assertThat(Alike.names(List.of("Ozone", "Dilute bleach"), "Ozone")).isEqualTo("Ozone");
        assertThat(Alike.names(List.of("Cleaner", "Glass cleaner"), "Cleaner")).isEqualTo("Cleaner");
    }
}
