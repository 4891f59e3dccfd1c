package rungwise.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import rungwise.diagnosis.Identification;
import rungwise.diagnosis.Identification.Sign;
import rungwise.diagnosis.Identification.Suspect;
import rungwise.knowledge.common.Figures;

/** An identification for a person at a wash bay. */
final class IdentificationText {
    private IdentificationText() {
    }

    static void print(Identification found, PrintWriter out) {
        out.println(found.verdict().toUpperCase(Locale.ROOT) + ": " + found.says());
        out.println();
        suspects(found.suspects(), out);
        out.println("  everything else together: " + percent(found.others()));
        found.contradictions().forEach(c -> out.println("Does not go together: " + c.explains()));
        out.println();
        found.check().offered().ifPresentOrElse(c -> {
            out.println("Check next: " + c.name() + " (" + Figures.text(c.minutes()) + " min, expected to save "
                    + Figures.text(Math.round(c.savesMinutes() * 10) / 10.0) + " min). " + c.how());
            c.outcomes().forEach(o -> out.println("  " + percent(o.probability()) + "  " + o.says() + " → "
                    + o.likeliest() + " " + percent(o.likeliestProbability())
                    + o.nextMethod().map(m -> ", then " + m).orElse("")));
        }, () -> out.println("Check next: none. " + found.check().says()));
        found.check().notOffered().forEach(w -> out.println("Not here: " + w.name() + ". " + w.why()));
        out.println("Next: " + found.next().action() + found.next().method().map(m -> " " + m).orElse("") + ". "
                + found.next().text());
        out.println("Revision " + found.revision() + ".");
    }

    static void suspects(List<Suspect> suspects, PrintWriter out) {
        for (Suspect suspect : suspects) {
            out.println("  " + percent(suspect.probability()) + "  " + suspect.name() + " (" + suspect.contaminant()
                    + ", " + suspect.frequency() + ")");
            if (suspect == suspects.get(0)) {
                sentences("for    ", suspect.speaksFor(), out);
                sentences("against", suspect.speaksAgainst(), out);
            } else {
                signs("for    ", suspect.speaksFor(), out);
                signs("against", suspect.speaksAgainst(), out);
            }
        }
    }

    /** What was seen, in words; what follows from it is left to the book. */
    private static void sentences(String label, List<Sign> signs, PrintWriter out) {
        signs.forEach(s -> out.println("        " + label + " " + weight(s) + "  " + s.says().split("(?<=\\.) ")[0]
                + " (" + s.sign() + ")"));
    }

    private static void signs(String label, List<Sign> signs, PrintWriter out) {
        if (!signs.isEmpty()) {
            out.println("        " + label + " " + signs.stream().map(s -> s.sign() + " "
                    + weight(s)).collect(Collectors.joining(", ")));
        }
    }

    private static String weight(Sign sign) {
        return "×" + Figures.text(sign.ratio()) + (sign.decisive() ? " decisive" : "");
    }

    private static String percent(double probability) {
        return String.format(Locale.ROOT, "%3d %%", Math.round(probability * 100));
    }
}
