package rungwise.knowledge.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rungwise.knowledge.draft.Fault;

/** One broken thing at a time, in the real knowledge. */
class KnowledgeLoaderTest {
    private static final Map<String, String> FILES = KnowledgeFiles.builtIn("knowledge");

    private static List<Fault> faultsWith(String file, String from, String to) {
        Map<String, String> broken = new TreeMap<>(FILES);
        assertThat(broken.get(file)).contains(from);
        broken.put(file, broken.get(file).replaceFirst(java.util.regex.Pattern.quote(from),
                java.util.regex.Matcher.quoteReplacement(to)));
        KnowledgeLoader.Loaded loaded = KnowledgeLoader.load(broken, "test");
        assertThat(loaded.base()).isEmpty();
        return loaded.faults();
    }

    private static void finds(List<Fault> faults, String file, String words) {
        assertThat(faults).anySatisfy(f -> {
            assertThat(f.file()).isEqualTo(file);
            assertThat(f.toString()).contains(words);
            assertThat(f.remedy()).isNotBlank();
        });
    }

    @Test
    void the_real_knowledge_has_no_fault() {
        assertThat(KnowledgeLoader.load(FILES, "test").faults()).isEmpty();
    }

    @Test
    void a_dangling_id_is_found_and_a_near_one_suggested() {
        finds(faultsWith("methods/alcohol.yaml", "agent: alc_gel", "agent: alc_gell"), "methods/alcohol.yaml",
                "\"alc_gell\" does not exist; did you mean alc_gel");
    }

    @Test
    void an_unknown_field_is_found() {
        finds(faultsWith("methods/clay.yaml", "tries:", "trys:"), "methods/clay.yaml", "trys");
    }

    @Test
    void a_published_statement_without_a_source_is_found() {
        finds(faultsWith("tools/cloth.yaml", "basis: common_practice", "basis: published"), "tools/cloth.yaml",
                "names no source");
    }

    @Test
    void a_range_that_runs_backwards_is_found() {
        finds(faultsWith("agents/acid.yaml", "{from: 2.5, to: 3.5}", "{from: 3.5, to: 2.5}"), "agents/acid.yaml",
                "runs backwards");
    }

    @Test
    void a_ph_off_the_scale_is_found() {
        finds(faultsWith("agents/alkali.yaml", "{from: 9, to: 10}", "{from: 9, to: 15}"), "agents/alkali.yaml",
                "outside 0 to 14");
    }

    @Test
    void a_chance_that_rises_with_age_within_a_bond_class_is_found() {
        finds(faultsWith("methods/alcohol.yaml", "resinous: {fresh: VL, hardened: L}",
                "resinous: {fresh: L, hardened: VL}"), "methods/alcohol.yaml", "hardened is likelier than fresh");
    }

    @Test
    void a_residue_that_nothing_rinses_is_found() {
        finds(faultsWith("methods/thiol.yaml", "afterwards: [flood_rinse, neutral_rewash]", "afterwards: []"),
                "methods/thiol.yaml", "nothing rinses it");
    }

    @Test
    void an_agent_that_no_method_uses_is_found() {
        finds(faultsWith("methods/alcohol.yaml", "agent: alc_90", "agent: alc_70"), "agents/alcohol.yaml",
                "no method uses it");
    }

    @Test
    void an_id_used_twice_is_found() {
        finds(faultsWith("methods/clay.yaml", "id: clay_medium", "id: clay_fine"), "methods/clay.yaml",
                "this id is already in");
    }

    @Test
    void a_start_window_above_25_degrees_is_found() {
        finds(faultsWith("methods/clay.yaml", "window: {from: 15, to: 30}", "window: {from: 26, to: 30}"),
                "methods/clay.yaml", "a hotter panel would add a method");
    }

    @Test
    void a_surface_silent_on_a_solvent_is_found() {
        String file = "surfaces/pmma_lens.yaml";
        String line = FILES.get(file).lines().filter(l -> l.startsWith("  aliphatic:")).findFirst().orElseThrow();
        finds(faultsWith(file, line + "\n", ""), file, "says nothing of aliphatic");
    }

    @Test
    void unreadable_yaml_is_found_with_its_line() {
        finds(faultsWith("circumstances.yaml", "name: ", "name: ["), "circumstances.yaml", "not readable YAML");
    }

    @Test
    void a_figure_that_the_program_asks_for_and_that_is_mistyped_is_found_from_both_sides() {
        List<Fault> faults = faultsWith("assumptions.yaml", "id: tap-acidity", "id: tap-acidty");
        finds(faults, "assumptions.yaml", "at tap-acidity: the program asks for it, and it is not there; did you mean tap-acidty?");
        finds(faults, "assumptions.yaml", "at tap-acidty: nothing uses it; did you mean tap-acidity?");
        assertThat(faults).hasSize(2);
    }

    @Test
    void a_figure_that_nothing_asks_for_is_found() {
        assertThat(faultsWith("assumptions.yaml", "- id: sun", "- id: moon\n  says: A moon that nobody told counts as full.\n"
                + "  cause: It is seen more.\n  stage: setting\n  word: full\n  basis: common_practice\n- id: sun")).extracting(Fault::toString)
                .containsExactly("assumptions.yaml at moon: nothing uses it; leave it out [asked-for]");
    }

    @Test
    void many_faults_are_named_at_once() {
        Map<String, String> broken = new TreeMap<>(FILES);
        broken.put("methods/clay.yaml", broken.get("methods/clay.yaml").replace("trys:", "tries:")
                .replace("family: clay", "family: clai"));
        broken.put("tools/cloth.yaml", broken.get("tools/cloth.yaml").replace("basis: common_practice",
                "basis: published"));
        assertThat(KnowledgeLoader.load(broken, "test").faults()).hasSizeGreaterThan(6);
    }
}
