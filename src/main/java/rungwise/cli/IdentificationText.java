package rungwise.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import rungwise.diagnosis.Identification;
import rungwise.diagnosis.Identification.Sign;
import rungwise.diagnosis.Identification.Suspect;
import rungwise.knowledge.KnowledgeBase;
import rungwise.text.Texts;

/** An identification for a person at a wash bay. */
final class IdentificationText {
    private IdentificationText() {
    }

    static void print(Identification found, KnowledgeBase base, PrintWriter out) {
        out.println(say("verdict." + found.verdict()).toUpperCase(Locale.ROOT) + ": " + found.says());
        out.println();
        suspects(found.suspects(), out);
        out.println("  " + say("others", "percent", percent(found.others())));
        found.contradictions().forEach(c -> out.println(say("contradiction", "explains", c.explains())));
        out.println();
        found.check().offered().ifPresentOrElse(c -> {
            out.println(say("check", "name", c.name(), "minutes", c.minutes(), "saves", Math.round(c.savesMinutes() * 10) / 10.0, "how", c.how()));
            c.outcomes().forEach(o -> out.println("  " + percent(o.probability()) + "  " + say(o.nextMethod().isPresent() ? "outcome-then"
                    : "outcome", "says", o.says(), "likeliest", base.contaminants().get(o.likeliest()).name(), "percent",
                            percent(o.likeliestProbability()), "method",
                    o.nextMethod().map(m -> base.methods().get(m).name()).orElse(""))));
        }, () -> out.println(say("no-check", "says", found.check().says())));
        found.check().notOffered().forEach(w -> out.println(say("not-here", "name", w.name(), "why", w.why())));
        String action = Texts.said("action." + found.next().action());
        out.println(say("next", "next", found.next().method().map(m -> say("next-method", "action", action, "name",
                base.methods().get(m).name(), "id", m)).orElse(action), "text", found.next().text()));
        out.println(say("revision", "revision", found.revision()));
    }

    static void suspects(List<Suspect> suspects, PrintWriter out) {
        for (Suspect suspect : suspects) {
            out.println("  " + percent(suspect.probability()) + "  " + suspect.name() + " (" + suspect.contaminant()
                    + ", " + suspect.frequency() + ")");
            if (suspect == suspects.get(0)) {
                sentences("for", suspect.speaksFor(), out);
                sentences("against", suspect.speaksAgainst(), out);
            } else {
                signs("for", suspect.speaksFor(), out);
                signs("against", suspect.speaksAgainst(), out);
            }
        }
    }

    /** What was seen, in words; what follows from it is left to the book. */
    private static void sentences(String label, List<Sign> signs, PrintWriter out) {
        signs.forEach(s -> out.println("        " + label(label) + " " + weight(s) + "  " + s.says().split("(?<=\\.) ")[0]
                + " (" + s.sign() + ")"));
    }

    private static void signs(String label, List<Sign> signs, PrintWriter out) {
        if (!signs.isEmpty()) {
            out.println("        " + label(label) + " " + signs.stream().map(s -> s.sign() + " "
                    + weight(s)).collect(Collectors.joining(", ")));
        }
    }

    private static String weight(Sign sign) {
        return say(sign.decisive() ? "weight-decisive" : "weight", "ratio", sign.ratio());
    }

    /** Speaks for or against, the two in one width. */
    private static String label(String id) {
        int width = Math.max(say("for").length(), say("against").length());
        return String.format(Locale.ROOT, "%-" + width + "s", say(id));
    }

    private static String say(String id, Object... named) {
        return Texts.said("identify." + id, named);
    }

    private static String percent(double probability) {
        return String.format(Locale.ROOT, "%3d %%", Math.round(probability * 100));
    }
}
