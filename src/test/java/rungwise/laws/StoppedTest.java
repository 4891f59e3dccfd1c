package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.question.Question;

/**
 * Law 16: beside a hold, a stop or a flush no other step is named. Whoever reads "everybody out" and two lines further "move
 * it into the shade" does the second.
 */
class StoppedTest {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    /** Paint, glass, cloth, engine, and deposits that hold, flush or do neither. */
    private static final List<String> SPOTS = List.of("tar_spot clear_2k_sound", "coffee_tea int_fabric_woven", "oil_grease engine_bay");
    private static final List<String> SUNS = List.of("", ", sun: shade", ", sun: direct");
    private static final List<String> HEATS = List.of(", panelC: 20", ", panelC: 48");
    private static final Breaks STEPS = new Breaks("16 no step beside a stop");
    private static final Breaks PLACES = new Breaks("16 no method has a place beside a stop");
    private static final Set<String> STOPS = new TreeSet<>();
    private static final Set<String> HELD = new TreeSet<>();

    @BeforeAll
    static void look() {
        // every circumstance, in any sun and heat
        for (String circumstance : KNOWN.circumstances().keySet()) {
            SPOTS.forEach(spot -> weathers(spot, "circumstances: [" + circumstance + "]").forEach(q -> {
                Placed answer = Placed.plain(q);
                if (answer.isStopped()) {
                    HELD.add(circumstance);
                }
                look(answer);
            }));
        }
        // every deposit that nobody may work on, and every one of which minutes count
        KNOWN.contaminants().values().stream().filter(c -> c.holds().isPresent() || c.emergency().isPresent()).forEach(c ->
                c.usualSurfaces().forEach(s -> weathers(c.id() + " " + s, "").forEach(q -> look(Placed.plain(q)))));
        // after harm, and with a sign that says stop
        List<String> stopSigns = KNOWN.observations().values().stream().filter(o -> o.stops().isPresent()).map(o -> o.id()).toList();
        SPOTS.forEach(spot -> {
            weathers(spot, "tried: [{method: damp_microfibre, outcome: harm, hoursAgo: 1}]").forEach(q -> look(Placed.plain(q)));
            stopSigns.forEach(sign -> look(Placed.plain(weathers(spot, "observations: [" + sign + "]").get(5))));
        });
        // where it is only believed
        for (Contaminant c : KNOWN.contaminants().values()) {
            if (c.holds().isPresent() || c.emergency().isPresent()) {
                weathers("tar_spot clear_2k_sound", "").stream().skip(4).forEach(q ->
                        look(Placed.over(Map.of("tar_spot", 0.7, c.id(), 0.3), q)));
            }
        }
    }

    private static List<Question> weathers(String spot, String more) {
        String[] on = spot.split(" ");
        List<Question> all = new ArrayList<>();
        SUNS.forEach(sun -> HEATS.forEach(heat -> all.add(new Made(UsualSpots.of(on[0], on[1], "PT10M", more)).setting(
                UsualSpots.setting("{airC: 30" + sun + heat + "}")).made())));
        return all;
    }

    private static void look(Placed answer) {
        answer.stop().ifPresent(STOPS::add);
        STEPS.look(answer, answer.isStopped(), steps(answer));
        PLACES.look(answer, answer.isStopped(), places(answer));
    }

    /** What somebody could do instead of what the stop says. */
    static List<String> steps(Placed answer) {
        if (!answer.isStopped()) {
            return List.of();
        }
        List<String> wrong = new ArrayList<>();
        answer.before().forEach(s -> wrong.add(answer.next().action() + " beside before: " + s.name()));
        answer.after().forEach(s -> wrong.add(answer.next().action() + " beside after: " + s.name()));
        answer.offered().forEach(r -> wrong.add(answer.next().action() + " beside " + r.method()));
        // a flush is itself a step; a hold and a stop have none
        answer.next().method().filter(m -> !answer.next().action().equals("flush"))
                .ifPresent(m -> wrong.add(answer.next().action() + " with " + m));
        answer.next().steps().stream().filter(s -> answer.next().method().filter(s::equals).isEmpty())
                .forEach(s -> wrong.add(answer.next().action() + " with step " + s));
        return wrong;
    }

    /** Lists of methods that have no business in an answer that stops. */
    private static List<String> places(Placed answer) {
        List<String> wrong = new ArrayList<>();
        if (answer.isStopped() && !answer.places().isEmpty()) {
            wrong.add("a " + answer.next().action() + " with methods placed");
        }
        answer.said().stream().map(Placed.Said::what).filter(w -> answer.isStopped() && (w.startsWith("advice") || w.startsWith("neighbour")))
                .forEach(w -> wrong.add(answer.next().action() + " with " + w));
        return wrong;
    }

    @Test
    void beside_a_hold_a_stop_or_a_flush_no_step_is_named() {
        STEPS.none();
        assertThat(STEPS.percent()).isGreaterThanOrEqualTo(30);
    }

    @Test
    void in_an_answer_that_stops_no_method_has_a_place() {
        PLACES.none();
    }

    /** An answer that never stops would keep this law too. */
    @Test
    void every_circumstance_and_every_kind_of_stop_was_met() {
        assertThat(STOPS).containsExactlyInAnyOrder("hold", "flush", "stop");
        assertThat(HELD).isEqualTo(new TreeSet<>(KNOWN.circumstances().keySet()));
    }

    @Test
    void a_stop_says_why_it_stops() {
        Placed smoke = Placed.named(UsualSpots.of("tar_spot", "clear_2k_sound", "P2D", "circumstances: [battery_smoke]"));
        assertThat(smoke.said()).anyMatch(s -> s.what().equals("hold") && !s.because().isEmpty());
    }

    @Test
    void a_step_beside_a_hold_is_seen() {
        Placed cool = Placed.named(UsualSpots.of("tar_spot", "clear_2k_sound", "P2D", "circumstances: [gas_smell]"));
        assertThat(cool.isStopped()).isTrue();
        assertThat(steps(cool)).isEmpty();
        assertThat(steps(cool.preparedBy(List.of(new Placed.Step("shade", Set.of()))))).containsExactly("hold beside before: shade");
    }
}
