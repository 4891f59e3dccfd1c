package rungwise.cli;

import picocli.CommandLine.Option;
import rungwise.shoplog.Shoplog;

/** Where the log lies. */
final class DataOption {
    @Option(names = "--data", paramLabel = "DIR", defaultValue = "${env:RUNGWISE_DATA:-rungwise-data}")
    private String data;

    /** The log that must be there already. */
    Shoplog existing() {
        if (!Shoplog.exists(data)) {
            throw InputProblem.said("no-log", "place", data);
        }
        return Shoplog.open(data);
    }

    Shoplog openOrMake() {
        return Shoplog.open(data);
    }
}
