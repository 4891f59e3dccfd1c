package rungwise.secondsource;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.SolventColumn;
import rungwise.knowledge.safety.AirLimit;
import rungwise.knowledge.safety.GloveMaterial;
import rungwise.knowledge.surface.Verdict;
import tools.jackson.databind.JsonNode;

/**
 * What can hurt, a second time: each figure as another source has it, beside what the base holds. A difference is agreed on
 * by its reason and the figure that the base holds, so that neither side moves unseen.
 */
final class Elsewhere {
    static final Path FOLDER = Path.of("src/test/resources/second-source");
    /** Sources round differently; more than this is a difference. */
    private static final double TOLERANCE = 0.1;
    /** EN ISO 13732-1: what is touched for a minute burns from here, whatever it is made of (recalled with its table). */
    private static final double BURNS_FROM_C = 51;
    /** Hands stay off while the sun works. */
    private static final String HANDS_OFF = "sun_wait";

    private Elsewhere() {
    }

    static List<JsonNode> entries() {
        try {
            return Base.entries(FOLDER);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What of the base does not agree with the other sources, and is not agreed on. */
    static List<String> differences(KnowledgeBase base) {
        List<String> wrong = new ArrayList<>();
        for (JsonNode entry : entries()) {
            OptionalDouble held = held(base, entry);
            if (held.isEmpty()) {
                wrong.add(name(entry) + ": the base holds no such figure");
            } else {
                judge(entry, held.getAsDouble(), wrong);
            }
        }
        base.methods().values().stream().filter(m -> !m.id().equals(HANDS_OFF)).filter(m -> m.window().filter(w -> w.to() > BURNS_FROM_C)
                .isPresent()).forEach(m -> wrong.add(m.id() + " may start on a panel of " + m.window().get().to() + " °C, which burns the hand"));
        return wrong;
    }

    private static void judge(JsonNode entry, double held, List<String> wrong) {
        Side side = side(entry, held);
        JsonNode agreed = entry.path("differs");
        String said = name(entry) + ": the base holds " + held + ", " + entry.path("source").asString() + " has " + wanted(entry);
        if (agreed.isMissingNode()) {
            if (side != Side.AGREES) {
                wrong.add(said + ", which is " + side.word());
            }
        } else if (side == Side.AGREES) {
            wrong.add(said + ": no difference any more");
        } else if (!agreed.has(side.word())) {
            wrong.add(said + ", which is " + side.word() + " and not agreed on");
        } else if (Math.abs(figure(agreed.path(side.word())) - held) > 1e-9) {
            wrong.add(said + ", agreed on at " + agreed.path(side.word()).asString());
        }
    }

    enum Side {
        AGREES, STRICTER, LOOSER;

        String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    static Side side(JsonNode entry, double held) {
        double from = entry.has("value") ? figure(entry.path("value")) * (1 - TOLERANCE)
                : entry.has("from") ? figure(entry.path("from")) : Double.NEGATIVE_INFINITY;
        double to = entry.has("value") ? figure(entry.path("value")) * (1 + TOLERANCE)
                : entry.has("to") ? figure(entry.path("to")) : Double.POSITIVE_INFINITY;
        if (held >= from && held <= to) {
            return Side.AGREES;
        }
        return held > to == moreIsStricter(entry) ? Side.STRICTER : Side.LOOSER;
    }

    /** A harsher verdict, a higher floor of pH and more film counted are on the safe side; of all else less is. */
    private static boolean moreIsStricter(JsonNode entry) {
        String figure = entry.path("figure").asString();
        return figure.startsWith("solvents ") || figure.equals("acidity from") || figure.equals("film µm");
    }

    static OptionalDouble held(KnowledgeBase base, JsonNode entry) {
        String of = entry.path("of").asString();
        String[] figure = entry.path("figure").asString().split(" ");
        return switch (figure[0]) {
            case "shift", "short", "ceiling" -> base.exposures().get(of).limits().stream()
                    .filter(l -> l.over() == AirLimit.Over.valueOf(upper(figure[0])) && l.unit() == AirLimit.Unit.valueOf(upper(figure[1])))
                    .mapToDouble(AirLimit::value).min();
            case "factor" -> OptionalDouble.of(base.respirators().get(of).factor());
            case "maxC" -> OptionalDouble.of(base.surfaces().get(of).maxC());
            case "acidity" -> OptionalDouble.of(figure[1].equals("from") ? base.surfaces().get(of).acidity().from()
                    : base.surfaces().get(of).acidity().to());
            case "solvents" -> OptionalDouble.of(base.surfaces().get(of).limit(SolventColumn.valueOf(upper(figure[1]))).verdict().ordinal());
            case "dwell" -> OptionalDouble.of(base.methods().get(of).dwell().to());
            case "marks" -> OptionalDouble.of(base.contaminants().get(of).marks().hot());
            case "film" -> OptionalDouble.of(base.methods().get(of).severity().filmMicrons());
            default -> base.gloves().get(of).charts().stream().filter(c -> c.glove() == GloveMaterial.valueOf(upper(figure[0])))
                    .mapToDouble(c -> c.minutes()).min();
        };
    }

    private static String upper(String word) {
        return word.toUpperCase(java.util.Locale.ROOT);
    }

    /** A number, or a verdict as its place among the verdicts. */
    private static double figure(JsonNode value) {
        return value.isString() ? Verdict.valueOf(upper(value.asString())).ordinal() : value.asDouble();
    }

    private static String wanted(JsonNode entry) {
        return entry.has("value") ? entry.path("value").asString()
                : entry.path("from").asString("any") + " to " + entry.path("to").asString("any");
    }

    static String name(JsonNode entry) {
        return entry.path("of").asString() + " " + entry.path("figure").asString();
    }
}
