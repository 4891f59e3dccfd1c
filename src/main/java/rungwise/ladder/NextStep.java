package rungwise.ladder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.method.Gate;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.surface.Trait;
import rungwise.rules.Phase;
import rungwise.rules.fact.Attempt;
import rungwise.rules.fact.Deposit;
import rungwise.rules.fact.Treated;
import rungwise.rules.said.Bar;
import rungwise.rules.said.Clash;
import rungwise.rules.said.Cleared;
import rungwise.rules.said.Concluded;
import rungwise.rules.said.Conclusions;
import rungwise.rules.said.FlushFirst;
import rungwise.rules.said.Gated;
import rungwise.rules.said.Halt;
import rungwise.rules.said.Hold;
import rungwise.rules.said.Leavable;
import rungwise.rules.said.Next;
import rungwise.rules.use.Ahead;
import rungwise.rules.use.Left;
import rungwise.rules.use.Waiting;

/**
 * The one thing to do now: the rules conclude what could be done, the most urgent of it counts.
 *
 * @param gates   of the first rung, still missing and for the worker to do now
 * @param bridges due before the first rung, for what was brought to the spot in this visit
 * @param wayOut  method of who takes over, or of leaving it
 * @param leavable whether what is left may stay before anybody takes over
 */
public record NextStep(Concluded<Next> said, List<Concluded<Gated>> gates, List<Concluded<Clash>> bridges, Method wayOut,
                       Optional<Concluded<Leavable>> leavable) {
    /** By which the question says that what was used before is off the spot. */
    private static final String RINSED = "rinsed";

    public static NextStep of(Ladder ladder, Surroundings around) {
        KnowledgeBase base = ladder.revision().base();
        Situation situation = ladder.situation();
        Method wayOut = base.methods().get(situation.surface().is(Trait.CURING) ? "leave_monitor"
                // what holds people in a crash is replaced, whatever is on it
                : situation.asked().is(Trait.HOLDS_PEOPLE) ? situation.asked().wayOut()
                : situation.likeliest().contaminant().refersTo().orElse(situation.asked().wayOut()));
        List<Object> facts = new ArrayList<>(List.of(base.decisions()));
        situation.derived().of(Hold.class).forEach(h -> facts.add(h.conclusion()));
        situation.derived().of(FlushFirst.class).forEach(f -> facts.add(f.conclusion()));
        situation.derived().of(Halt.class).forEach(h -> facts.add(h.conclusion()));
        ladder.cleared().ifPresent(c -> facts.add(new Cleared(c.figures())));
        List<Concluded<Gated>> gates = List.of();
        List<Concluded<Clash>> bridges = List.of();
        if (!situation.isStopped()) {
            situation.facts().stream().filter(f -> f instanceof Deposit || f instanceof Treated || f instanceof Attempt)
                    .forEach(facts::add);
            waiting(ladder).forEach(facts::add);
            facts.add(new Left(ladder.rungs().size(), ladder.slow().size(), ladder.slow().isEmpty() ? "" : ladder.slow().get(0).id(),
                    ladder.failed().size(), wayOut.id()));
            if (!ladder.rungs().isEmpty()) {
                Choice first = ladder.rungs().get(0);
                gates = missingWork(ladder, first);
                bridges = due(around, ladder, first);
                facts.add(new Ahead(first.use(), ladder.mean(first), around.preparing(first).size() + gates.size() + bridges.size(),
                        isUntested(ladder, first), ladder.repeated().contains(first.id())));
            }
        }
        List<String> awaited = facts.stream().anyMatch(Waiting.class::isInstance) ? awaited(ladder) : List.of();
        Conclusions concluded = ladder.revision().book().run(Phase.NEXT, facts);
        Concluded<Next> most = concluded.of(Next.class).stream()
                .min(Comparator.comparing((Concluded<Next> n) -> n.conclusion().action())
                        .thenComparingInt(n -> awaited.indexOf(n.conclusion().method())).thenComparing(n -> n.conclusion().text())
                        .thenComparing(n -> n.conclusion().method()))
                .orElseThrow(() -> new IllegalStateException("no rule says what to do next"));
        return new NextStep(most, gates, bridges, wayOut, concluded.of(Leavable.class).stream().findFirst());
    }

    /** What only the weather keeps away, in the order of the ladder on which it would stand. */
    private static List<String> awaited(Ladder ladder) {
        List<Choice> choices = Stream.concat(ladder.order().stream(), ladder.verdicts().all().entrySet().stream()
                .filter(e -> e.getValue().waitsForWeather()).map(e -> ladder.verdicts().choice(e.getKey(), ladder.states()))).toList();
        Set<String> all = choices.stream().map(Choice::id).collect(Collectors.toSet());
        return Order.among(ladder.revision(), ladder.situation(), choices).of(choices, all).stream().map(Choice::id).toList();
    }

    /** What only the weather keeps away, and how it stands to the first rung. */
    private static List<Waiting> waiting(Ladder ladder) {
        List<Waiting> waiting = new ArrayList<>();
        double real = ladder.revision().base().decisions().value(DecisionId.REAL_CHANCE);
        ladder.verdicts().all().forEach((id, verdict) -> {
            if (verdict.waitsForWeather()) {
                Choice choice = ladder.verdicts().choice(id, ladder.states());
                boolean gentler = !ladder.rungs().isEmpty() && ladder.mean(ladder.rungs().get(0)) >= real
                        && ladder.rungs().get(0).own().compareTo(choice.own()) < 0;
                waiting.add(new Waiting(choice.use(), ladder.mean(choice), choice.severity().filmMicrons(), choice.dwellMinutes(),
                        verdict.bars().stream().map(Concluded::conclusion).map(Bar::opensWith).distinct().sorted()
                                .collect(Collectors.joining(" and ")), gentler, ladder.situation().question().hasTried(id)));
            }
        });
        return waiting;
    }

    private static List<Concluded<Gated>> missingWork(Ladder ladder, Choice rung) {
        List<Concluded<Gated>> missing = new ArrayList<>();
        for (Concluded<Gated> gated : rung.verdict().gates()) {
            Gate gate = ladder.revision().base().gates().get(gated.conclusion().gate());
            if (!ladder.verdicts().gates().isOpen(gate, rung.method()) && ladder.verdicts().gates().isWork(gate)
                    && missing.stream().noneMatch(m -> m.conclusion().gate().equals(gate.id()))) {
                missing.add(gated);
            }
        }
        return missing;
    }

    private static boolean isUntested(Ladder ladder, Choice rung) {
        return rung.verdict().gates().stream().map(g -> ladder.revision().base().gates().get(g.conclusion().gate()))
                .anyMatch(g -> g.opens().testPassed() && !ladder.verdicts().gates().isOpen(g, rung.method()));
    }

    private static List<Concluded<Clash>> due(Surroundings around, Ladder ladder, Choice rung) {
        if (ladder.situation().question().done().contains(RINSED)) {
            return List.of();
        }
        return around.tried().stream().flatMap(agent -> around.clashes(agent, rung).stream()).distinct().toList();
    }

    public Optional<String> method() {
        return Optional.of(said.conclusion().method()).filter(m -> !m.isEmpty());
    }
}
