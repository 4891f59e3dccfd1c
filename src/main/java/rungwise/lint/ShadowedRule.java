package rungwise.lint;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import rungwise.rules.said.Concluded;
import rungwise.rules.said.Conclusion;
import rungwise.text.Texts;

/** A rule that never says anything which another rule of its phase did not say at the same time. */
final class ShadowedRule implements LadderCheck {
    @Override
    public List<Finding> findings(Probes probes) {
        Map<String, Set<String>> shadows = new TreeMap<>();
        Map<String, Integer> times = new HashMap<>();
        for (List<Concluded<? extends Conclusion>> run : probes.runs()) {
            Map<String, Set<String>> sayers = new HashMap<>();
            run.forEach(one -> Said.parts(one.conclusion()).forEach(part ->
                    sayers.computeIfAbsent(part, p -> new HashSet<>()).add(one.because().name())));
            sayers.forEach((part, rules) -> {
                Set<String> alike = new TreeSet<>();
                Said.coveredBy(part).forEach(p -> alike.addAll(sayers.getOrDefault(p, Set.of())));
                rules.forEach(rule -> {
                    times.merge(rule, 1, Integer::sum);
                    shadows.computeIfAbsent(rule, r -> new TreeSet<>(alike)).retainAll(alike);
                });
            });
        }
        List<Finding> found = new ArrayList<>();
        shadows.forEach((rule, others) -> others.stream().filter(o -> !o.equals(rule))
                // of two that always agree, one is told
                .filter(o -> !shadows.get(o).contains(rule) || rule.compareTo(o) > 0)
                .forEach(other -> found.add(Finding.of("rules", rule, other, Texts.said("lint.shadowed", "other", other, "times",
                        times.get(rule), "says", probes.rules().get(rule).says(), "otherSays", probes.rules().get(other).says()),
                        Texts.said("lint.shadowed.do")))));
        return found;
    }
}
