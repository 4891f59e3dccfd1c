package rungwise.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungwise.spot.SpotNow;

/** Shows a spot and its next step. */
@Command(name = "show", mixinStandardHelpOptions = true)
final class SpotShowCommand implements Callable<Integer> {
    @Mixin
    private SpotPlace place;

    @Parameters(paramLabel = "ID", descriptionKey = "ID")
    private String id;

    @Option(names = "--all")
    private boolean all;

    @Option(names = "--why", paramLabel = "METHOD")
    private String why;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        return place.at(id, "cli.spot-unreadable", open -> {
            String method = why == null ? null : LadderCommand.method(open.advisor(), why);
            SpotNow spot = open.memory().show(id, why != null);
            return place.print(spot, out -> print(open, spot, method, out));
        });
    }

    private void print(SpotPlace.Open open, SpotNow spot, String method, PrintWriter out) {
        if (method != null) {
            new AnswerText(open.knowledge(), out).why(spot.answer().answer(), method);
            return;
        }
        SpotText.print(spot, out);
        out.println();
        if (all) {
            AnswerMargin.suspects(spot.answer(), out);
            new AnswerText(open.knowledge(), out).print(spot.answer().answer());
        } else {
            place.card(open, spot.answer(), spot.id());
        }
    }
}
