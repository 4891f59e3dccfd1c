package rungwise.question;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.load.Mappers;
import tools.jackson.databind.node.ObjectNode;

/** A shelf is told by what the labels say; what may be several chemistries is asked back. */
class ShelfWordsTest {
    private static final KnowledgeBase BASE = Base.advisor().knowledge();

    private static ObjectNode shelf(String word) {
        ObjectNode question = Mappers.json().createObjectNode();
        question.putArray("shelf").add(word);
        return question;
    }

    @ParameterizedTest
    @CsvSource({"alkaline insect remover, alk_pre_mild", "purple fallout remover, iron_neutral", "car shampoo, neutral_shampoo",
            "shampoo, neutral_shampoo", "thiol gel, iron_gel_wheel", "butyl glycol cleaner, alk_pre_mild", "algae killer, algaecide_quat",
            "leather soap, leather_cleaner"})
    void a_label_that_means_one_thing_is_taken_for_it(String said, String id) {
        assertThat(QuestionReader.read(shelf(said), BASE).shelf().orElseThrow()).containsExactly(id);
    }

    @Test
    void a_label_that_may_be_acid_alkali_or_iron_remover_is_asked_back() {
        BadQuestion bad = catchThrowableOfType(BadQuestion.class, () -> QuestionReader.read(shelf("rim cleaner"), BASE));
        assertThat(bad.problems()).singleElement().satisfies(p -> {
            assertThat(p.pointer()).isEqualTo("/shelf/0");
            assertThat(p.remedy()).contains("iron_gel_wheel", "acid_mild", "alk_pre_mild");
        });
    }
}
