package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.answer.Advisor;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.deposit.Nature;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.knowledge.surface.Trait;
import rungwise.rules.said.Concluded;
import rungwise.rules.said.Step;

/**
 * Law 15: preparation follows from where the spot is and what loosens it. Nothing touches the spot before what wets it, no
 * water runs where it cannot run off, and a wash is preparation or a rung, never both.
 */
class PreparationTest {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    private static final Set<String> RUNNING = Set.of("flood_rinse", "foam_neutral", "contact_wash_neutral", "strip_wash", "brush_gaps",
            "alk_pre_strong");
    private static final Set<String> TOUCHING = Set.of("contact_wash_neutral", "strip_wash", "brush_gaps", "dry_towel", "wipe_around");
    private static final List<String> IN_ORDER = List.of("flood_rinse", "foam_neutral", "contact_wash_neutral", "dry_towel");
    private static final List<String> AGES = List.of("PT1H", "P4D", "P90D");
    private static final List<String> NOWHERE_TO_RUN = List.of("engine_bay", "ev_hv_area", "sensor_radar_cover", "sensor_camera_lens",
            "hard_plastic_int", "carpet");

    private final List<Step> said = new ArrayList<>();
    private final Advisor advisor = new Advisor(KNOWN, Base.advisor().rules().heardBy(conclusions -> conclusions.of(Step.class).stream()
            .map(Concluded::conclusion).filter(s -> s.place().equals("before")).forEach(said::add)));

    @Test
    void nothing_touches_the_spot_before_what_wets_it() {
        Map<String, String> broken = new TreeMap<>();
        int asked = 0;
        int prepared = 0;
        for (Contaminant contaminant : KNOWN.contaminants().values()) {
            Set<String> surfaces = new TreeSet<>(contaminant.usualSurfaces());
            surfaces.addAll(NOWHERE_TO_RUN);
            for (String surface : surfaces) {
                for (String age : AGES) {
                    asked++;
                    said.clear();
                    Answer answer = Base.ask(advisor, "{contaminant: " + contaminant.id() + ", age: " + age + ", surface: " + surface
                            + ", setting: {panelC: 20, sun: shade, outdoors: true}}");
                    prepared += said.isEmpty() ? 0 : 1;
                    wrong(said, answer.rungs().stream().map(Answer.Rung::method).toList(), KNOWN.surfaces().get(surface), contaminant)
                            .forEach(w -> broken.putIfAbsent(w, contaminant.id() + " on " + surface + " after " + age));
                }
            }
        }
        System.out.println("law share: preparation: " + prepared + " of " + asked + " ladders");
        assertThat(broken).isEmpty();
        assertThat(prepared).isGreaterThan(asked / 2);
    }

    @Test
    void no_water_runs_on_the_inside_of_a_windscreen() {
        for (String contaminant : List.of("glass_haze_int", "nicotine_film", "water_spot_mineral", "tar_spot")) {
            Answer answer = Base.ask("{contaminant: " + contaminant + ", surface: glass_laminated_screen, facts: {place: inside}}");
            assertThat(answer.rungs()).as(contaminant).isNotEmpty();
            assertThat(answer.before()).as(contaminant).noneMatch(s -> RUNNING.contains(s.step()));
        }
    }

    /** The same deposit on the same glass outside: the fact alone makes the difference. */
    @Test
    void outside_it_is_flooded() {
        assertThat(Base.ask("{contaminant: tar_spot, surface: glass_laminated_screen, facts: {place: glass}}").before())
                .anyMatch(s -> s.step().equals("flood_rinse"));
    }

    @Test
    void the_next_step_takes_what_the_first_rung_asks_for_and_no_more() {
        Answer glue = Base.ask("{contaminant: adhesive_residue, age: P9D, surface: clear_2k_sound, facts: {totalFilmMicrons: "
                + "{min: 118, max: 126}, refinished: false}, setting: {panelC: 20, sun: shade, outdoors: true}}");
        assertThat(glue.before()).extracting(Answer.Around::step).contains("contact_wash_neutral", "dry_towel");
        assertThat(glue.next().action()).isEqualTo("prepare");
        assertThat(glue.next().text()).contains("Flood").doesNotContain("mitt").doesNotContain("towel");
    }

