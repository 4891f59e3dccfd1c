package rungwise.laws;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import rungwise.Base;
import rungwise.knowledge.method.Gate;

/**
 * What the array crosses, each dimension with its values. The first value is the plain one, which a failing question is
 * reduced to. Values are written as a question writes them, but for those that stand for a field as a whole; an empty one
 * leaves the field out.
 */
final class Dimensions {
    static final String HARM = "harm";
    /** Worse than the shut garage that an untold bay counts as. */
    static final String BOX = "indoors: {volumeM3: 30, airChangesPerHour: 0}";
    /** A spread by chemistry: each way to hold, fresh and hardened, and the natures that rules look at. */
    private static final List<String> CONTAMINANTS = List.of("tar_spot", "water_spot_mineral", "bird_dropping",
            "fallout_iron", "overspray_2k", "overspray_waterborne", "sap_conifer", "adhesive_residue", "road_film",
            "lichen", "chewing_gum", "marker_permanent", "rust_runoff", "water_spot_etched", "volcanic_ash",
            "coffee_tea", "blood", "extinguisher_powder", "grease_food", "mould_int", "cyanoacrylate", "lime_drip",
            "urine", "graffiti_aerosol");
    /** Every kind of surface, and of paint, film, metal and plastic those that differ most in what they bear. */
    private static final List<String> SURFACES = List.of("clear_2k_sound", "clear_2k_thin", "clear_2k_failing",
            "clear_2k_fresh_30", "ceramic_coated_paint", "lacquer_nitro_acrylic", "single_stage_enamel",
            "matte_satin_clear", "bumper_painted_flexible", "ppf_tpu_gloss", "wrap_matte", "glass_laminated_screen",
            "glass_tint_film_inside", "pc_lens_hardcoat", "alu_bare_polished", "alu_anodised", "chrome_plate_metal",
            "brake_assembly_iron", "wheel_painted_clear", "rubber_epdm_seal", "trim_pp_tpo_textured", "softtop_fabric",
            "carpet", "leather_aniline", "display_screen", "sensor_radar_cover", "gelcoat", "wood_veneer_lacquered",
            "seat_belt_webbing", "engine_bay");
    /** The facts that may be left out, with the gate that asks for each. */
    private static final Map<String, String> ASKS = asks();
    private static final Map<String, List<String>> ALL = all();
    /** Where a fact that may be left out bars something, whatever the rest of the row. */
    private static final Map<String, Map<String, String>> TELLING = Map.of(
            "bay", spot("tar_spot", Map.of("extent", "{spots: 400}")),
            "paint age", spot("tar_spot", Map.of()),
            "refinish", spot("adhesive_residue", Map.of()),
            "total film", spot("overspray_2k", Map.of()),
            "clear", spot("overspray_2k", Map.of("total film", "totalFilmMicrons: {min: 110, max: 120}")));
    private static final Map<String, List<String>> MUTING = Map.of("tried", List.of(HARM), "panel", List.of("panelC: 52",
            "panelC: 4"), "sun", List.of("sun: direct"), "consent", List.of("refused"), "shelf", ALL.get("shelf").subList(1, 2),
            "paint age", List.of("paintAgeDays: 60", "paintAgeDays: 12"));

    private Dimensions() {
    }

    private static Map<String, String> asks() {
        Map<String, String> asks = new LinkedHashMap<>();
        asks.put("panel", "ask_panel");
        asks.put("sun", "ask_sun");
        asks.put("bay", "ask_bay");
        asks.put("paint age", "ask_paint_age");
        asks.put("refinish", "ask_refinish");
        asks.put("total film", "ask_film");
        asks.put("clear", "ask_clear");
        return asks;
    }

    private static Map<String, String> spot(String contaminant, Map<String, String> more) {
        Map<String, String> spot = new TreeMap<>(more);
        spot.put("contaminant", contaminant);
        spot.put("surface", "clear_2k_sound");
        return spot;
    }

