package rungwise.lint;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rungwise.answer.Answer;
import rungwise.rules.said.Clash;
import rungwise.rules.said.Concluded;
import rungwise.rules.said.Conclusion;
import rungwise.rules.said.Reason;
import rungwise.text.Texts;

/** Two that must not meet, and nothing between them. */
final class UnbridgedClash implements LadderCheck {
    @Override
    public List<Finding> findings(Probes probes) {
        Map<String, Finding> found = new TreeMap<>();
        for (List<Concluded<? extends Conclusion>> run : probes.runs()) {
            for (Concluded<? extends Conclusion> one : run) {
                if (one.conclusion() instanceof Clash clash) {
                    look(probes, one.because().reason(), clash, found);
                }
            }
        }
        for (Probe probe : probes.plain()) {
            for (Answer.Rung rung : probe.rungs().toList()) {
                rung.bridgeBefore().stream().filter(b -> b.steps().isEmpty() && b.waitMinutes() <= 0)
                        .forEach(b -> found.putIfAbsent(b.because().get(0).id() + rung.method() + probe.surface(),
                                Finding.of(b.because().get(0).reason(), probe.surface(), Texts.said("lint.bridge-barred", "after",
                                        b.after(), "method", rung.method(), "surface", probe.surface()), Texts.said("lint.bridge-barred.do"))));
            }
        }
        return new ArrayList<>(found.values());
    }

    private static void look(Probes probes, Reason rule, Clash clash, Map<String, Finding> found) {
        String pair = Texts.said("lint.pair", "first", clash.first(), "then", clash.then());
        if (!clash.visit() && clash.bridge().isEmpty() && clash.waitMinutes() <= 0) {
            found.putIfAbsent(rule.id(), Finding.of(rule, clash.first(), Texts.said("lint.no-bridge", "pair", pair),
                    Texts.said("lint.no-bridge.do")));
        }
        List<String> missing = clash.bridge().stream().filter(m -> !probes.known().methods().containsKey(m)).toList();
        if (!missing.isEmpty()) {
            found.putIfAbsent(rule.id(), Finding.of(rule, missing.get(0), Texts.said("lint.bridge-unknown", "pair", pair,
                    "missing", String.join(", ", missing)), Texts.said("lint.bridge-unknown.do")));
        }
    }
}
