package rungwise.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import rungwise.knowledge.common.Figures;
import rungwise.shoplog.Lessons;
import rungwise.shoplog.Shoplog;
import rungwise.shoplog.Teacher;
import rungwise.text.Texts;

/** Shows what the log teaches. */
@Command(name = "learned", mixinStandardHelpOptions = true)
final class LearnedCommand implements Callable<Integer> {
    @ParentCommand
    private Main main;

    @Mixin
    private DataOption data;

    @Mixin
    private Output output;

    @Option(names = "--csv")
    private boolean csv;

    @Override
    public Integer call() {
        Lessons lessons;
        try (Shoplog log = data.existing()) {
            lessons = new Teacher(log, main.ready().knowledge()).lessons();
        }
        return output.print(lessons, out -> {
            if (csv) {
                table(lessons, out);
            } else {
                print(lessons, out);
            }
        });
    }

    /** For a picture: a head, then a row for each chance and each method's minutes that moved; ids and plain numbers alone. */
    private static void table(Lessons lessons, PrintWriter out) {
        out.println("what,method,bond,state,surface,from,to,tries,cleared");
        lessons.moved().forEach(m -> out.println(String.join(",", "chance", m.method(), m.bond(), m.state(), m.surface(), Figures.exact(m.from()),
                Figures.exact(m.to()), Figures.exact(m.tries()), Figures.exact(m.cleared()))));
        lessons.minutes().forEach(p -> out.println(String.join(",", "minutes", p.method(), "", "", "", Figures.exact(p.from()), Figures.exact(p.to()),
                Figures.exact(p.tries()), "")));
    }

    private static void print(Lessons lessons, PrintWriter out) {
        for (Lessons.Alarm alarm : lessons.alarms()) {
            out.println(say("alarm", "method", alarm.method(), "surface", alarm.surface(), "harms", alarm.harms(), "tries", alarm.tries()));
            out.println("  " + alarm.proposal().text());
            out.println("  " + say("last", "attempts", String.join(", ", alarm.last())));
        }
        if (!lessons.moved().isEmpty()) {
            row(out, say("column.method"), say("column.bond"), say("column.state"), say("column.surface"), say("column.from"),
                    say("column.to"), say("column.tries"), say("column.cleared"));
        }
        for (Lessons.Move move : lessons.moved()) {
            row(out, move.method(), move.bond(), move.state(),
                    move.surface(), Figures.text(move.from()), Figures.text(move.to()), Figures.text(move.tries()),
                    Figures.text(move.cleared()));
        }
        lessons.minutes().forEach(p -> out.println(say("minutes", "method", p.method(), "to", p.to(), "from", p.from(), "tries", p.tries())));
        out.println(say("counted", "counted", lessons.counted(), "unprepared", lessons.leftOut().unprepared(), "unknown",
                lessons.leftOut().unknown(), "revision", lessons.revision()));
    }

    private static void row(PrintWriter out, Object... cells) {
        out.printf(Locale.ROOT, "%-22s %-20s %-9s %-8s %6s %6s %8s %8s%n", cells);
    }

    private static String say(String id, Object... named) {
        return Texts.said("learned." + id, named);
    }
}
