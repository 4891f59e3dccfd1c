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
import rungwise.text.Texts;

/** Looks for faults in knowledge and rules. */
@Command(name = "check", mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
    @ParentCommand
    private Main main;

    @Option(names = "--quick")
    private boolean quick;

    @Option(names = "--waived")
    private boolean waived;

    @Option(names = "--explain", paramLabel = "CHECK")
    private String explain;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        if (explain != null) {
            out.print(CheckPage.of(explain).orElseThrow(() -> new InputProblem(Texts.said("check.none", "check", explain, "checks",
                    String.join(", ", CheckPage.all().keySet())))).text());
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
            report.ifPresent(r -> r.waived().forEach(w -> out.println(Texts.said("check.waived", "finding", w))));
            opened.advisor().map(Advisor::chemistry).filter(c -> !c.contradictions().isEmpty()).ifPresent(c -> {
                out.println(Texts.said("check.not-borne-out"));
                c.contradictions().forEach(line -> out.println("  " + line));
            });
        }
        if (faults.isEmpty()) {
            opened.advisor().ifPresent(a -> out.println(summary(a) + "\n" + a.chemistry().words()));
        } else {
            out.println(Texts.said(faults.size() == 1 ? "check.one-fault" : "check.faults", "many", faults.size()));
        }
        report.ifPresent(r -> out.println(Texts.said("check.ladders", "ladders", r.ladders(), "waived", r.waived().size())));
        opened.advisor().ifPresent(a -> opened.products().forEach(p -> ProductText.print(p, a, out)));
        out.flush();
        return faults.isEmpty() ? 0 : Main.FAULTS;
    }

    private static String summary(Advisor a) {
        return Texts.said("check.no-fault", "contaminants", a.knowledge().contaminants().size(), "surfaces",
                a.knowledge().surfaces().size(), "methods", a.knowledge().methods().size(), "rules", a.rules().rules().size(),
                "decisions", a.knowledge().decisions().byId().size(), "assumptions", a.knowledge().assumptions().byId().size(),
                "revision", a.knowledge().revision());
    }
}
