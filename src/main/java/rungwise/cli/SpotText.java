package rungwise.cli;

import java.io.PrintWriter;
import java.util.stream.Collectors;
import rungwise.knowledge.common.Figures;
import rungwise.question.PlainText;
import rungwise.shoplog.Attempt;
import rungwise.shoplog.Undone;
import rungwise.spot.SpotNow;
import rungwise.text.Texts;
import tools.jackson.databind.JsonNode;

/** What is known of a spot and was tried on it, for a person. */
final class SpotText {
    private static final String TRIED = "tried";
    /** Enough of an id to tell the attempts on a spot apart. */
    private static final int MARK = 8;

    private SpotText() {
    }

    static void print(SpotNow spot, PrintWriter out) {
        out.println(say("spot", "id", spot.id(), "at", spot.at()));
        spot.question().properties().stream().filter(field -> !field.getKey().equals(TRIED))
                .forEach(field -> fact(field.getKey(), field.getValue(), out));
        if (!spot.letGo().isEmpty()) {
            out.println(say("spot-let-go", "id", spot.id(), "facts", spot.letGo().stream().map(p -> p.substring(1).replace('/', ' '))
                    .collect(Collectors.joining(", "))));
        }
        out.println();
        JsonNode tried = spot.question().path(TRIED);
        int before = tried.size() - spot.attempts().size();
        for (int i = 0; i < tried.size(); i++) {
            if (i < before) {
                before(tried.get(i), out);
            } else {
                attempt(spot.attempts().get(i - before), tried.get(i), out);
            }
        }
        if (spot.attempts().isEmpty()) {
            out.println(say("spot-untried"));
        }
        spot.undone().forEach(undone -> {
            out.println("  " + say("spot-try-undone", "at", undone.attempt().at(), "mark", mark(undone.attempt()), "method", undone.attempt().method(),
                    "outcome", undone.attempt().outcome().word()));
            out.println("    " + undone(undone));
        });
    }

    /** When an attempt was taken back, by whom and why. */
    static String undone(Undone undone) {
        return say("undone", "at", undone.at(), "by", undone.by(), "why", PlainText.shown(undone.why()));
    }

    /** By what an attempt is named where it is taken back. */
    private static String mark(Attempt attempt) {
        return attempt.id().substring(0, MARK);
    }

    /** A note in lines beneath what it belongs to. */
    static String note(String note, String indent) {
        return indent + PlainText.lines(note).replace("\n", "\n" + indent);
    }

    /** Inner fields after those that hold them. */
    private static void fact(String name, JsonNode value, PrintWriter out) {
        if (value.isObject()) {
            value.properties().forEach(field -> fact(name + " " + field.getKey(), field.getValue(), out));
        } else if (value.isArray() && value.valueStream().anyMatch(JsonNode::isContainer)) {
            value.forEach(one -> fact(name, one, out));
        } else if (!value.isEmpty() || value.isValueNode()) {
            out.println("  " + say("spot-fact", "field", PlainText.shown(name), "value", PlainText.shown(value.isArray() ? words(value) : value.asString())));
        }
    }

    private static String words(JsonNode list) {
        return list.valueStream().map(JsonNode::asString).collect(Collectors.joining(", "));
    }

    /** Tried before the spot was kept. */
    private static void before(JsonNode tried, PrintWriter out) {
        String what = tried.path("method").asString(tried.path("substance").asString(tried.path("text").asString("")));
        out.println("  " + say("spot-before", "hours", Figures.text(tried.path("hoursAgo").asDouble(0)), "what", PlainText.shown(what), "outcome",
                tried.path("outcome").asString()));
    }

    private static void attempt(Attempt attempt, JsonNode tried, PrintWriter out) {
        out.println("  " + say(attempt.prepared() ? "spot-try" : "spot-try-unprepared", "at", attempt.at(), "mark", mark(attempt), "method", attempt.method(),
                "outcome", attempt.outcome().word()));
        if (tried.has("dwellMinutes")) {
            out.println("    " + say("spot-dwell", "minutes", Figures.text(tried.path("dwellMinutes").asDouble())));
        }
        if (tried.has("signs")) {
            out.println("    " + say("spot-signs", "signs", words(tried.path("signs"))));
        }
        attempt.note().ifPresent(note -> out.println(note(note, "    ")));
    }

    private static String say(String id, Object... named) {
        return Texts.said("cli." + id, named);
    }
}
