package rungwise.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParentCommand;
import rungwise.ladder.Advisor;
import rungwise.ladder.Opened;

/** Looks for faults in knowledge and rules. */
@Command(name = "check", mixinStandardHelpOptions = true,
        description = "List every fault in knowledge and rules; exit 1 if there is one.")
final class CheckCommand implements Callable<Integer> {
    @ParentCommand
    private Main main;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        var out = spec.commandLine().getOut();
        Opened opened = main.open();
        opened.faults().forEach(out::println);
        opened.advisor().ifPresent(a -> out.println("No fault: " + a.knowledge().contaminants().size()
                + " contaminants, " + a.knowledge().surfaces().size() + " surfaces, "
                + a.knowledge().methods().size() + " methods, " + a.rules().rules().size() + " rules, revision "
                + a.knowledge().revision() + "."));
        opened.advisor().map(Advisor::chemistry).ifPresent(c -> {
            out.println(c.words());
            if (!c.contradictions().isEmpty()) {
                out.println("Stated, but not borne out by chemistry; what is stated stands:");
                c.contradictions().forEach(line -> out.println("  " + line));
            }
        });
        opened.advisor().ifPresent(a -> opened.products().forEach(p -> ProductText.print(p, a, out)));
        if (!opened.faults().isEmpty()) {
            out.println(opened.faults().size() + " faults.");
        }
        out.flush();
        return opened.faults().isEmpty() ? 0 : Main.FAULTS;
    }
}
