package rungwise.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rungwise.question.Question;
import rungwise.shoplog.Cursor;
import rungwise.spot.SpotListed;
import rungwise.spot.SpotMemory;
import rungwise.spot.SpotsListed;
import rungwise.text.Texts;

/** Lists the spots that are worked on. */
@Command(name = "list", mixinStandardHelpOptions = true)
final class SpotListCommand implements Callable<Integer> {
    private static final int PAGE = 500;

    @Mixin
    private SpotPlace place;

    @Option(names = "--all")
    private boolean all;

    /** What is printed as JSON. */
    record Listed(List<SpotListed> items) {
    }

    @Override
    public Integer call() {
        return place.there(open -> {
            List<SpotListed> spots = spots(open.memory());
            return place.print(new Listed(spots), out -> print(spots, open.place(), out));
        });
    }

    private List<SpotListed> spots(SpotMemory memory) {
        List<SpotListed> spots = new ArrayList<>();
        Optional<Cursor> from = Optional.empty();
        boolean more = true;
        while (more) {
            SpotsListed page = memory.list(from, PAGE, all);
            spots.addAll(page.items());
            from = Cursor.of(page.next());
            more = page.more();
        }
        return spots;
    }

    private void print(List<SpotListed> spots, String where, PrintWriter out) {
        spots.forEach(spot -> {
            String surface = spot.surface().isEmpty() ? Question.UNKNOWN : String.join(" + ", spot.surface());
            out.println(Texts.said("cli.spot-listed", "id", spot.id(), "contaminant", spot.contaminant(), "surface", surface, "at", spot.at()));
            out.println("        " + spot.last().map(last -> Texts.said("cli.spot-last", "method", last.method(), "outcome", last.outcome(), "at",
                    last.at())).orElseGet(() -> Texts.said("cli.spot-untried")));
        });
        out.println(Texts.said(all ? "cli.spots-in-all" : spots.isEmpty() ? "cli.no-spot-open" : "cli.spots-open", "many", spots.size(), "place", where));
    }
}
