package rungwise.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.answer.Advisor;
import rungwise.knowledge.load.Mappers;
import rungwise.knowledge.surface.Surface;
import rungwise.question.Question;
import rungwise.question.QuestionReader;

/** What the build worked out is what a fresh start works out. */
class PreparedTest {
    private final Advisor fresh = Base.advisor();
    private final Advisor prepared = Prepared.fromBuild();

    @Test
    void knowledgeAndComputedChancesAndTheOrderOfMethodsAreTheSame() {
        assertThat(prepared.revision().given()).isEqualTo(fresh.revision().given());
        assertThat(prepared.revision().computed()).isEqualTo(fresh.revision().computed());
        assertThat(prepared.revision().sequence()).isEqualTo(fresh.revision().sequence());
    }

    @Test
    void everySurfaceIsPreparedAsItIsAndAsAnUnknownFactCouldMakeIt() {
        for (Surface surface : fresh.knowledge().surfaces().values()) {
            List<Surface> seen = fresh.revision().wherever(surface);
            assertThat(seen).isNotEmpty();
            for (Surface one : seen) {
                assertThat(Prepared.standing(one.id())).as(one.id()).contains(fresh.revision().standingOn(one));
            }
        }
    }

    @Test
    void demoSpotsGetTheSameAnswerWordForWord() throws IOException {
        try (Stream<Path> spots = Files.list(Path.of("demo-data/spots"))) {
            for (Path spot : spots.toList()) {
                Question question = QuestionReader.read(Mappers.question().readTree(Files.readString(spot)), fresh.knowledge());
                assertThat(Mappers.json().writeValueAsString(prepared.answer(question, true))).as(spot.toString())
                        .isEqualTo(Mappers.json().writeValueAsString(fresh.answer(question, true)));
            }
        }
    }
}
