package rungwise.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import rungwise.answer.Advisor;
import rungwise.knowledge.draft.Fault;
import rungwise.lint.CheckPage;
import rungwise.lint.Lint;
import rungwise.start.Opened;

/** Looks for faults in knowledge and rules. */
@Command(name = "check", mixinStandardHelpOptions = true,
        description = {"List every fault in knowledge and rules; exit 1 if there is one.",
            "Each fault ends with the id of the check that found it; --explain tells more of it."})
final class CheckCommand implements Callable<Integer> {
    @ParentCommand
    private Main main;

    @Option(names = "--quick", description = "leave out the reference ladders, every contaminant where it is usually "
            + "met; they take about a quarter of a minute")
    private boolean quick;

    @Option(names = "--waived", description = "also list what stands with a reason in waivers.yaml, and "
            + "every chance that chemistry does not bear out")
    private boolean waived;

    @Option(names = "--explain", paramLabel = "CHECK", description = "say what a check looks for, with a wrong and a right "
            + "sample, and look at nothing")
    private String explain;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        if (explain != null) {
            out.print(CheckPage.of(explain).orElseThrow(() -> new InputProblem("there is no check \"" + explain
                    + "\"; the checks are " + String.join(", ", CheckPage.all().keySet()))).text());
            out.flush();
            return 0;
        }
        Opened opened = main.open();
        List<Fault> faults = new ArrayList<>(opened.faults());
        Optional<Lint.Report> report = quick ? Optional.empty()
                : opened.advisor().map(a -> new Lint(a, LocalDate.now()).report());
        report.ifPresent(r -> faults.addAll(r.faults()));
        faults.forEach(out::println);
        if (waived) {
            report.ifPresent(r -> r.waived().forEach(w -> out.println("Waived: " + w)));
            opened.advisor().map(Advisor::chemistry).filter(c -> !c.contradictions().isEmpty()).ifPresent(c -> {
                out.println("Stated, but not borne out by chemistry; what is stated stands:");
                c.contradictions().forEach(line -> out.println("  " + line));
            });
        }
        if (faults.isEmpty()) {
            opened.advisor().ifPresent(a -> out.println(summary(a)));
        } else {
            out.println(faults.size() + (faults.size() == 1 ? " fault." : " faults."));
        }
        report.ifPresent(r -> out.println(r.ladders() + " reference ladders, " + r.waived().size()
                + " findings waived with a reason."));
        opened.advisor().ifPresent(a -> opened.products().forEach(p -> ProductText.print(p, a, out)));
        out.flush();
        return faults.isEmpty() ? 0 : Main.FAULTS;
    }

    private static String summary(Advisor a) {
        return "No fault: " + a.knowledge().contaminants().size() + " contaminants, " + a.knowledge().surfaces().size()
                + " surfaces, " + a.knowledge().methods().size() + " methods, " + a.rules().rules().size()
                + " rules, " + a.knowledge().decisions().byId().size() + " decisions, "
                + a.knowledge().assumptions().byId().size() + " assumptions, revision " + a.knowledge().revision() + ".\n" + a.chemistry().words();
    }
}
