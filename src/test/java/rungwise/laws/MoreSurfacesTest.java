package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.SolventColumn;
import rungwise.knowledge.common.Range;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.knowledge.surface.Trait;
import rungwise.rules.Phase;
import rungwise.rules.said.Bar;
import rungwise.rules.said.Conclusions;
import rungwise.rules.said.Gated;
import rungwise.rules.use.SolventContact;
import rungwise.rules.use.Use;

/** More surfaces never permit more: what is barred or gated on one of them is barred or gated on all together. */
class MoreSurfacesTest {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    private static final List<Surface> ALL = List.copyOf(KNOWN.surfaces().values());

    /** Bars and gates of each method, by its id. */
    private record Verdicts(Set<String> barred, Map<String, Set<String>> gates) {
    }

    private record Pair(Surface one, Surface other) {
    }

    @Test
    void every_pair_tolerates_no_more_than_either() {
        Set<String> wider = new TreeSet<>();
        pairs(ALL, ALL).forEach(pair -> {
            Surface both = pair.one().stricter(pair.other());
            for (Surface alone : List.of(pair.one(), pair.other())) {
                wider.addAll(wider(alone, both));
            }
        });
        assertThat(wider).isEmpty();
    }

    /**
     * The more a surface bears, the more it could lift of what another forbids: so each meets, of every kind, the one
     * that bears most.
     */
    @Test
    void what_one_surface_forbids_the_other_never_lifts() {
        Map<String, Verdicts> alone = new ConcurrentHashMap<>();
        ALL.parallelStream().forEach(s -> alone.put(s.id(), verdicts(s)));
        Set<String> lifted = ConcurrentHashMap.newKeySet();
        Collection<Pair> pairs = pairs(ALL, sturdiest());
        pairs.parallelStream().forEach(pair -> {
            Surface both = pair.one().stricter(pair.other());
            Verdicts here = verdicts(both);
            lifted.addAll(lifted(both.id(), alone.get(pair.one().id()), here));
            lifted.addAll(lifted(both.id(), alone.get(pair.other().id()), here));
        });
        assertThat(pairs).hasSizeGreaterThan(700);
        assertThat(new TreeSet<>(lifted)).isEmpty();
    }

    @Test
    void the_order_in_which_surfaces_are_named_changes_nothing_that_a_rule_reads() {
        pairs(ALL, ALL).forEach(pair -> assertThat(read(pair.one().stricter(pair.other())))
                .as(pair.one().id() + " and " + pair.other().id()).isEqualTo(read(pair.other().stricter(pair.one()))));
    }

    /** Bars of the day too: of film, of what was tried, of the weather. */
    @Test
    void a_second_surface_lifts_no_bar_of_the_day() {
        Map<String, Answer> alone = new TreeMap<>();
        List<String> spots = List.of("contaminant: fallout_iron, facts: {totalFilmMicrons: {min: 70, max: 78}, refinished: false, "
                        + "paintAgeDays: 4000}", "contaminant: swirl_marring, facts: {clearMicrons: 24}",
                "contaminant: tar_spot, tried: [{method: machine_cut, outcome: partly, times: 3, hoursAgo: 2}]");
        List<String> firsts = List.of("clear_2k_sound", "gelcoat", "wheel_painted_clear", "trim_gloss_black");
        List<String> seconds = List.of("glass_laminated_screen", "rubber_epdm_seal", "gelcoat", "stainless", "clear_2k_hard",
                "int_fabric_woven");
        Set<String> lifted = new TreeSet<>();
        int filmBars = 0;
        for (String spot : spots) {
            for (String first : firsts) {
                Answer before = alone.computeIfAbsent(spot + first, k -> ask(spot, first));
                filmBars += (int) before.barred().stream().filter(b -> b.because().stream()
                        .anyMatch(r -> Base.found(r).contains("µm"))).count();
                for (String second : seconds) {
                    Set<String> gone = barred(before);
                    gone.removeAll(barred(ask(spot, first + ", " + second)));
                    gone.forEach(m -> lifted.add(m + " on " + first + " beside " + second + ", " + spot));
                }
            }
        }
        assertThat(filmBars).isGreaterThan(20);
        assertThat(lifted).isEmpty();
    }

    @Test
    void film_is_counted_beside_what_has_none() {
        Surface both = surface("clear_2k_sound").stricter(surface("glass_laminated_screen"));
        assertThat(both.is(Trait.REFINABLE)).isFalse();
        assertThat(both.is(Trait.LOSES_FILM)).isTrue();
    }

    @Test
    void where_no_acidity_suits_both_nothing_that_holds_water_fits() {
        Surface paint = surface("clear_2k_sound");
        Surface both = with(paint, new Range(4, 6)).stricter(with(surface("stainless"), new Range(8, 10)));
        assertThat(KNOWN.agents().values()).filteredOn(a -> a.acidity().isPresent() && a.acidity().get().from() >= 1.5)
                .hasSizeGreaterThan(20).noneMatch(a -> both.acidity().meets(a.acidity().get()));
    }

    private static Surface with(Surface s, Range acidity) {
        return new Surface(s.id(), s.name(), s.description(), s.kind(), acidity, s.solvents(), s.maxC(), s.mechanical(), s.hardness(),
                s.maxPressureBar(), s.traits(), s.film(), s.never(), s.cautions(), s.polymers(), s.wayOut(), s.basis(), s.sources(),
                s.kinds(), s.alsoCalled(), s.tell());
    }

