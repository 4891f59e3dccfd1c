package rungwise.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.decision.Decision;
import rungwise.knowledge.decision.Stage;

/** The steps of worth stand in DEVELOPERS.md as knowledge has them. */
class StepsInDevelopersTest {
    private static final String BEGINS = "<!-- steps -->\n";
    private static final String ENDS = "<!-- end of steps -->";

    private static String line(Decision step) {
        return "- `" + step.id() + "`" + (step.isStep() ? "" : " (" + Figures.text(step.value()) + " " + step.unit() + ")") + ": " + step.says()
                + "\n";
    }

    @Test
    void the_steps_of_worth_are_those_of_knowledge() throws Exception {
        String page = Files.readString(Path.of("DEVELOPERS.md"));
        String steps = Base.advisor().knowledge().decisions().byId().values().stream().filter(d -> d.stage() == Stage.WORTH)
                .map(StepsInDevelopersTest::line).collect(Collectors.joining());
        assertThat(page.substring(page.indexOf(BEGINS) + BEGINS.length(), page.indexOf(ENDS))).isEqualTo(steps);
    }
}
