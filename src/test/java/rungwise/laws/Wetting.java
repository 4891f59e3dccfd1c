package rungwise.laws;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.Mechanism;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.ToolKind;
import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.surface.Trait;
import rungwise.question.Question;

/**
 * Law 15: nothing touches the spot before what wets and loosens it; no running water where nothing drains; a wash is
 * preparation or a rung, never both.
 */
final class Wetting {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    /** What is drawn, rubbed or pressed over the surface; a vacuum head and a nozzle only pass over it. */
    private static final Set<ToolKind> TOUCHES = Set.of(ToolKind.CLOTH, ToolKind.BRUSH, ToolKind.EDGE, ToolKind.POINT, ToolKind.CLAY,
            ToolKind.UNGRADED_ABRASIVE, ToolKind.POLISH, ToolKind.PAPER, ToolKind.RUBBER, ToolKind.FRICTION_WHEEL);

    private Wetting() {
    }

    /** A method that rubs or dries with a cloth; a blotter is laid on and lifted. */
    static boolean touches(String step) {
        return method(step).filter(m -> TOUCHES.contains(KNOWN.toolOf(m).kind()) && m.mechanism() != Mechanism.ABSORB
                && m.mechanism() != Mechanism.HYDRATE).isPresent();
    }

    /** Flood, foam, soak: something wet that no hand moves, or a wet cloth that lies still. What kills loosens nothing: growth is brushed wet first. */
    static boolean wetsAndLoosens(String method) {
        return method(method).filter(m -> m.mechanism() != Mechanism.KILL).filter(m -> KNOWN.agentOf(m).acidity().isPresent() || KNOWN.agentOf(m).family().equals("water"))
                .filter(m -> KNOWN.toolOf(m).kind() == ToolKind.NONE || m.mechanism() == Mechanism.HYDRATE).isPresent();
    }

    static boolean runs(String step) {
        return method(step).filter(m -> m.floods() || KNOWN.toolOf(m).kind() == ToolKind.JET).isPresent();
    }

    private static Optional<Method> method(String step) {
        return Optional.ofNullable(KNOWN.methods().get(step));
    }

    static boolean isClosedIn(Question question) {
        return question.facts().place().filter(Placed.INSIDE::equals).isPresent()
                || isAnywhere(question, Trait.NO_RUNNING_WATER) || isAnywhere(question, Trait.HIGH_VOLTAGE);
    }

    private static boolean isAnywhere(Question question, Trait trait) {
        return question.surface().stream().map(KNOWN.surfaces()::get).anyMatch(s -> s != null && s.is(trait));
    }

    /** Hands, cloths and brushes that come before the wetting rung that they belong to. */
    static List<String> touchedTooSoon(Placed answer) {
        List<String> wrong = new ArrayList<>();
        answer.rungs().stream().map(Placed.Offer::method).filter(Wetting::wetsAndLoosens).forEach(rung -> answer.before().stream()
                .filter(s -> s.isFor(rung) && touches(s.name()))
                .forEach(s -> wrong.add(s.name() + " touches it before " + rung + " has wetted it")));
        answer.next().method().filter(Wetting::wetsAndLoosens).ifPresent(rung -> answer.next().steps().stream().filter(Wetting::touches)
                .forEach(s -> wrong.add("next is " + s + ", then " + rung)));
        return wrong;
    }

    /** Floods and jets where the water has nowhere to go; over wiring a jet anywhere, and a flood that nobody chose. */
    static List<String> floods(Placed answer) {
        boolean closed = isClosedIn(answer.question());
        boolean wired = isAnywhere(answer.question(), Trait.WIRING);
        if (!closed && !wired) {
            return List.of();
        }
        Map<String, List<String>> named = new LinkedHashMap<>();
        named.put("before", answer.before().stream().map(Placed.Step::name).toList());
        named.put("after", answer.after().stream().map(Placed.Step::name).toList());
        named.put("rung", answer.rungs().stream().map(Placed.Offer::method).toList());
        named.put("alternative", answer.alternatives().stream().map(Placed.Offer::method).toList());
        named.put("if cleared", answer.offered().flatMap(r -> r.follows().stream()).distinct().toList());
        named.put("if marked", answer.offered().flatMap(r -> r.corrections().stream()).distinct().toList());
        named.put("bridge", answer.offered().flatMap(r -> r.bridges().stream()).flatMap(b -> b.steps().stream()).distinct().toList());
        named.put("next", answer.next().method().stream().collect(Collectors.toList()));
        named.put("next step", answer.next().steps());
        List<String> wrong = new ArrayList<>();
        named.forEach((place, steps) -> steps.stream().filter(Wetting::runs)
                .filter(s -> closed || wired && (place.equals("before") || isJet(s)))
                .forEach(s -> wrong.add(place + ": " + s)));
        return wrong;
    }

    private static boolean isJet(String step) {
        return method(step).filter(m -> KNOWN.toolOf(m).kind() == ToolKind.JET).isPresent();
    }

    /** What is both preparation and remover. */
    static List<String> twice(Placed answer) {
        Set<String> before = answer.before().stream().map(Placed.Step::name).collect(Collectors.toSet());
        return answer.offered().map(Placed.Offer::method).filter(before::contains).distinct().toList();
    }

    static boolean drains(Surface surface) {
        return !surface.is(Trait.NO_RUNNING_WATER) && !surface.is(Trait.HIGH_VOLTAGE);
    }
}
