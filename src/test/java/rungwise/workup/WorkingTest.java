package rungwise.workup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.Method;
import rungwise.rules.said.Because;
import rungwise.rules.use.Use;
import rungwise.text.Texts;

class WorkingTest {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();

    private static Because of(Method method, String deposit, String bond) {
        return Working.of(KNOWN, new Use(method, KNOWN.agentOf(method), KNOWN.toolOf(method), KNOWN.surfaces().get("clear_2k_sound")),
                KNOWN.contaminants().get(deposit), bond);
    }

    private static String said(String method, String deposit, String bond) {
        Because because = of(KNOWN.methods().get(method), deposit, bond);
        return Texts.ENGLISH.fill(because.says(), because.figures());
    }

    @Test
    void the_sentence_names_what_works_on_what() {
        assertThat(said("aliph_tar", "tar_spot", "bituminous"))
                .isEqualTo("Aliphatic tar remover dissolves the tar spots, so that a wipe is enough.");
        assertThat(said("clay_fine", "fallout_iron", "ferrous_embedded"))
                .isEqualTo("With the fine clay the airborne iron, rail dust is pushed off along the surface.");
    }

    @Test
    void it_says_what_holds_the_deposit_and_leads_to_the_mechanism() {
        Because because = of(KNOWN.methods().get("aliph_tar"), "tar_spot", "bituminous");
        assertThat(because.id()).isEqualTo("mechanisms/dissolve");
        assertThat(Base.found(because)).contains("held by tar, petroleum or wax");
        assertThat(because.cause()).isNotBlank();
    }

    @Test
    void every_method_fills_its_sentence() {
        for (Map.Entry<String, Method> method : KNOWN.methods().entrySet()) {
            Because because = of(method.getValue(), "tar_spot", "bituminous");
            assertThat(Texts.ENGLISH.fill(because.says(), because.figures())).as(method.getKey()).endsWith(".").doesNotContain("{");
        }
    }
}
