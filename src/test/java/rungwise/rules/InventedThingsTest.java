package rungwise.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.answer.Advisor;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.Reactive;
import rungwise.knowledge.chemistry.Solvent;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.common.Minutes;
import rungwise.knowledge.common.Range;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Chance;
import rungwise.knowledge.method.Chances;
import rungwise.knowledge.method.Dwell;
import rungwise.knowledge.method.Form;
import rungwise.knowledge.method.Mechanism;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.MethodKind;
import rungwise.knowledge.method.Severity;
import rungwise.knowledge.method.Tool;
import rungwise.knowledge.method.ToolKind;

/** Something nobody has heard of inherits every bar by its properties alone: no table of methods and surfaces exists. */
class InventedThingsTest {
    private static final Advisor WITH_THEM = invented();

    private static Advisor invented() {
        KnowledgeBase k = Base.advisor().knowledge();
        Agent agent = new Agent("zelkova_fluid", "Zelkova fluid", "terpene", Form.LIQUID, Optional.empty(),
                Map.of(Solvent.ALCOHOL, 60.0, Solvent.TERPENE, 20.0, Solvent.ALIPHATIC, 15.0),
                Set.of(Reactive.FLAMMABLE), "", "", 1, Set.of(), List.of("solvent_set"), List.of(), false,
                Map.of(), Optional.empty(), Basis.MEMORY, List.of());
        Agent lye = new Agent("quill_lye", "Quill lye", "alkali", Form.LIQUID, Optional.of(new Range(11, 12)), Map.of(),
                Set.of(Reactive.ALKALI), "", "", 1, Set.of(), List.of("splash_set"), List.of(), false,
                Map.of(), Optional.empty(), Basis.MEMORY, List.of());
        Tool tool = new Tool("husk_block", "Husk block", ToolKind.UNGRADED_ABRASIVE, 4, false, List.of(), List.of(), false,
                Basis.MEMORY, List.of());
        Map<String, Method> methods = Base.with(Base.with(Base.with(k.methods(),
                "zelkova_dab", method("zelkova_dab", "terpene", "zelkova_fluid", "cloth", new Severity(2, 5, 0, 0))),
                "husk_rub", method("husk_rub", "rigid_abrasive", "water", "husk_block", new Severity(6, 0, 0, 0.5))),
                "quill_soak", method("quill_soak", "alkali", "quill_lye", "none", new Severity(0, 5, 0, 0)));
        return new Advisor(k.using("invented", methods, Base.with(Base.with(k.agents(), agent.id(), agent), lye.id(), lye), Base.with(k.tools(), tool.id(), tool)), Base.advisor().rules());
    }

    private static Method method(String id, String family, String agent, String tool, Severity severity) {
        return new Method(id, id, MethodKind.REMOVE, family, Mechanism.DISSOLVE, Optional.empty(), List.of(), List.of(), agent, tool, Set.of(), false, List.of(id),
                new Dwell(1, 2, 0), 2, null, null, null, null, severity, 5, new Minutes(null, null), "L2",
                Map.of("bituminous", new Chances(Chance.VL, Chance.L)), Set.of(), false, null, List.of(),
                List.of("neutral_rewash"), List.of(), List.of(), "w_gen", List.of(), List.of(), "", Basis.MEMORY,
                List.of(), List.of());
    }

    private static Answer on(String surface) {
        return Base.ask(WITH_THEM, "{contaminant: tar_spot, age: P12D, surface: " + surface
                + ", setting: {panelC: 20}, done: [washed, dried]}");
    }

    @Test
    void an_invented_solvent_is_barred_on_lacquer_acrylic_rubber_matte_leather_belts_and_brakes() {
        for (String surface : List.of("lacquer_nitro_acrylic", "pmma_lens", "rubber_epdm_seal", "matte_satin_clear",
                "clear_2k_fresh_30", "wrap_gloss", "pc_lens_hardcoat", "pvc_window_clear", "leather_coated",
                "display_screen", "seat_belt_webbing", "carbon_ceramic_brake", "soft_touch_coating")) {
            assertThat(Base.bars(on(surface), "zelkova_dab")).as(surface).isTrue();
        }
    }

    @Test
    void the_same_solvent_is_offered_on_sound_clear_with_its_protection() {
        Answer answer = on("clear_2k_sound");
        assertThat(answer.rungs()).anySatisfy(r -> {
            assertThat(r.method()).isEqualTo("zelkova_dab");
            assertThat(r.ppe()).anyMatch(p -> p.item().equals("solvent_set"));
        });
    }

    @Test
    void an_invented_rigid_abrasive_is_barred_wherever_a_mark_would_show() {
        for (String surface : List.of("clear_2k_sound", "clear_2k_thin", "lacquer_nitro_acrylic", "matte_satin_clear",
                "pmma_lens", "pc_lens_worn", "wrap_gloss", "glass_laminated_screen", "alu_anodised")) {
            assertThat(Base.bars(on(surface), "husk_rub")).as(surface).isTrue();
        }
        assertThat(Base.bars(on("trim_pp_tpo_textured"), "husk_rub")).isFalse();
    }

    @Test
    void an_invented_alkali_is_barred_on_aluminium_film_and_matte_but_not_on_sound_clear() {
        for (String surface : List.of("alu_anodised", "alu_bare_polished", "matte_satin_clear", "ppf_tpu_gloss",
                "lacquer_nitro_acrylic")) {
            assertThat(Base.bars(on(surface), "quill_soak")).as(surface).isTrue();
        }
        assertThat(Base.bars(on("clear_2k_sound"), "quill_soak")).isFalse();
    }
}
