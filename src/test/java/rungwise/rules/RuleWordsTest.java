package rungwise.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.load.KnowledgeFiles;

class RuleWordsTest {
    private static final Map<String, String> TEXTS = KnowledgeFiles.builtIn("rules");
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    /** Ids that mean something else where they stand alone: what opens a bar, what was done, what advice is about. */
    private static final Set<String> OF_ANOTHER_KIND = Set.of("ventilate", "gauge", "cool", "shade", "mask", "clay");

    private static List<String> faults(String when, String then) {
        return RuleWords.faults(withOwn(when, then), KNOWN).stream().map(Fault::toString).toList();
    }

    private static Map<String, String> withOwn(String when, String then) {
        Map<String, String> texts = new TreeMap<>(TEXTS);
        texts.put("9-own/own.drl", "rule \"the trade says so\"\n  @id(own-rule)\n  @says(\"It says \\\"so\\\".\")\nwhen\n  " + when
                + "\nthen\n  insert(" + then + "); // not \"this\"\nend\n");
        return texts;
    }

    @Test
    void the_rules_name_nothing_that_does_not_exist_and_read_every_trait_and_nature() {
        assertThat(RuleWords.faults(TEXTS, KNOWN)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\'', textBlock = """
            $u : Use() | new Gated($u.name(), "tset_spot", "x") | gate | tset_spot | test_spot
            $u : Use() | new TreatAs("clear_2k_thn", "x") | surface | clear_2k_thn | clear_2k_thin
            $u : Use() | new MightBe("clear_2k_fresh_90", "ask_paint_agee", "x") | gate | ask_paint_agee | ask_paint_age
            $u : Use() | new MightBe("clear_2k_fresh_9", "ask_paint_age", "x") | surface | clear_2k_fresh_9 | clear_2k_fresh_90
            $u : Use() | new FlushFirst("blot_absrob", "x", "x") | method | blot_absrob | blot_absorb
            $u : Use() | new Step("after", 1, "wipe_of", "x", "", "x") | method or step | wipe_of | wipe_off
            $u : Use() | new Step("before", 1, "shde", "x", "", "x") | method or step | shde | shade
            $u : Use() | new Protect($u.name(), java.util.List.of("apron", "partcle_mask"), "x") | item of protection | partcle_mask | particle_mask
            $u : Use() | new Clash($a.name(), $b.name(), false, java.util.List.of("flood_rinse", "neutral_rewsh"), 0, "x", "x") | method | neutral_rewsh | neutral_rewash
            $u : Use() | Bar.never("alc_gell", "x") | method | alc_gell | alc_gel
            $u : Use() | Bar.notNow($u.name(), $u.figures(), "ask_prodct") | what lifts a bar | ask_prodct | ask_product
            $u : Use() | Bar.usedUp($u.name(), $u.figures(), "next_vist") | what lifts a bar | next_vist | next_visit
            $u : Use() | new Next(Action.TRY, $u.name(), "tri", "", $u.figures()) | sentence | tri | try
            $u : Use() | Step.after(1, "wipe_of", "x", "", "x") | method or step | wipe_of | wipe_off
            $u : Use() | Step.before(1, "shde", "x", "", "x") | method or step | shde | shade
            $u : Use() | new Caution("alc_gell", "x", "x") | method | alc_gell | alc_gel
            $u : Use( isFamily("clai") ) | new Halt("x", "x") | family of methods | clai | clay
            $u : Use( agent.family != "nona" ) | new Halt("x", "x") | family of agents | nona | none
            $u : Use( method.family in ("clay", "polsh") ) | new Halt("x", "x") | family of methods | polsh | polish
            $d : Deposit( hasHazard("pathogn") ) | new Halt("x", "x") | hazard | pathogn | pathogen
            $d : Deposit( contaminant.bond.fresh == "lose" ) | new Halt("x", "x") | bond class | lose | loose
            $s : Seen( observation.id == "v266" ) | new Halt("x", "x") | sign | v266 | v26
            """)
    void a_typing_error_is_refused_with_the_nearest_id(String when, String then, String kind, String word, String near) {
        assertThat(faults(when, then)).singleElement().asString()
                .startsWith("rules at own-rule: the " + kind + " \"" + word + "\" does not exist; did you mean ").contains(near)
                .endsWith("[rule-word]");
    }

    @Test
    void what_a_rule_says_of_itself_and_comments_are_no_ids() {
        assertThat(faults("$u : Use( isFamily(\"clay\") )", "new Gated($u.name(), \"test_spot\", \"the tset_spot\")")).isEmpty();
    }

    /** An id that stands in a place of which nobody thought would not be held against anything. */
    @Test
    void every_id_in_a_rule_stands_where_it_is_looked_at() {
        Set<String> ids = Stream.of(KNOWN.gates(), KNOWN.methods(), KNOWN.surfaces(), KNOWN.ppe(), KNOWN.families(), KNOWN.contaminants(),
                KNOWN.agents(), KNOWN.tools(), KNOWN.bondClasses(), KNOWN.observations(), KNOWN.circumstances(), KNOWN.steps())
                .flatMap(entries -> entries.keySet().stream()).filter(id -> !OF_ANOTHER_KIND.contains(id))
                .collect(Collectors.toCollection(TreeSet::new));
        Map<String, Set<String>> unlooked = new TreeMap<>();
        RuleWords.unlooked(TEXTS).forEach((rule, words) -> {
            words.retainAll(ids);
            if (!words.isEmpty()) {
                unlooked.put(rule, words);
            }
        });
        assertThat(unlooked).isEmpty();
    }

    @Test
    void a_trait_that_no_rule_reads_is_refused() {
        Map<String, String> texts = new TreeMap<>(TEXTS);
        texts.replaceAll((name, text) -> text.replace("Trait.LEAD_SUSPECT", "Trait.THIN"));
        assertThat(RuleWords.faults(texts, KNOWN)).extracting(Fault::toString).containsExactly("rules at lead_suspect: no rule and no "
                + "check reads this trait, so that to have it changes nothing; write the rule that it is for, or take the word out "
                + "[rule-unread]");
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