    /** The row on a spot where the fact may bar something. */
    static Map<String, String> telling(String fact, Map<String, String> row) {
        Map<String, String> other = new LinkedHashMap<>(row);
        other.putAll(TELLING.getOrDefault(fact, Map.of()));
        return other;
    }

    private static Map<String, List<String>> all() {
        Map<String, List<String>> all = new LinkedHashMap<>();
        all.put("contaminant", CONTAMINANTS);
        all.put("surface", SURFACES);
        all.put("age", List.of("P12D", "PT2H", "P400D", "unknown"));
        all.put("total film", List.of("", "totalFilmMicrons: {min: 110, max: 120}", "totalFilmMicrons: {min: 84, max: 95}",
                "totalFilmMicrons: {min: 70, max: 78}"));
        all.put("clear", List.of("", "clearMicrons: 42", "clearMicrons: 24"));
        all.put("paint age", List.of("", "paintAgeDays: 2900", "paintAgeDays: 60", "paintAgeDays: 12"));
        all.put("refinish", List.of("", "refinished: false", "refinished: true"));
        all.put("panel", List.of("panelC: 20", "panelC: 30", "panelC: 52", "panelC: 4", ""));
        all.put("sun", List.of("sun: shade", "sun: direct", ""));
        all.put("bay", List.of("outdoors: true", "indoors: {volumeM3: 180, airChangesPerHour: 8}",
                "indoors: {volumeM3: 60, airChangesPerHour: 0.5}", BOX, ""));
        all.put("water", List.of("", "water: {hardnessMgL: 40}", "water: {hardnessMgL: 320, alkalinityMgL: 250}"));
        all.put("left out", List.copyOf(ASKS.keySet()));
        all.put("consent", List.of("", "granted", "refused"));
        all.put("shelf", List.of("", "[alc_gel, aliph_tar, iron_neutral, acid_mild, alk_pre_mild, clay_fine, neutral_shampoo]"));
        all.put("tried", List.of("", "no-change", "partly", "two grades", "unprepared", HARM));
        all.put("neighbour", List.of("", "rubber_epdm_seal", "pmma_lens", "alu_bare_polished", "matte_satin_clear",
                "wrap_gloss", "display_screen"));
        all.put("circumstance", List.of("", "battery_smoke", "base_colour_visible", "sharps_seen"));
        all.put("workers", List.of("", "[{level: L1}]", "[{level: L4}]", "[{level: L2, sensitisedTo: [iron_neutral, "
                + "alc_gel, acid_mild]}]"));
        all.put("done", List.of("", "[washed, dried]", "[masked, cooled]"));
        all.put("extent", List.of("", "{spots: 20, diameterMm: 4}", "{areaM2: 1.2}", "{spots: 400}"));
        all.put("stricter", List.of("matte_satin_clear", "lacquer_nitro_acrylic"));
        return all;
    }

    /** The gates that may ask for a fact: what the sun does to a panel that nobody measured, the measured panel tells. */
    static Set<String> asks(String fact, Map<String, String> row) {
        return fact.equals("sun") && row.get("panel").isEmpty() ? Set.of("ask_sun", "ask_panel") : Set.of(ASKS.get(fact));
    }

    static List<String> names() {
        return List.copyOf(ALL.keySet());
    }

    static List<String> values(String dimension) {
        return ALL.get(dimension);
    }

    static int[] sizes() {
        return ALL.values().stream().mapToInt(List::size).toArray();
    }

    /** Spots that put nothing to the test, but for those of a contaminant or surface that has no other. */
    static Set<Pairs.Pair> mute(Predicate<Map<String, String>> tells) {
        List<Map<String, String>> telling = CONTAMINANTS.parallelStream().flatMap(c -> SURFACES.stream()
                .map(s -> but(but(plain(), "contaminant", c), "surface", s))).filter(tells).toList();
        Set<String> contaminants = told(telling, "contaminant");
        Set<String> surfaces = told(telling, "surface");
        Set<Pairs.Pair> mute = new HashSet<>();
        contaminants.forEach(c -> surfaces.forEach(s -> mute.add(spot(c, s))));
        telling.forEach(t -> mute.remove(spot(t.get("contaminant"), t.get("surface"))));
        return mute;
    }

