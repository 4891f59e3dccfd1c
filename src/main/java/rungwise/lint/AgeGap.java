package rungwise.lint;

import java.util.ArrayList;
import java.util.List;
import rungwise.answer.Answer;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.method.Chance;
import rungwise.knowledge.method.Chances;
import rungwise.knowledge.method.MethodKind;
import rungwise.text.Texts;

/** An age at which nothing is known to help, although something helps before or after. */
final class AgeGap implements LadderCheck {
    @Override
    public List<Finding> findings(Probes probes) {
        List<Finding> found = new ArrayList<>();
        for (Contaminant one : probes.asked()) {
            if (!one.isDamage() && one.holds().isEmpty()) {
                states(probes, one, found);
            }
        }
        for (Probe probe : probes.plain()) {
            boolean stopped = probe.answer().hold().isPresent() || isFirstAid(probe.answer());
            boolean otherwise = probes.plain(probe.contaminant(), probe.surface()).stream().anyMatch(Probe::hasRung);
            if (!probe.hasRung() && !stopped && otherwise) {
                found.add(Finding.of("contaminants/" + probe.contaminant().id() + ".yaml", probe.contaminant().id(),
                        probe.surface(), Texts.said("lint.age-gap", "surface", probe.surface(), "words", probe.age().words()),
                        Texts.said("lint.age-gap.do")));
            }
        }
        return found;
    }

    private static boolean isFirstAid(Answer answer) {
        return answer.next().action().equals("flush") || answer.next().action().equals("stop");
    }

    private void states(Probes probes, Contaminant one, List<Finding> found) {
        List<Chances> chances = probes.known().methods().values().stream()
                .filter(m -> m.kind() == MethodKind.REMOVE).map(one::chances).toList();
        boolean fresh = chances.stream().anyMatch(c -> c.fresh().compareTo(Chance.P) >= 0);
        boolean hardened = chances.stream().anyMatch(c -> c.hardened().compareTo(Chance.P) >= 0);
        if (!fresh || !hardened && !one.hardens().isNever()) {
            found.add(Finding.of("contaminants/" + one.id() + ".yaml", one.id(), "",
                    fresh ? Texts.said("lint.none-while-hardened") : Texts.said("lint.none-while-fresh"),
                    Texts.said("lint.no-method-possible.do")));
        }
    }
}
