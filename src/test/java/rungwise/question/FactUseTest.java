package rungwise.question;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungwise.Base;
import rungwise.answer.Advisor;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.load.Mappers;
import rungwise.knowledge.surface.Surface;
import rungwise.rules.said.Step;
import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** No fact falls silent: whoever gives one reads that it counted, or why it did not; and what changes the answer counted. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FactUseTest {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();

    private final Set<String> doneWords = new TreeSet<>();
    private int usedInAll;
    private int changedInAll;
    private final Advisor heard = new Advisor(KNOWN, Base.advisor().rules().heardBy(said -> said.of(Step.class)
            .forEach(s -> doneWords.add(s.conclusion().done()))));

    /** Questions that say much. */
    static List<String> rich() {
        return List.of("""
                {contaminant: sap_conifer, age: P21D, surface: clear_2k_sound, extent: {spots: 5, diameterMm: 6},
                facts: {totalFilmMicrons: {min: 104, max: 118}, clearMicrons: 44, colour: dark, paintAgeDays: 2500, vehicleYear: 2019,
                refinished: false, place: bonnet, priorDamage: [stone_chips, dents], warmestPanelC: 52, soiling: heavy, protection: none},
                setting: {airC: 31, sun: direct, windMs: 6, humidity: 0.4, outdoors: true, water: {hardnessMgL: 300, alkalinityMgL: 200}},
                workers: [{level: L2, sensitisedTo: [d_limonene, thiol]}], neighbours: [pmma_lens], done: [washed, dried],
                wanted: [alc_gel, clay_fine], canWaitMinutes: 90, passedTests: [alc_50], consent: {granted: [consent], refused: [g16]},
                mixing: {bottleMl: 1000, drawParts: 10}}""", """
                {contaminant: water_spot_mineral, age: P4D, surface: [clear_2k_sound, glass_laminated_screen], extent: {areaM2: 0.9, diameterMm: 3},
                facts: {colour: light, place: edge, protection: coating, soiling: light, vehicleYear: 1984, totalFilmMicrons: {min: 90, max: 95}},
                setting: {airC: 20, panelC: 19, sun: shade, indoors: {volumeM3: 120, airChangesPerHour: 2}},
                workers: [{level: L3}, {level: L1, sensitisedTo: [enzyme]}], shelf: [acid_mild, clay_fine, water], shelfStrict: true,
                tried: [{text: household bleach, outcome: no-change, hoursAgo: 3}, {method: contact_wash_neutral, substance: alk_pre_mild,
                text: twice, outcome: partly, times: 2, dwellMinutes: 3, hoursAgo: 5, prepared: true}]}""", """
                {contaminant: fallout_iron, age: P40D, surface: matte_satin_clear, extent: {areaM2: 1.4},
                facts: {colour: dark, vehicleYear: 2021, place: roof, warmestPanelC: 60}, setting: {airC: 17, panelC: 17, sun: shade},
                workers: [{level: L2}], wanted: [clay_fine, machine_finish], done: [washed, dried, masked, g15],
                tried: [{text: something from the shelf, outcome: no-change, hoursAgo: 1}, {method: iron_neutral, outcome: no-change,
                prepared: false, hoursAgo: 30, dwellMinutes: 4}]}""", """
                {contaminant: coffee_tea, age: PT1H, surface: int_fabric_woven, observations: [v15, v66, v21], facts: {place: seats,
                colour: medium, clearMicrons: 40, paintAgeDays: 20, refinished: true, priorDamage: [tear], soiling: heavy},
                setting: {airC: 36, humidity: 0.8, sun: overcast, windMs: 1, indoors: {volumeM3: 60, airChangesPerHour: 6}},
                workers: [{level: L4}], neighbours: [leather_coated], done: [vacuumed, blotted, made_safe], canWaitMinutes: 20}""", """
                {contaminant: tar_spot, age: P3D, surface: clear_2k_sound, circumstances: [gas_smell], extent: {spots: 12, diameterMm: 3},
                facts: {colour: light, place: door}, setting: {airC: 16, panelC: 16, sun: shade}, workers: [{level: L2}], done: [washed]}""",
                """
                {contaminant: chewing_gum, age: P2D, surface: trim_pp_tpo_textured, facts: {priorDamage: [crack], place: high_voltage},
                setting: {airC: 18, panelC: 18, sun: shade, outdoors: true}, tried: [{method: freeze_spot, outcome: harm, signs: [crack],
                hoursAgo: 1}]}""", """
                {contaminant: silica_scale_glass, age: P300D, surface: glass_tempered_side, observations: [v66, v15], facts: {place: glass,
                colour: dark, totalFilmMicrons: {min: 100, max: 110}, paintAgeDays: 900, protection: wax},
                setting: {airC: 24, sun: direct, windMs: 2, water: {hardnessMgL: 20}}, workers: [{level: L4}], consent: {granted: [g14],
                refused: [g13]}, wanted: [steel_blade_glass]}""", """
                {observations: [v21, v02], age: P40D, surface: clear_2k_sound, facts: {place: sills, colour: dark},
                setting: {airC: 20, panelC: 20, sun: shade, outdoors: true}, done: [washed, dried]}""");
    }

    @ParameterizedTest
    @MethodSource("rich")
    void each_fact_counts_or_is_told_not_to(String yaml) throws IOException {
        JsonNode tree = Mappers.question().readTree(yaml);
        Question question = read(tree);
        boolean named = question.contaminant().isPresent();
        FactUse use = FactUse.of(question, KNOWN, touched(question, tree));
        List<String> given = FactsGiven.of(question);
        List<String> told = new ArrayList<>(use.used());
        use.unused().forEach(u -> told.add(u.pointer()));
        assertThat(told).containsExactlyInAnyOrderElementsOf(given).doesNotHaveDuplicates();
        assertThat(use.unused()).allSatisfy(u -> assertThat(u.why()).endsWith("."));
        Set<String> changed = new TreeSet<>();
        if (named) {
            String whole = told(heard.answer(question, true));
            for (String pointer : given) {
                if (!told(heard.answer(read(without(tree, pointer)), true)).equals(whole)) {
                    changed.add(pointer);
                }
            }
            usedInAll += use.used().size();
            changedInAll += changed.size();
            assertThat(changed).isNotEmpty();
        }
        assertThat(use.used()).containsAll(changed);
    }

    @Test
    void every_field_of_a_question_is_told_when_it_is_given() {
        Set<String> fields = new TreeSet<>();
        rich().forEach(yaml -> FactsGiven.of(read(Mappers.question().readTree(yaml))).forEach(p -> fields.add(FactsGiven.kind(p))));
        assertThat(fields).containsAll(FactUse.conditional()).hasSizeGreaterThan(40);
    }

    @Test
    void what_says_no_more_than_silence_is_not_given() {
        assertThat(FactsGiven.of(read(Mappers.question().readTree("{age: unknown, surface: unknown, setting: {windMs: 0, outdoors: false}, "
                + "done: [], canWaitMinutes: 0}")))).isEmpty();
        assertThat(FactsGiven.of(read(Mappers.question().readTree("{shelf: [], workers: [{}], tried: [{text: soap, outcome: harm}]}"))))
                .containsExactlyInAnyOrder("/shelf", "/workers/0/level", "/tried/0/text", "/tried/0/outcome");
    }

    /** Used is no empty word: most of what is called so changes the answer at once. */
    @AfterAll
    void most_of_what_is_used_changes_the_answer() {
        System.out.println("facts called used: " + usedInAll + ", of which without them the answer is another: " + changedInAll);
        assertThat(changedInAll * 10).isGreaterThan(usedInAll * 5);
    }

    private static Question read(JsonNode tree) {
        return QuestionReader.read(tree, KNOWN);
    }

    /** The same without one fact; without what it stands in, where that cannot be without it. */
    private static JsonNode without(JsonNode tree, String pointer) {
        JsonNode copy = tree.deepCopy();
        JsonPointer at = JsonPointer.compile(pointer);
        // a single surface may stand outside a list
        JsonPointer there = copy.at(at).isMissingNode() ? at.head() : at;
        JsonNode parent = copy.at(there.head());
        if (parent instanceof ArrayNode array) {
            array.remove(there.last().getMatchingIndex());
        } else {
            ((ObjectNode) parent).remove(there.last().getMatchingProperty());
        }
        try {
            read(copy);
            return copy;
        } catch (BadQuestion needed) {
            return without(tree, there.head().toString());
        }
    }

    /** An answer without the question that it repeats; where work stops, only what it says to do. */
    private static String told(Answer answer) {
        if (isStopped(answer)) {
            return answer.hold() + " " + answer.next();
        }
        ObjectNode tree = Mappers.json().valueToTree(answer);
        tree.remove("question");
        return tree.toString();
    }

    private static boolean isStopped(Answer answer) {
        return Set.of("hold", "flush", "stop").contains(answer.next().action());
    }

    private Touched touched(Question question, JsonNode tree) throws IOException {
        ObjectNode undone = (ObjectNode) tree.deepCopy();
        undone.remove("done");
        doneWords.clear();
        Answer answer = heard.answer(read(undone), true);
        Set<String> gates = new TreeSet<>();
        Set<String> methods = new TreeSet<>();
        Stream.concat(answer.rungs().stream(), answer.alternatives().stream().map(Answer.Alternative::rung)).forEach(r -> {
            methods.add(r.method());
            r.gates().forEach(g -> gates.add(g.id()));
        });
        answer.barred().forEach(b -> methods.add(b.method()));
        answer.passedOver().forEach(p -> methods.add(p.method()));
        // what bars a method for a refused gate names the gate
        answer.barred().forEach(b -> b.because().forEach(r -> r.figures().forEach(f -> KNOWN.gates().keySet().stream()
                .filter(f.value()::equals).forEach(gates::add))));
        return new Touched(isStopped(answer), surface(question), KNOWN.contaminants().get(question.contaminant().orElse("unknown_deposit")), gates,
                methods, signsNamedByRules(), doneWords);
    }

    private static Surface surface(Question question) {
        List<Surface> named = question.surface().stream().map(KNOWN.surfaces()::get).toList();
        Surface all = named.get(0);
        for (Surface one : named) {
            all = all.stricter(one);
        }
        return all;
    }

    private static Set<String> signsNamedByRules() throws IOException {
        Set<String> named = new HashSet<>();
        try (Stream<Path> files = Files.walk(Path.of("rules"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".drl")).toList()) {
                Matcher sign = Pattern.compile("observation\\.id == \"(\\w+)\"").matcher(Files.readString(file));
                while (sign.find()) {
                    named.add(sign.group(1));
                }
            }
        }
        return named;
    }
}
