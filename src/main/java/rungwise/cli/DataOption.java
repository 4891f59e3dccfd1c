package rungwise.cli;

import picocli.CommandLine.Option;
import rungwise.knowledge.KnowledgeBase;
import rungwise.ladder.ChanceTable;
import rungwise.shoplog.Shoplog;
import rungwise.shoplog.Teacher;

/** Where the log lies. */
final class DataOption {
    @Option(names = "--data", paramLabel = "DIR", defaultValue = "${env:RUNGWISE_DATA:-rungwise-data}")
    private String data;

    /** The log that must be there already. */
    Shoplog existing() {
        if (!data.isBlank() && !Shoplog.exists(data)) {
            throw InputProblem.said("no-log", "place", data);
        }
        return Shoplog.open(data);
    }

    /** What a log that must be there already has taught. */
    static ChanceTable learned(String data, KnowledgeBase base) {
        if (!Shoplog.exists(data)) {
            throw InputProblem.said("no-log-to-learn-from", "place", data);
        }
        try (Shoplog log = Shoplog.open(data)) {
            return new Teacher(log, base).fresh();
        }
    }

    Shoplog openOrMake() {
        return Shoplog.open(data);
    }
}