    private static Surface surface(String id) {
        return KNOWN.surfaces().get(id);
    }

    private static Answer ask(String spot, String surfaces) {
        return Base.ask("{" + spot + ", age: P4D, surface: [" + surfaces + "], setting: {panelC: 20, sun: shade, outdoors: true}}");
    }

    private static Set<String> barred(Answer answer) {
        return answer.barred().stream().map(Answer.Barred::method).collect(Collectors.toCollection(TreeSet::new));
    }

    /** Of each kind the surface with the fewest weaknesses. */
    private static List<Surface> sturdiest() {
        Set<Surface> sturdiest = new LinkedHashSet<>();
        for (SurfaceKind kind : SurfaceKind.values()) {
            List<Surface> ofKind = ALL.stream().filter(s -> s.kind() == kind).toList();
            ofKind.stream().min(Comparator.comparingInt(s -> s.traits().size())).ifPresent(sturdiest::add);
        }
        return List.copyOf(sturdiest);
    }

    private static Collection<Pair> pairs(List<Surface> ones, List<Surface> others) {
        Map<String, Pair> pairs = new TreeMap<>();
        for (Surface one : ones) {
            others.stream().filter(other -> !one.equals(other)).forEach(other -> pairs.putIfAbsent(
                    one.id().compareTo(other.id()) < 0 ? one.id() + other.id() : other.id() + one.id(), new Pair(one, other)));
        }
        return pairs.values();
    }

    private static Verdicts verdicts(Surface surface) {
        List<Object> facts = new ArrayList<>(List.of(KNOWN.decisions()));
        for (Method method : KNOWN.methods().values()) {
            Use use = new Use(method, KNOWN.agentOf(method), KNOWN.toolOf(method), surface);
            facts.add(use);
            for (SolventColumn column : SolventColumn.values()) {
                double percent = use.agent().percentIn(column);
                if (percent >= KNOWN.decisions().value(DecisionId.SOLVENT_COUNTS)) {
                    facts.add(new SolventContact(use, column, percent, surface.limit(column)));
                }
            }
        }
        Conclusions said = Base.advisor().rules().run(Phase.STANDING, facts);
        Set<String> barred = new TreeSet<>();
        said.of(Bar.class).forEach(b -> barred.add(b.conclusion().method()));
        Map<String, Set<String>> gates = new TreeMap<>();
        said.of(Gated.class).forEach(g -> gates.computeIfAbsent(g.conclusion().method(), m -> new TreeSet<>())
                .add(g.conclusion().gate()));
        return new Verdicts(barred, gates);
    }

    private static Set<String> lifted(String both, Verdicts alone, Verdicts here) {
        Set<String> lifted = new TreeSet<>();
        alone.barred().stream().filter(m -> !here.barred().contains(m)).forEach(m -> lifted.add("bar of " + m + " on " + both));
        alone.gates().forEach((method, gates) -> gates.stream().filter(g -> !here.barred().contains(method)
                && !here.gates().getOrDefault(method, Set.of()).contains(g))
                .forEach(g -> lifted.add("gate " + g + " of " + method + " on " + both)));
        return lifted;
    }

    private static Set<String> wider(Surface alone, Surface both) {
        Set<String> wider = new TreeSet<>();
        Set<Trait> weaknesses = EnumSet.copyOf(alone.traits().isEmpty() ? EnumSet.noneOf(Trait.class) : alone.traits());
        weaknesses.remove(Trait.REFINABLE);
        add(wider, !both.traits().containsAll(weaknesses), "traits", both);
        add(wider, both.is(Trait.REFINABLE) && !alone.is(Trait.REFINABLE), "refining", both);
        add(wider, !both.kinds().containsAll(alone.kinds()), "kinds", both);
        add(wider, both.kind() != alone.kind() && both.kinds().size() == 1, "kind", both);
        add(wider, !alone.acidity().contains(both.acidity()), "pH", both);
        add(wider, both.maxC() > alone.maxC(), "heat", both);
        add(wider, both.maxPressureBar() > alone.maxPressureBar(), "pressure", both);
        add(wider, both.hardness() > alone.hardness(), "hardness", both);
        add(wider, both.mechanical().free() > alone.mechanical().free()
                || both.mechanical().agreed() > alone.mechanical().agreed(), "touch", both);
        for (SolventColumn column : SolventColumn.values()) {
            add(wider, both.limit(column).verdict().compareTo(alone.limit(column).verdict()) < 0
                    || both.limit(column).maxPercent() > alone.limit(column).maxPercent(), column.name(), both);
        }
        add(wider, !both.polymers().containsAll(alone.polymers()), "polymers", both);
        return wider;
    }

    private static void add(Set<String> wider, boolean is, String what, Surface on) {
        if (is) {
            wider.add(what + " on " + on.id());
        }
    }

    /** What rules read, without names. */
    private static List<Object> read(Surface s) {
        return List.of(s.kind(), s.kinds(), s.acidity(), s.solvents().values().stream().map(l -> l.verdict() + " "
                + l.maxPercent()).toList(), s.maxC(), s.mechanical(), s.hardness(), s.maxPressureBar(), s.traits(),
                Set.copyOf(s.polymers()));
    }
}
