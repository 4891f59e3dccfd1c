package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import rungwise.Base;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.SolventColumn;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.surface.Surface;

/** Law 3 from surface to surface: where one is the other made more delicate, no limit, bar or grade is looser. */
class NarrowerSurfacesTest {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();

    /** Each surface with those that are it made more delicate. */
    private static final Map<String, List<String>> CHAINS = Map.ofEntries(
            Map.entry("clear_2k_sound", List.of("clear_2k_thin", "clear_2k_soft", "single_stage_enamel",
                    "matte_satin_clear", "clear_2k_failing", "lacquer_nitro_acrylic", "refinish_1k_aerosol",
                    "clear_2k_fresh_30", "clear_2k_fresh_90", "ceramic_coated_paint", "wax_sealed_paint",
                    "carbon_fibre_clear", "bumper_painted_flexible")),
            Map.entry("clear_2k_thin", List.of("matte_satin_clear", "clear_2k_failing", "refinish_1k_aerosol",
                    "clear_2k_fresh_30", "clear_2k_fresh_90")),
            Map.entry("clear_2k_fresh_90", List.of("clear_2k_fresh_30")),
            Map.entry("ppf_tpu_gloss", List.of("ppf_tpu_matte")),
            Map.entry("wrap_gloss", List.of("wrap_matte", "decal_pinstripe")),
            Map.entry("glass_laminated_screen", List.of("glass_tempered_side", "glass_hydrophobic_coated",
                    "glass_camera_zone", "glass_heated_rear_inside", "glass_tint_film_inside", "mirror_glass")),
            Map.entry("glass_tempered_side", List.of("glass_heated_rear_inside", "glass_tint_film_inside")),
            Map.entry("pc_lens_hardcoat", List.of("pc_lens_worn")),
            Map.entry("alu_bare_cast", List.of("alu_bare_polished")),
            Map.entry("stainless", List.of("brightwork_unknown")),
            Map.entry("alu_anodised", List.of("metal_trim_int")),
            Map.entry("wheel_painted_clear", List.of("wheel_powder", "wheel_diamond_cut", "wheel_satin_matte")),
            Map.entry("brake_assembly_iron", List.of("carbon_ceramic_brake")),
            Map.entry("sensor_radar_cover", List.of("sensor_camera_lens", "sensor_lidar_window")),
            Map.entry("sensor_camera_lens", List.of("sensor_lidar_window")),
            Map.entry("hard_plastic_int", List.of("soft_touch_coating")),
            Map.entry("carpet", List.of("int_fabric_woven", "seat_belt_webbing", "headliner", "int_microsuede")),
            Map.entry("int_fabric_woven", List.of("int_microsuede")),
            Map.entry("leather_coated", List.of("leather_aniline")));

    /** One deposit of each chemistry that a shop works on. */
    private static final List<String> DEPOSITS = List.copyOf(KNOWN.contaminants().values().stream()
            .filter(c -> c.holds().isEmpty()).collect(Collectors.toMap(c -> c.bond() + " " + c.nature() + " " + c.hazards(),
                    Contaminant::id, (first, again) -> first, TreeMap::new)).values());
    private static final Map<String, Answer> ANSWERS = new ConcurrentHashMap<>();

    @Test
    void no_limit_of_the_more_delicate_surface_is_wider() {
        List<String> wider = new ArrayList<>();
        CHAINS.forEach((one, others) -> others.forEach(other -> wider.addAll(wider(surface(one), surface(other)))));
        assertThat(wider).isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> no_bar_goes_and_no_grade_falls_on_the_more_delicate_surface() {
        return CHAINS.entrySet().stream().sorted(Map.Entry.comparingByKey()).flatMap(chain -> chain.getValue().stream()
                .map(other -> DynamicTest.dynamicTest(chain.getKey() + " then " + other,
                        () -> assertThat(looser(chain.getKey(), other)).isEmpty())));
    }

    @Test
    void a_pair_that_is_turned_round_is_seen() {
        assertThat(wider(surface("matte_satin_clear"), surface("clear_2k_sound"))).isNotEmpty();
        assertThat(looser("matte_satin_clear", "clear_2k_sound")).isNotEmpty();
    }

    private static Surface surface(String id) {
        return KNOWN.surfaces().get(id);
    }

    private static List<String> wider(Surface one, Surface other) {
        String pair = other.id() + " is wider than " + one.id() + " in ";
        List<String> wider = new ArrayList<>();
        if (other.acidity().from() < one.acidity().from() || other.acidity().to() > one.acidity().to()) {
            wider.add(pair + "pH");
        }
        for (SolventColumn column : SolventColumn.values()) {
            if (other.limit(column).verdict().compareTo(one.limit(column).verdict()) < 0
                    || !other.limit(column).verdict().forbids()
                    && other.limit(column).maxPercent() > one.limit(column).maxPercent()) {
                wider.add(pair + column);
            }
        }
        if (other.maxC() > one.maxC()) {
            wider.add(pair + "heat");
        }
        if (other.mechanical().free() > one.mechanical().free()
                || other.mechanical().agreed() > one.mechanical().agreed()) {
            wider.add(pair + "touch");
        }
        if (other.hardness() > one.hardness()) {
            wider.add(pair + "hardness");
        }
        if (other.maxPressureBar() > one.maxPressureBar()) {
            wider.add(pair + "pressure");
        }
        return wider;
    }

    private static Set<String> looser(String one, String other) {
        Set<String> looser = new TreeSet<>();
        DEPOSITS.forEach(deposit -> {
            Answer plain = ask(deposit, one);
            Answer delicate = ask(deposit, other);
            Set<String> gone = barred(plain);
            gone.removeAll(barred(delicate));
            gone.forEach(m -> looser.add("bar of " + m + " is gone on " + other));
            Map<String, Answer.Rung> before = plain.rungs().stream()
                    .collect(Collectors.toMap(Answer.Rung::method, r -> r));
            delicate.rungs().stream().filter(r -> before.containsKey(r.method()))
                    .filter(r -> isGentler(r, before.get(r.method())))
                    .forEach(r -> looser.add(r.method() + " is graded gentler on " + other));
        });
        return looser;
    }

    private static boolean isGentler(Answer.Rung here, Answer.Rung before) {
        return here.severity().mechanical() < before.severity().mechanical()
                || here.severity().chemical() < before.severity().chemical()
                || here.severity().thermal() < before.severity().thermal();
    }

    private static Set<String> barred(Answer answer) {
        return answer.barred().stream().map(Answer.Barred::method).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Answer ask(String contaminant, String surface) {
        return ANSWERS.computeIfAbsent("{contaminant: " + contaminant + ", age: P4D, surface: " + surface
                + ", setting: {panelC: 20, sun: shade}}", Base::ask);
    }
}