    private static Set<String> told(List<Map<String, String>> rows, String dimension) {
        return rows.stream().map(r -> r.get(dimension)).collect(Collectors.toSet());
    }

    private static Pairs.Pair spot(String contaminant, String surface) {
        return Pairs.Pair.of(value("contaminant", contaminant), value("surface", surface));
    }

    /** What leaves no rung to look at, or few: a hold, harm, weather to wait for, a refusal, a bare shelf, wet paint. */
    static Set<Pairs.Value> muting() {
        Set<Pairs.Value> muting = new HashSet<>();
        ALL.get("circumstance").stream().filter(c -> !c.isEmpty()).forEach(c -> muting.add(value("circumstance", c)));
        MUTING.forEach((dimension, values) -> values.forEach(v -> muting.add(value(dimension, v))));
        return muting;
    }

    private static Pairs.Value value(String dimension, String value) {
        return new Pairs.Value(names().indexOf(dimension), ALL.get(dimension).indexOf(value));
    }

    /** Every dimension at its plain value. */
    static Map<String, String> plain() {
        return row(new int[ALL.size()]);
    }

    /** The row's values by the name of their dimension. */
    static Map<String, String> row(int[] numbers) {
        Map<String, String> row = new LinkedHashMap<>();
        for (int d = 0; d < numbers.length; d++) {
            row.put(names().get(d), ALL.get(names().get(d)).get(numbers[d]));
        }
        return row;
    }

    static Map<String, String> but(Map<String, String> row, String dimension, String value) {
        Map<String, String> other = new LinkedHashMap<>(row);
        other.put(dimension, value);
        return other;
    }

    /**
     * The question of a row, as it would be written.
     *
     * @param tried its tries, as they depend on the ladder; empty for none
     */
    static String question(Map<String, String> row, String tried) {
        Map<String, String> q = new TreeMap<>();
        q.put("contaminant", row.get("contaminant"));
        q.put("surface", row.get("surface"));
        q.put("age", row.get("age"));
        q.put("facts", "{" + joined(row, "total film", "clear", "paint age", "refinish") + "}");
        q.put("setting", "{airC: 22, " + joined(row, "panel", "sun", "bay", "water") + "}");
        put(q, "shelf", row.get("shelf"));
        put(q, "workers", row.get("workers"));
        put(q, "done", row.get("done"));
        put(q, "extent", row.get("extent"));
        put(q, "neighbours", row.get("neighbour").isEmpty() ? "" : "[" + row.get("neighbour") + "]");
        put(q, "circumstances", row.get("circumstance").isEmpty() ? "" : "[" + row.get("circumstance") + "]");
        put(q, "consent", row.get("consent").isEmpty() ? "" : "{" + row.get("consent") + ": " + gates(row.get("consent").equals("granted")) + "}");
        put(q, "tried", tried);
        return "{" + q.entrySet().stream().map(e -> e.getKey() + ": " + e.getValue()).collect(Collectors.joining(", ")) + "}";
    }

    /** What can be refused is every gate; what can be granted is what somebody agrees to. */
    private static List<String> gates(boolean granted) {
        return Base.advisor().knowledge().gates().values().stream().filter(g -> !granted || g.needsAgreement()).map(Gate::id).toList();
    }

    private static String joined(Map<String, String> told, String... names) {
        List<String> parts = new ArrayList<>();
        for (String name : names) {
            if (!told.get(name).isEmpty()) {
                parts.add(told.get(name));
            }
        }
        return String.join(", ", parts);
    }

    private static void put(Map<String, String> q, String field, String value) {
        if (!value.isEmpty()) {
            q.put(field, value);
        }
    }
}
