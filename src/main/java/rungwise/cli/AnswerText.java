package rungwise.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rungwise.knowledge.Figures;
import rungwise.knowledge.KnowledgeBase;
import rungwise.ladder.Answer;
import rungwise.rules.Because;

/** An answer for a person at a wash bay: the next step first, then the ladder, then what was left out and why. */
final class AnswerText {
    private static final int BARRED_SHOWN = 12;

    private final KnowledgeBase base;
    private final PrintWriter out;
    private final boolean colour;

    AnswerText(KnowledgeBase base, PrintWriter out) {
        this.base = base;
        this.out = out;
        this.colour = System.console() != null && System.getenv("NO_COLOR") == null;
    }

    void print(Answer answer) {
        out.println(bold(answer.next().action().toUpperCase(Locale.ROOT) + answer.next().method()
                .map(m -> ": " + base.methods().get(m).name()).orElse("")));
        out.println("  " + answer.next().text());
        answer.next().until().ifPresent(u -> out.println("  Until: " + u));
        answer.barred().stream().filter(b -> answer.next().method().filter(b.method()::equals).isPresent())
                .flatMap(b -> b.staysWet().stream()).forEach(w -> wet("  Would stay wet now: ", w));
        answer.hold().ifPresent(h -> out.println("  Hold: " + h.what()));
        if (!answer.rungs().isEmpty()) {
            Answer.Rung rung = answer.rungs().get(0);
            if (answer.next().method().filter(rung.method()::equals).isPresent()) {
                wear("  Wear: ", rung);
                first(rung);
            }
            ladder(answer);
        }
        section("Slower or gentler instead", answer.alternatives().stream()
                .map(a -> a.name() + ": " + a.why()).toList());
        section("Before", answer.before().stream().map(Answer.Around::text).toList());
        section("After", answer.after().stream().map(s -> s.text()
                + s.rinse().map(r -> " Enough: " + r.words() + ".").orElse("")).toList());
        section("Next door", answer.neighbours().stream().collect(Collectors.groupingBy(Answer.Neighbour::surface,
                TreeMap::new, Collectors.mapping(n -> base.methods().get(n.method()).name(),
                        Collectors.joining(", ")))).entrySet().stream()
                .map(e -> base.surfaces().get(e.getKey()).name() + ": mask it before " + e.getValue()).toList());
        section("Never here", answer.barred().stream().limit(BARRED_SHOWN).map(b -> b.name()
                + b.opensWith().map(o -> " (until: " + o.replace('_', ' ') + ")").orElse("") + ": "
                + b.because().get(0).says() + b.staysWet().filter(w -> w.basis().equals("computed")).map(w -> " Wet for only "
                + minutes(w.fromSeconds()) + " to " + minutes(w.toSeconds()) + " now.").orElse("")).toList());
        section("Passed over", answer.passedOver().stream().filter(p -> !p.step().equals("pointless"))
                .map(p -> p.name() + ", " + p.step() + ": " + p.why()).toList());
        List<String> pointless = answer.passedOver().stream().filter(p -> p.step().equals("pointless"))
                .map(p -> p.name() + " " + Figures.text(Math.round(p.chance() * 100) / 100.0)).toList();
        if (!pointless.isEmpty()) {
            section("Pointless here, with their chance", List.of(String.join(", ", pointless)));
        }
        section("Assumed", answer.assumed().stream().map(a -> a.fact() + ": " + a.value()).toList());
        out.println();
        out.println("If nothing is left: " + answer.wayOut().text());
        out.println("Safety data sheets, local codes and licensed practice come first. Revision " + answer.revision()
                + ".");
    }

    private void wear(String label, Answer.Rung rung) {
        if (!rung.ppe().isEmpty()) {
            out.println(label + rung.ppe().stream().map(p -> words(p.item())).collect(Collectors.joining(", ")));
        }
    }

    private void first(Answer.Rung rung) {
        if (!rung.stopSigns().isEmpty()) {
            out.println("  Stop at: " + String.join(", ", rung.stopSigns()));
        }
        rung.agent().filter(a -> !a.mix().isEmpty()).ifPresent(a -> out.println("  Mix: " + a.name() + ", "
                + a.dilution() + ". " + a.mix()));
        rung.staysWet().ifPresent(w -> wet("  Stays wet: ", w));
        rung.bridgeBefore().forEach(b -> out.println("  Between: " + b.text()
                + b.rinse().map(r -> " After " + base.agents().get(b.after()).name() + ": " + r.words() + ".").orElse("")));
        rung.risks().forEach(r -> out.println("  Mind: " + r.text()));
    }

