package rungwise.lint;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import rungwise.rules.said.Because;
import rungwise.rules.said.Concluded;
import rungwise.rules.said.FlushFirst;
import rungwise.rules.said.Reason;
import rungwise.rules.said.Step;
import rungwise.text.Texts;

/** A step that one rule asks for on a surface where another bars it for good. */
final class ContradictingRules implements LadderCheck {
    /** Who asks for which method. */
    private record Demand(Reason rule, String method) implements Comparable<Demand> {
        @Override
        public int compareTo(Demand other) {
            return (rule.id() + " " + method).compareTo(other.rule.id() + " " + other.method);
        }
    }

    @Override
    public List<Finding> findings(Probes probes) {
        Map<Demand, Set<String>> surfaces = new TreeMap<>();
        Map<Demand, Set<String>> barring = new TreeMap<>();
        for (Probe probe : probes.plain()) {
            demands(probe).forEach(demand -> {
                List<Because> bars = probes.advisor().barsOn(probe.surface(), demand.method());
                if (!bars.isEmpty()) {
                    surfaces.computeIfAbsent(demand, d -> new TreeSet<>()).add(probe.surface());
                    bars.forEach(b -> barring.computeIfAbsent(demand, d -> new TreeSet<>()).add(b.name()));
                }
            });
        }
        List<Finding> found = new ArrayList<>();
        surfaces.forEach((demand, where) -> found.add(Finding.of(demand.rule(), demand.method(),
                Texts.said("lint.contradicting", "method", demand.method(), "where", String.join(", ", where), "demand",
                        String.join(", ", barring.get(demand))),
                Texts.said("lint.contradicting.do"))));
        return found;
    }

    private static Set<Demand> demands(Probe probe) {
        Set<Demand> demands = new TreeSet<>();
        for (Concluded<Step> step : probe.heard(Step.class)) {
            demands.add(new Demand(step.because().reason(), step.conclusion().name()));
        }
        for (Concluded<FlushFirst> flush : probe.heard(FlushFirst.class)) {
            demands.add(new Demand(flush.because().reason(), flush.conclusion().method()));
        }
        return demands;
    }
}
