package rungwise.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParentCommand;
import rungwise.knowledge.common.Figures;
import rungwise.shoplog.Lessons;
import rungwise.shoplog.Shoplog;
import rungwise.shoplog.Teacher;

/** Shows what the log teaches. */
@Command(name = "learned", mixinStandardHelpOptions = true,
        description = "Show which chances the log has moved, on how many tries, and where harm was done.")
final class LearnedCommand implements Callable<Integer> {
    @ParentCommand
    private Main main;

    @Mixin
    private DataOption data;

    @Mixin
    private Output output;

    @Override
    public Integer call() {
        Lessons lessons;
        try (Shoplog log = data.existing()) {
            lessons = new Teacher(log, main.ready().knowledge()).lessons();
        }
        return output.print(lessons, out -> print(lessons, out));
    }

    private static void print(Lessons lessons, PrintWriter out) {
        for (Lessons.Alarm alarm : lessons.alarms()) {
            out.println("ALARM: " + alarm.method() + " did harm on " + alarm.surface() + " in " + alarm.harms() + " of "
                    + alarm.tries() + " tries.");
            out.println("  " + alarm.proposal().text());
            out.println("  Last: " + String.join(", ", alarm.last()));
        }
        if (!lessons.moved().isEmpty()) {
            out.printf(Locale.ROOT, "%-22s %-20s %-9s %-8s %6s %6s %8s %8s%n", "method", "bond class", "state", "surface",
                    "from", "to", "tries", "cleared");
        }
        for (Lessons.Move move : lessons.moved()) {
            out.printf(Locale.ROOT, "%-22s %-20s %-9s %-8s %6s %6s %8s %8s%n", move.method(), move.bond(), move.state(),
                    move.surface(), Figures.text(move.from()), Figures.text(move.to()), Figures.text(move.tries()),
                    Figures.text(move.cleared()));
        }
        out.println(lessons.counted() + " attempts counted; left out " + lessons.leftOut().unprepared()
                + " on unprepared panels and " + lessons.leftOut().unknown() + " of what is not known. Revision "
                + lessons.revision() + ".");
    }
}
