package rungwise.cli;

import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungwise.knowledge.load.Mappers;
import rungwise.shoplog.Attempt;
import rungwise.shoplog.Undone;
import rungwise.spot.SpotNow;
import rungwise.text.Texts;
import tools.jackson.databind.node.ObjectNode;

/** Takes back an attempt that was mistyped. */
@Command(name = "undo", mixinStandardHelpOptions = true)
final class SpotUndoCommand implements Callable<Integer> {
    @Mixin
    private SpotPlace place;

    @Parameters(index = "0", paramLabel = "ID", descriptionKey = "ID")
    private String id;

    @Parameters(index = "1", arity = "0..1", paramLabel = "TRY", descriptionKey = "mark")
    private String mark;

    @Option(names = "--why", required = true, paramLabel = "TEXT")
    private String why;

    @Option(names = "--by", paramLabel = "WHO")
    private String by;

    @Override
    public Integer call() {
        return place.at(id, "cli.spot-not-undone", open -> {
            String attempt = Optional.ofNullable(mark).or(() -> open.memory().lastTried(id).map(Attempt::id))
                    .orElseThrow(() -> InputProblem.said("spot-nothing-to-undo", "id", id));
            ObjectNode order = Mappers.json().createObjectNode().put("attempt", attempt).put("why", why);
            SpotNow spot = open.memory().undo(id, by == null ? order : order.put("by", by), Optional.empty());
            return place.said(open, spot, spot.answer(), spot.id(), undone(spot, attempt));
        });
    }

    private static String undone(SpotNow spot, String mark) {
        Undone undone = spot.undone().stream().filter(one -> one.attempt().id().startsWith(mark.toLowerCase(Locale.ROOT))).findFirst().orElseThrow();
        String said = Texts.said("cli.spot-undone", "id", spot.id(), "method", undone.attempt().method(), "outcome",
                undone.attempt().outcome().word(), "at", undone.attempt().at());
        return said + (undone.told().isEmpty() ? "" : "\n" + Texts.said("cli.spot-went-with-it", "facts",
                undone.told().propertyNames().stream().collect(Collectors.joining(", ")), "id", spot.id()))
                + "\n" + Texts.said("cli.spot-on-it-all-the-same", "id", spot.id());
    }
}
