package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.answer.Advisor;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.Reactive;
import rungwise.knowledge.chemistry.Solvent;
import rungwise.knowledge.common.Range;
import rungwise.knowledge.load.Mappers;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.overlay.Overlay;
import rungwise.knowledge.product.ProductFunction;
import rungwise.knowledge.product.SheetPart;
import rungwise.rules.said.Because;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A label never permits what a part of the product forbids. Drawn labels stand on drawn sheets, most of which contradict them; each
 * part is then put alone into the same work, reckoned here a second time.
 */
class ProductLawTest {
    private static final int DRAWN = 90;
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    private static final List<String> PARTS = List.of("ethanol", "isopropanol", "white_spirit", "d_limonene", "butoxyethanol", "acetone",
            "toluene", "n_butyl_acetate", "glycol_ether", "aliphatic", "water", "sodium_hydroxide", "phosphoric_acid", "oxalic_acid",
            "hydrogen_chloride", "hydrogen_fluoride", "ammonia", "sodium_hypochlorite", "hydrogen_peroxide", "ammonium_thioglycolate",
            "citric_acid", "sodium_metasilicate", "anionic_surfactant", "nonionic_surfactant", "cationic_biocide", "sodium_thioglycolate",
            "fluoride_salt", "enzymes", "silicone");
    private static final List<String> HAZARDS = List.of("H225", "H290", "H304", "H314", "H315", "H317", "H319", "H336");

    private static final Map<String, ObjectNode> SHEETS = new LinkedHashMap<>();
    private static final Map<String, Overlay.Taken> TAKEN = new TreeMap<>();
    private static KnowledgeBase laid;
    private static Map<String, Set<String>> alone;
    private static Advisor advisor;

    @BeforeAll
    static void draw() {
        Random random = new Random(20261201);
        ArrayNode products = Mappers.yaml().createArrayNode();
        for (int i = 0; i < DRAWN; i++) {
            ObjectNode sheet = sheet("drawn_" + i, random);
            if (lay(Mappers.yaml().createArrayNode().add(sheet)).base().isPresent()) {
                SHEETS.put("drawn_" + i, sheet);
                products.add(sheet);
            }
        }
        Overlay.Laid all = lay(products);
        all.products().forEach(t -> TAKEN.put(t.product(), t));
        laid = all.base().orElseThrow();
        alone = new TreeMap<>();
        KnowledgeBase withParts = partsAlone(laid);
        advisor = new Advisor(withParts, Base.advisor().rules());
    }

    private static Overlay.Laid lay(ArrayNode products) {
        ObjectNode file = Mappers.yaml().createObjectNode();
        file.set("products", products);
        return Overlay.lay(KNOWN, "drawn", Map.of("own.yaml", Mappers.yaml().writeValueAsString(file)));
    }

    private static ObjectNode sheet(String id, Random random) {
        List<String> functions = KNOWN.productWords().functions().values().stream().map(ProductFunction::name).sorted().toList();
        ObjectNode sheet = Mappers.yaml().createObjectNode().put("id", id).put("name", id).put("percentBy", "volume")
                .put("form", random.nextInt(4) == 0 ? "gel" : "liquid").put("function", functions.get(random.nextInt(functions.size())));
        ObjectNode composition = sheet.putObject("composition");
        int parts = random.nextInt(5);
        for (int i = 0; i < parts; i++) {
            double from = random.nextInt(3) == 0 ? random.nextInt(25) : random.nextInt(4);
            range(composition.putObject(PARTS.get(random.nextInt(PARTS.size()))), from, from + random.nextInt(12));
        }
        double from = 1 + random.nextInt(12);
        range(sheet.putObject("acidity"), from, Math.min(14, from + random.nextInt(3)));
        double water = List.of(0, 0, 1, 10, 100).get(random.nextInt(5));
        sheet.put("waterParts", water);
        if (water > 0 && random.nextBoolean()) {
            double told = 2 + random.nextInt(11);
            range(sheet.putObject("inUse").putObject("acidity"), told, told + 1);
        }
        ArrayNode hazards = sheet.putArray("hazards");
        HAZARDS.stream().filter(h -> random.nextInt(5) == 0).forEach(hazards::add);
        return sheet;
    }

