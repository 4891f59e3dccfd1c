package rungwise.lint;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import rungwise.answer.Advisor;
import rungwise.knowledge.Waiver;
import rungwise.knowledge.check.LoadingChecks;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.draft.Fault;
import rungwise.text.Texts;

/** Asks the engine for reference ladders and tells what is wrong with them, less what is waived with a reason. */
public final class Lint {
    /** A waiver that waives nothing, or no longer. */
    static final String IDLE_WAIVER = "idle-waiver";

    private final Advisor advisor;
    private final LocalDate today;

    public Lint(Advisor advisor, LocalDate today) {
        this.advisor = advisor;
        this.today = today;
    }

    /** A finding that stands, and why. */
    public record Waived(Fault fault, String reason) {
        @Override
        public String toString() {
            return Texts.said("lint.waived", "file", fault.file(), "place", fault.place(), "check", fault.check(), "reason", reason);
        }
    }

    /**
     * What was found.
     *
     * @param ladders reference ladders asked for
     */
    public record Report(List<Fault> faults, List<Waived> waived, int ladders) {
    }

    /** Ids of every check there is, those made on loading among them. */
    public static Stream<String> checks() {
        return Stream.of(LoadingChecks.ids(), LadderCheck.ALL.stream().map(LadderCheck::id), Stream.of(IDLE_WAIVER))
                .flatMap(s -> s);
    }

    public Report report() {
        return report(c -> true, c -> true);
    }

    /** Some checks and ladders of some contaminants alone. */
    Report report(Predicate<LadderCheck> checks, Predicate<Contaminant> which) {
        Probes probes = Probes.of(advisor, which);
        List<Finding> found = new ArrayList<>();
        LadderCheck.ALL.stream().filter(checks).forEach(check -> check.findings(probes).forEach(f ->
                found.add(new Finding(f.entry(), f.about(), f.fault().by(check.id())))));
        return settled(found, probes.plain().size());
    }

    private Report settled(List<Finding> findings, int ladders) {
        List<Waiver> waivers = advisor.knowledge().waivers();
        List<Fault> faults = new ArrayList<>();
        List<Waived> waived = new ArrayList<>();
        Set<Waiver> busy = new HashSet<>();
        for (Finding finding : findings) {
            List<Waiver> fitting = waivers.stream().filter(w -> !w.isOver(today) && finding.isWaivedBy(w)).toList();
            busy.addAll(fitting);
            if (fitting.isEmpty()) {
                faults.add(finding.fault());
            } else {
                waived.add(new Waived(finding.fault(), fitting.get(0).reason()));
            }
        }
        waivers.stream().filter(w -> !busy.contains(w)).forEach(w -> faults.add(idle(w)));
        return new Report(faults, waived, ladders);
    }

    private Fault idle(Waiver waiver) {
        String wrong = waiver.isOver(today) ? Texts.said("lint.over", "until", waiver.until().orElseThrow())
                : LadderCheck.ALL.stream().noneMatch(i -> i.id().equals(waiver.check()))
                ? Texts.said("lint.never-waived", "check", waiver.check()) : Texts.said("lint.idle");
        return new Fault("waivers.yaml", waiver.check() + " " + waiver.about()
                .map(a -> Texts.said("lint.entry-with", "entry", waiver.entry(), "about", a)).orElse(waiver.entry()), wrong,
                        Texts.said("lint.idle.do")).by(IDLE_WAIVER);
    }
}
