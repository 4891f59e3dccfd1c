package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.AfterContainer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwise.Base;
import rungwise.answer.Advisor;
import rungwise.answer.Answer;
import rungwise.cli.Main;
import rungwise.knowledge.chemistry.Reactive;
import rungwise.knowledge.chemistry.Solvent;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Method;
import rungwise.question.Question;
import rungwise.start.Opened;

/** A shop's own products and narrower limits: they bring their own bars, and take none away. */
class OverlayTest {
    private static final Path DEMO = Path.of("demo-data/products");
    private static final Opened OPENED = Opened.from(Optional.empty(), Optional.empty(), Optional.of(DEMO));
    private static final Advisor ADVISOR = OPENED.orElseThrow();
    private static int bars;

    @TempDir
    Path folder;

    private Opened opened(String yaml) {
        try {
            Files.writeString(folder.resolve("own.yaml"), yaml);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return Opened.from(Optional.empty(), Optional.empty(), Optional.of(folder));
    }

    private static String product(String more) {
        return "products: [{id: own, name: Own, percentBy: volume, form: liquid, " + more + "}]";
    }

    /** Acrylic crazes under alcohol: aviation-acrylic-solvents. Lacquer dissolves again in it: refinish-solvent-test. */
    @Test
    void alcohol_of_70_percent_is_barred_on_acrylic_and_lacquer() {
        for (String surface : List.of("pmma_lens", "lacquer_nitro_acrylic")) {
            Answer answer = Base.ask(ADVISOR, "{contaminant: sap_conifer, age: P3D, surface: " + surface + "}");
            assertThat(answer.barred().stream().filter(b -> b.method().equals("bench_alcohol")).findFirst())
                    .as(surface).hasValueSatisfying(b -> assertThat(b.because()).isNotEmpty());
        }
    }

    /** Alcohol first for fresh resin on sound clear: howto-sap-alcohol-first. */
    @Test
    void alcohol_of_70_percent_is_offered_on_sound_clear_with_a_caution() {
        Answer answer = Base.ask(ADVISOR, "{contaminant: sap_conifer, age: P3D, surface: clear_2k_sound, setting: {panelC: 18, "
                + "sun: shade}, shelf: [bench_alcohol, cloth], shelfStrict: true}");
        Answer.Rung rung = answer.rungs().stream().filter(r -> r.method().equals("bench_alcohol")).findFirst()
                .orElseThrow(() -> new AssertionError(answer.rungs().stream().map(Answer.Rung::method).toList() + " "
                        + answer.passedOver()));
        assertThat(rung.isMissing("test_spot")).isTrue();
        assertThat(rung.risks().toString()).contains("Highly flammable").contains("safety data sheet alone");
        assertThat(rung.because().toString()).as("by what resin is made of").contains("takes aged resin in part");
    }

    /** The words are the worst end of the demo sheet; that alc_70 is what it is taken for is common practice. */
    @Test
    void a_product_stands_at_the_worst_end_of_its_sheet() {
        Agent alcohol = ADVISOR.knowledge().agents().get("bench_alcohol");
        Method method = ADVISOR.knowledge().methods().get("bench_alcohol");
        assertThat(alcohol.solvents()).containsEntry(Solvent.ALCOHOL, 70.0);
        assertThat(alcohol.family()).isEqualTo("alcohol");
        assertThat(alcohol.reactive()).contains(Reactive.FLAMMABLE);
        assertThat(method.severity()).isEqualTo(ADVISOR.knowledge().methods().get("alc_70").severity());
        Agent citrus = ADVISOR.knowledge().agents().get("peel_cleaner");
        // 45 % by weight at 0.84 g/cm3 is 49 % by volume, a quarter of it as used
        assertThat(citrus.solvents().get(Solvent.TERPENE)).isBetween(12.0, 12.7);
        assertThat(citrus.sensitisers()).contains("limonene", "d_limonene");
    }

    @Test
    void a_likeness_never_makes_a_product_milder_than_its_chemistry() {
        Opened opened = opened(product("composition: {acetone: {from: 80, to: 100}}, hazards: [H225], like: alc_15"));
        Advisor advisor = opened.orElseThrow();
        Method own = advisor.knowledge().methods().get("own");
        assertThat(own.family()).isEqualTo("ketone");
        assertThat(own.severity().chemical())
                .isGreaterThanOrEqualTo(advisor.knowledge().methods().get("acetone_spot").severity().chemical());
        assertThat(advisor.barsOn("clear_2k_sound", "own")).isNotEmpty();
    }

    /** That plain alkali of pH 13 stays off sound clear follows from its published window of pH 12. */
    @Test
    void acidity_counts_with_its_outer_end() {
        Advisor advisor = opened(product("composition: {}, acidity: {from: 9, to: 13}, hazards: [H314]")).orElseThrow();
        Agent own = advisor.knowledge().agents().get("own");
        assertThat(own.reactive()).contains(Reactive.ALKALI);
        assertThat(own.ppe()).contains("corrosive_set");
        assertThat(advisor.barsOn("pmma_lens", "own")).isNotEmpty();
    }

    @Test
    void an_unknown_kind_of_solvent_is_judged_at_its_strongest() {
        Advisor advisor = opened(product("composition: {ester: {from: 10, to: 60}}, hazards: []")).orElseThrow();
        assertThat(advisor.knowledge().agents().get("own").solvents()).containsEntry(Solvent.ESTER, 60.0);
        assertThat(advisor.barsOn("pmma_lens", "own")).isNotEmpty();
    }

    @Test
    void loosening_is_refused_with_file_place_and_remedy() {
        for (String loose : List.of("{method: alc_70, window: {from: 10, to: 40}}", "{method: alc_70, tries: 9}",
                "{method: alc_70, dwellMinutes: 60}", "{method: alc_70, window: {from: -5, to: 20}}",
                "{surface: pmma_lens, acidity: {from: 3, to: 9}}", "{surface: pmma_lens, maxC: 90}",
                "{surface: clear_2k_sound, maxPercent: {alcohol: 90}}", "{surface: pmma_lens, maxPercent: {alcohol: 10}}")) {
            Opened opened = opened("tighten: [" + loose + "]");
            assertThat(opened.advisor()).as(loose).isEmpty();
            assertThat(opened.faults()).as(loose).singleElement().satisfies(f -> {
                assertThat(f.file()).endsWith("own.yaml");
                assertThat(f.place()).startsWith("tighten ");
                assertThat(f.remedy()).contains("only narrows");
            });
        }
    }

    @Test
    void narrower_limits_hold() {
        Method narrowed = ADVISOR.knowledge().methods().get("terpene_neat");
        assertThat(narrowed.window().orElseThrow().to()).isEqualTo(20);
        assertThat(narrowed.gates()).contains("supervisor", "test_spot");
        // the same alcohol of 70 % that hard clear took before
        assertThat(Base.advisor().barsOn("clear_2k_hard", "alc_70")).isEmpty();
        assertThat(ADVISOR.barsOn("clear_2k_hard", "alc_70")).isNotEmpty();
    }

    @Test
    void unknown_ids_are_faults_that_suggest_known_ones() {
        assertThat(opened(product("composition: {ethanoll: {from: 1, to: 70}}, hazards: [H999], like: alc_71")).faults())
                .hasSize(3).anySatisfy(f -> assertThat(f.toString()).contains("ethanoll").contains("did you mean ethanol"))
                .anySatisfy(f -> assertThat(f.toString()).contains("H999"))
                .anySatisfy(f -> assertThat(f.toString()).contains("alc_71").contains("alc_70"));
        assertThat(opened("tighten: [{method: alc_71, tries: 1}]").faults()).hasSize(1);
        assertThat(opened("tighten: [{surface: pmma, maxC: 1}]").faults()).hasSize(1);
        assertThat(opened("products: [{id: own, nam: x}]").faults()).isNotEmpty();
    }

    @Test
    void what_only_a_specialist_may_handle_is_refused() {
        assertThat(opened(product("composition: {ester: {from: 10, to: 60}}, hazards: [H350]")).faults()).singleElement()
                .satisfies(f -> assertThat(f.toString()).contains("own.yaml", "H350", "specialist"));
    }

    @Test
    void sheets_that_are_no_text_may_lie_beside_the_products() throws IOException {
        Files.write(folder.resolve("sheet.pdf"), new byte[]{(byte) 0xff, (byte) 0xfe, 0, 1});
        assertThat(opened(product("composition: {ethanol: {from: 1, to: 60}}, hazards: []")).faults()).isEmpty();
    }

    /** That a terpene thinned with water is worked as terpene and not as glycol ether is common practice. */
    @Test
    void the_leading_solvent_decides_the_family() {
        assertThat(ADVISOR.knowledge().methods().get("peel_cleaner").family()).isEqualTo("terpene");
        assertThat(OPENED.products()).anySatisfy(t -> assertThat(t.nearest()).isEqualTo("terpene_neat"));
    }

    @Test
    void check_ends_with_1_and_ladder_with_2_where_the_overlay_is_at_fault() throws IOException {
        opened("tighten: [{method: alc_70, tries: 9}]");
        Path question = Files.writeString(folder.resolve("question.json"),
                "{contaminant: tar_spot, age: P12D, surface: clear_2k_sound}");
        assertThat(Main.run("check", "--overlay", folder.toString())).isEqualTo(1);
        assertThat(Main.run("ladder", question.toString(), "--overlay", folder.toString())).isEqualTo(2);
        assertThat(Main.run("ladder", question.toString(), "--overlay", DEMO.toString())).isZero();
    }

    @Test
    void check_says_what_each_product_was_taken_for() {
        StringWriter out = new StringWriter();
        var line = new picocli.CommandLine(new Main()).setOut(new PrintWriter(out));
        assertThat(line.execute("check", "--overlay", DEMO.toString())).isZero();
        assertThat(out.toString()).contains("taken for alc_70 of the family alcohol", "alcohol 70 % by volume",
                "flammable", "solvent_set", "pmma_lens: rule alcohol-not-taken");
    }

    @Test
    void the_revision_covers_the_overlay() {
        String one = opened(product("composition: {ethanol: {from: 1, to: 60}}, hazards: []")).orElseThrow().knowledge().revision();
        String other = opened(product("composition: {ethanol: {from: 1, to: 61}}, hazards: []")).orElseThrow().knowledge().revision();
        assertThat(Set.of(one, other, Base.advisor().knowledge().revision())).hasSize(3);
    }

    @Provide
    Arbitrary<Question> any() {
        return DrawnQuestions.any();
    }

    @Property(tries = 50, seed = "20260117", edgeCases = EdgeCasesMode.NONE)
    void an_overlay_never_removes_a_bar(@ForAll("any") Question question) {
        Set<String> before = barred(Base.advisor().answer(question, true));
        bars += before.size();
        assertThat(barred(ADVISOR.answer(question, true))).containsAll(before);
    }

    @AfterContainer
    static void there_were_bars_to_keep() {
        assertThat(bars).isGreaterThan(500);
    }

    private static Set<String> barred(Answer answer) {
        return answer.barred().stream().map(Answer.Barred::method).collect(Collectors.toSet());
    }
}