    private static void range(ObjectNode into, double from, double to) {
        into.put("from", from).put("to", to);
    }

    /** The knowledge with each part of each product as an agent of its own, worked as the product is. */
    private static KnowledgeBase partsAlone(KnowledgeBase base) {
        Map<String, Agent> agents = new TreeMap<>(base.agents());
        Map<String, Method> methods = new TreeMap<>(base.methods());
        SHEETS.forEach((id, sheet) -> sheet.path("composition").properties().forEach(part -> {
            String name = id + "__" + part.getKey();
            double percent = part.getValue().path("to").asDouble() / (1 + sheet.path("waterParts").asDouble());
            agents.put(name, agent(name, base.agents().get(id), part.getKey(), percent));
            methods.put(name, worked(name, base.methods().get(id)));
            alone.computeIfAbsent(id, key -> new TreeSet<>()).add(name);
        }));
        return base.overlaid(base.surfaces(), methods, agents);
    }

    private static Agent agent(String id, Agent product, String part, double percent) {
        Map<Solvent, Double> solvents = new EnumMap<>(Solvent.class);
        kind(part).ifPresent(kind -> solvents.put(kind, percent));
        Set<Reactive> reactive = EnumSet.noneOf(Reactive.class);
        Stream.ofNullable(KNOWN.exposures().get(part)).forEach(e -> reactive.addAll(e.reactive()));
        Stream.ofNullable(KNOWN.productWords().parts().get(part)).map(SheetPart::reactive).forEach(reactive::addAll);
        return new Agent(id, id, product.family(), product.form(), product.acidity(), solvents, reactive, "", "", 0, Set.of(), List.of(), List.of(),
                true, Map.of(), Optional.empty(), product.basis(), List.of());
    }

    private static Optional<Solvent> kind(String part) {
        return KNOWN.substances().containsKey(part) ? KNOWN.substances().get(part).solvent()
                : Stream.of(Solvent.values()).filter(s -> s.name().toLowerCase(Locale.ROOT).equals(part)).findFirst();
    }

    private static Method worked(String id, Method m) {
        return new Method(id, id, m.kind(), m.family(), m.mechanism(), m.role(), m.works(), m.worksLess(), id, m.tool(), m.madeFor(), m.floods(),
                m.technique(), m.dwell(), m.tries(), m.window(), m.contactC(), m.pressureBar(), m.standOffCm(), m.severity(), m.marringPercent(),
                m.minutes(), m.level(), m.chances(), m.softens(), m.needsSoftener(), m.doneBy(), m.stopSigns(), m.afterwards(), m.correction(),
                m.gates(), m.waste(), m.ppe(), m.risks(), m.note(), m.basis(), m.sources(), m.alsoCalled());
    }

    private static Set<String> bars(Advisor asked, String surface, String method) {
        return asked.barsOn(surface, method).stream().map(Because::name).collect(Collectors.toCollection(TreeSet::new));
    }

    /** Bars that a part alone has and its product has not. */
    private static List<String> lost(Advisor asked) {
        List<String> lost = new ArrayList<>();
        alone.forEach((id, parts) -> KNOWN.surfaces().keySet().forEach(surface -> {
            Set<String> ofProduct = bars(asked, surface, id);
            parts.forEach(part -> bars(asked, surface, part).stream().filter(rule -> !ofProduct.contains(rule))
                    // it stands in where nothing in an agent bars it by itself
                    .filter(rule -> ofProduct.isEmpty() || !rule.equals("known-as-never-used"))
                    .forEach(rule -> lost.add(part + " on " + surface + ": " + rule)));
        }));
        return lost;
    }

    @Test
    void what_a_part_forbids_no_label_permits() {
        long held = alone.values().stream().flatMap(Set::stream).filter(part -> KNOWN.surfaces().keySet().stream()
                .anyMatch(surface -> !advisor.barsOn(surface, part).isEmpty())).count();
        System.out.println("products drawn: " + SHEETS.size() + ", parts that are barred somewhere: " + held);
        assertThat(SHEETS.size()).isGreaterThan(60);
        assertThat(held).isGreaterThan(80);
        assertThat(lost(advisor)).isEmpty();
    }