    private void wet(String label, Answer.Wet wet) {
        if (wet.basis().equals("computed")) {
            out.println(label + minutes(wet.fromSeconds()) + " to " + minutes(wet.toSeconds()) + wet.atOnce().spots()
                    .map(s -> s + (s == 1 ? " spot" : " spots")).or(() -> wet.atOnce().areaM2().map(m -> Figures.text(m) + " m²"))
                    .map(most -> "; wet at most " + most + " at once").orElse(""));
        }
    }

    private static String minutes(double seconds) {
        return seconds < 120 ? Math.round(seconds) + " s" : seconds < 7200 ? Math.round(seconds / 60) + " min"
                : "hours";
    }

    private void ladder(Answer answer) {
        out.println();
        out.println(bold("Ladder, gentlest first"));
        out.printf(Locale.ROOT, "  %-2s %-32s %-9s %-7s %-7s %-10s %s%n", "", "method", "M C T µm", "chance", "min",
                "dwell min", "still needed");
        for (Answer.Rung rung : answer.rungs()) {
            Answer.Grades s = rung.severity();
            out.printf(Locale.ROOT, "  %-2d %-32s %-9s %-7s %-7s %-10s %s%n", rung.rank(), rung.name(),
                    s.mechanical() + " " + s.chemical() + " " + s.thermal() + " " + Figures.text(s.filmMicrons()),
                    Math.round(rung.chance().mean() * 100) + " %", Figures.text(Math.round(rung.minutes() * 10) / 10.0),
                    rung.dwell().to() == 0 ? "-" : Figures.text(rung.dwell().from()) + "–"
                            + Figures.text(rung.dwell().to()),
                    rung.gates().stream().filter(g -> g.state().equals("open")).map(g -> words(g.id()))
                            .collect(Collectors.joining(", ")));
            wear("     wear ", rung);
        }
        Answer.Expected e = answer.expected();
        out.println("  Off at the end: " + Math.round(e.chanceCleared() * 100) + " %, a mark already beneath: "
                + Math.round(e.alreadyMarked() * 100) + " %, minutes " + Figures.text(Math.round(e.minutes().best()))
                + " / " + Figures.text(Math.round(e.minutes().likely())) + " / "
                + Figures.text(Math.round(e.minutes().worst())) + " (best, likely, worst)");
    }

    void why(Answer answer, String method) {
        String name = base.methods().get(method).name();
        answer.rungs().stream().filter(r -> r.method().equals(method)).findFirst().ifPresent(r -> {
            out.println(name + " is rung " + r.rank() + " of " + answer.rungs().size() + ".");
            reasons(r.because());
            r.gates().forEach(g -> {
                out.println("  Gate " + words(g.id()) + ", " + g.state() + ": " + g.obtain());
                reasons(g.because());
            });
        });
        answer.alternatives().stream().filter(a -> a.method().equals(method)).findFirst().ifPresent(a -> {
            out.println(name + " is an alternative: " + a.why() + ".");
            reasons(a.rung().because());
        });
        answer.barred().stream().filter(b -> b.method().equals(method)).findFirst().ifPresent(b -> {
            out.println(name + " is barred" + b.opensWith().map(o -> " until: " + o.replace('_', ' ')).orElse("") + ".");
            reasons(b.because());
            b.staysWet().ifPresent(w -> reasons(w.because()));
        });
        answer.passedOver().stream().filter(p -> p.method().equals(method)).findFirst().ifPresent(p -> {
            out.println(name + " is passed over, " + p.step() + ": " + p.why() + ".");
            reasons(p.because());
        });
        if (CaseFile.why(answer, method).equals("it is nowhere")) {
            out.println(name + " is not a removal method, or no work is done at all here: " + answer.next().text());
        }
    }

    private void reasons(List<Because> reasons) {
        for (Because because : reasons) {
            out.println("  " + because.says() + (because.cause().isEmpty() ? "" : " " + because.cause()));
            because.facts().stream().filter(f -> !f.isEmpty()).forEach(f -> out.println("      found: " + f));
            out.println("      rule " + because.rule() + ", " + because.basis().name().toLowerCase(Locale.ROOT)
                    .replace('_', ' ') + (because.sources().isEmpty() ? "" : ", sources "
                    + String.join(", ", because.sources())));
        }
    }

    private void section(String title, List<String> lines) {
        if (!lines.isEmpty()) {
            out.println();
            out.println(bold(title));
            lines.forEach(l -> out.println("  " + l));
        }
    }

    private static String words(String id) {
        return id.replace('_', ' ');
    }

    private String bold(String text) {
        return colour ? "\u001b[1m" + text + "\u001b[0m" : text;
    }
}