    @Test
    void breaks_are_seen() {
        Surface paint = KNOWN.surfaces().get("clear_2k_sound");
        Contaminant bird = KNOWN.contaminants().get("bird_dropping");
        List<String> rungs = List.of("foam_neutral", "warm_compress", "enzyme_clean");
        assertThat(wrong(List.of(step("flood_rinse", 6, List.of("warm_compress"))), rungs, paint, bird)).isEmpty();
        assertThat(wrong(List.of(step("foam_neutral", 7, List.of("enzyme_clean"))), rungs, paint, bird)).isNotEmpty();
        assertThat(wrong(List.of(step("contact_wash_neutral", 9, List.of("warm_compress"))), rungs, paint, bird)).isNotEmpty();
        assertThat(wrong(List.of(step("contact_wash_neutral", 9, List.of("enzyme_clean"))), rungs, paint, bird)).isNotEmpty();
        assertThat(wrong(List.of(step("dry_towel", 11, List.of())), rungs, paint, bird)).isNotEmpty();
        assertThat(wrong(List.of(step("flood_rinse", 12, List.of("enzyme_clean")), step("dry_towel", 11, List.of("enzyme_clean"))),
                List.of("enzyme_clean"), paint, bird)).isNotEmpty();
        assertThat(wrong(List.of(step("flood_rinse", 6, List.of("warm_compress"))), rungs, KNOWN.surfaces().get("engine_bay"), bird))
                .isNotEmpty();
    }

    private static Step step(String name, int order, List<String> rungs) {
        return new Step("before", order, name, "Over it.", "washed", rungs, List.of(), "", false, "", false);
    }

    /** What is wrong with the steps before these rungs, each kind in one sentence. */
    private static List<String> wrong(List<Step> before, List<String> rungs, Surface surface, Contaminant contaminant) {
        List<String> wrong = new ArrayList<>();
        for (Step step : before) {
            boolean aside = step.template().contains("around the spot");
            if (rungs.contains(step.name())) {
                wrong.add(step.name() + " is a rung and preparation");
            }
            if (RUNNING.contains(step.name()) && drainsNowhere(surface)) {
                wrong.add(step.name() + " where nothing drains");
            }
            if (TOUCHING.contains(step.name()) && step.rungs().isEmpty()) {
                wrong.add(step.name() + " stands before every rung");
            }
            if (TOUCHING.contains(step.name()) && step.rungs().stream().anyMatch(PreparationTest::onlyWets)) {
                wrong.add(step.name() + " touches before what only wets");
            }
            if (step.name().equals("contact_wash_neutral") && !aside && (contaminant.is(Nature.GRITTY)
                    || rungs.stream().anyMatch(PreparationTest::onlyWets) && contaminant.bond().fresh().equals("protein_acid_bio"))) {
                wrong.add("the mitt passes over what holds grit or is soaked first");
            }
        }
        List<Integer> orders = IN_ORDER.stream().flatMap(name -> before.stream().filter(s -> s.name().equals(name)).map(Step::order).distinct())
                .toList();
        if (!orders.equals(orders.stream().sorted().toList())) {
            wrong.add("out of order");
        }
        return wrong;
    }

    private static boolean drainsNowhere(Surface surface) {
        return surface.is(Trait.NO_RUNNING_WATER) || surface.is(Trait.WIRING) || surface.is(Trait.HIGH_VOLTAGE)
                || surface.kind() == SurfaceKind.SENSOR;
    }

    private static boolean onlyWets(String rung) {
        Method method = KNOWN.methods().get(rung);
        return KNOWN.agentOf(method).isWet() && method.severity().mechanical() < 2 && method.severity().chemical() < 2
                && method.severity().thermal() < 5;
    }
}