    /** A kept break: labels that are believed against their sheets. */
    @Test
    void a_label_that_is_believed_against_its_solvents_is_found() {
        Map<String, Agent> believed = new TreeMap<>(advisor.knowledge().agents());
        SHEETS.keySet().forEach(id -> believed.computeIfPresent(id, (key, a) -> new Agent(a.id(), a.name(), a.family(), a.form(), a.acidity(),
                Map.of(), a.reactive(), a.dilution(), a.mix(), a.residueRinse(), a.sensitisers(), a.ppe(), a.risks(), a.alwaysAtHand(), Map.of(),
                a.layer(), a.dissolved(), a.basis(), a.sources())));
        KnowledgeBase broken = advisor.knowledge().overlaid(advisor.knowledge().surfaces(), advisor.knowledge().methods(), believed);
        assertThat(lost(new Advisor(broken, Base.advisor().rules()))).isNotEmpty();
    }

    @Test
    void what_is_never_used_is_permitted_under_no_label() {
        long[] never = {0};
        SHEETS.keySet().forEach(id -> {
            Agent agent = laid.agents().get(id);
            boolean barred = agent.holds(Reactive.FLUORIDE) || agent.holds(Reactive.AMMONIA) || agent.holds(Reactive.FINISH_STRIPPER)
                    || agent.dissolved().containsKey("hydrogen_chloride")
                    || agent.acidity().filter(r -> r.to() > 12.5 || r.from() < 1.5).isPresent();
            boolean known = laid.methods().get(id).family().equals("barred_chemistry");
            if (barred || known) {
                never[0]++;
                KNOWN.surfaces().keySet().forEach(surface -> assertThat(advisor.barsOn(surface, id)).as(id + " on " + surface).isNotEmpty());
            }
            if (barred) {
                assertThat(known).as(id).isTrue();
                assertThat(TAKEN.get(id).asks()).as(id).anyMatch(doubt -> !doubt.isOnlyUntold());
            }
        });
        assertThat(never[0]).isGreaterThan(15);
    }

    /** A tenfold of water moves a pH by one at most; the margin is what tap water may take of a weak solution. */
    @Test
    void no_label_thins_a_product_further_than_its_water() {
        int thinned = 0;
        for (Map.Entry<String, ObjectNode> drawn : SHEETS.entrySet()) {
            ObjectNode sheet = drawn.getValue();
            Range used = laid.agents().get(drawn.getKey()).acidity().orElseThrow();
            double sold = sheet.at("/acidity/to").asDouble();
            double soldAcid = sheet.at("/acidity/from").asDouble();
            double water = Math.log10(1 + sheet.path("waterParts").asDouble());
            double margin = 1.05;
            thinned += water > 0 ? 1 : 0;
            if (sold - water - margin > 7) {
                assertThat(used.to()).as(drawn.getKey()).isGreaterThanOrEqualTo(sold - water - margin);
            }
            if (soldAcid + water + margin < 7) {
                assertThat(used.from()).as(drawn.getKey()).isLessThanOrEqualTo(soldAcid + water + margin);
            }
        }
        assertThat(thinned).isGreaterThan(20);
    }

    /** What it is taken for lends its grades, gates and protection; a contested label has the sheet read first. */
    @Test
    void a_product_is_never_gentler_than_what_it_is_taken_for() {
        TAKEN.values().forEach(taken -> {
            Method own = laid.methods().get(taken.product());
            Method like = laid.methods().get(taken.nearest());
            assertThat(own.severity().chemical()).as(taken.product()).isGreaterThanOrEqualTo(like.severity().chemical());
            assertThat(own.gates()).as(taken.product()).containsAll(like.gates()).contains("test_spot");
            assertThat(laid.agents().get(taken.product()).ppe()).containsAll(laid.agentOf(like).ppe());
            if (taken.asks().stream().anyMatch(doubt -> !doubt.isOnlyUntold())) {
                assertThat(own.gates()).as(taken.product()).contains("read_sds");
            }
        });
        assertThat(TAKEN.values().stream().filter(t -> t.asks().isEmpty())).as("labels that are borne out").isNotEmpty();
    }
}
