package rungwise.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwise.answer.Answer;
import rungwise.knowledge.Figures;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Sentence;
import rungwise.rules.Because;
import rungwise.text.Texts;
import rungwise.workup.Wet;

/** An answer for a person at a wash bay: the next step first, then the ladder, then what was left out and why. */
final class AnswerText {
    private static final int BARRED_SHOWN = 12;
    private static final int SOON_DRY_SHOWN = 4;
    /** The steps by which a method is passed over, as one would say them; --why gives the figures. */
    private static final Map<String, String> PASSED = passed();
    private static final Map<String, String> NEXT_DOOR = Map.of("mask", "mask it before", "barred",
            "it does not bear what would run onto it, so not here:", "keep_in_place",
            "keep it from running over, small swab only:");

    private final KnowledgeBase base;
    private final PrintWriter out;
    private final boolean colour;

    AnswerText(KnowledgeBase base, PrintWriter out) {
        this.base = base;
        this.out = out;
        this.colour = System.console() != null && System.getenv("NO_COLOR") == null;
    }

    /**
     * Prints it.
     *
     * @param all also what surrounds the rungs, what is left out and what was assumed; else the next step and the ladder in short
     */
    void print(Answer answer, boolean all) {
        // first aid may be to blot as well as to flush
        String heading = answer.next().action().equals("flush") ? "at once" : answer.next().action();
        out.println(bold(heading.toUpperCase(Locale.ROOT) + answer.next().method()
                .map(m -> ": " + base.methods().get(m).name()).orElse("")));
        out.println("  " + answer.next().text());
        wear("  Wear: ", answer.next().ppe());
        answer.next().until().ifPresent(u -> out.println("  Until: " + u));
        answer.barred().stream().filter(b -> answer.next().method().filter(b.method()::equals).isPresent())
                .flatMap(b -> b.staysWet().stream()).forEach(w -> wet("  Would stay wet now: ", w));
        answer.hold().ifPresent(h -> out.println("  Hold: " + h.what()));
        if (!answer.rungs().isEmpty()) {
            Answer.Rung rung = answer.rungs().get(0);
            if (answer.next().method().filter(rung.method()::equals).isPresent()) {
                wear("  Wear: ", rung.ppe());
                first(rung);
            }
            if (all) {
                ladder(answer);
            } else {
                brief(answer);
            }
        }
        if (!all) {
            answer.whoTakesOver().ifPresent(w -> out.println((answer.isStopped() ? "Who takes over: " : "If nothing is left: ") + w.text()));
            out.println("--all prints the rest, --why METHOD where one went. Safety data sheets, local codes and licensed practice come "
                    + "first. Revision " + answer.revision() + ".");
            return;
        }
        section("Slower or gentler instead", answer.alternatives().stream()
                .map(a -> a.name() + ": " + a.why()).toList());
        section("Before", answer.before().stream().flatMap(this::step).toList());
        section("After", answer.after().stream().flatMap(this::step).toList());
        section("Next door", answer.neighbours().stream().collect(Collectors.groupingBy(n -> base.surfaces()
                .get(n.surface()).name() + ": " + NEXT_DOOR.get(n.action()), TreeMap::new, Collectors.mapping(n ->
                base.methods().get(n.method()).name(), Collectors.joining(", ")))).entrySet().stream()
                .map(e -> e.getKey() + " " + e.getValue()).toList());
        section("The trade adds", answer.advice().stream().map(Answer.Advice::text).toList());
        never("Never here", answer.never());
        never("Not now", answer.notNow());
        never("Used up on this spot", answer.usedUp());
        passedOver(answer);
        section("Assumed", answer.assumed().stream().map(a -> a.fact() + ": " + a.value()).toList());
        out.println();
        answer.whoTakesOver().ifPresent(w -> out.println((answer.isStopped() ? "Who takes over: " : "If nothing is left: ") + w.text()));
        out.println("Safety data sheets, local codes and licensed practice come first. Revision " + answer.revision()
                + ".");
    }

    private Stream<String> step(Answer.Around step) {
        return Stream.of(Optional.of(step.text() + (step.onDry() ? " (onto the dry panel)" : "")),
                step.dilution().filter(d -> d.matches(".*(\\d|part).*")).map(d -> "   mix: " + d), step.watch().map(w -> "   watch: " + w),
                step.rinse().map(r -> "   enough: " + r.words()),
                Optional.of(step.wear()).filter(w -> step.onDry()).map(w -> "   wear: " + w.stream()
                        .map(AnswerText::words).collect(Collectors.joining(", ")))).flatMap(Optional::stream);
    }

    private void passedOver(Answer answer) {
        Map<String, List<String>> byStep = new LinkedHashMap<>();
        PASSED.keySet().forEach(k -> byStep.put(k, new ArrayList<>()));
        answer.passedOver().forEach(p -> byStep.computeIfAbsent(p.step(), k -> new ArrayList<>()).add(p.step()
                .equals("pointless") ? p.name() : p.name() + " " + Math.round(p.chance() * 100) + " %"));
        section("Passed over, with their chance", byStep.entrySet().stream().filter(e -> !e.getValue().isEmpty())
                .map(e -> PASSED.getOrDefault(e.getKey(), e.getKey()) + ": " + String.join(", ", e.getValue())).toList());
    }

    /** Bars by reason, as one reason often bars several; what is merely made for something else is only counted. */
    private void never(String title, List<Answer.Barred> barred) {
        List<Answer.Barred> elsewhere = barred.stream().filter(Answer.Barred::madeForOther).toList();
        Map<String, List<String>> byReason = new LinkedHashMap<>();
        barred.stream().filter(b -> !elsewhere.contains(b)).forEach(b -> byReason.computeIfAbsent(b.because().get(0)
                .says() + b.opensWith().map(o -> " (" + opens(o) + ")").orElse(""), r -> new ArrayList<>())
                .add(b.name()));
        List<String> lines = new ArrayList<>();
        byReason.entrySet().stream().limit(BARRED_SHOWN).forEach(e -> lines.add(String.join(", ", e.getValue())
                + ": " + e.getKey()));
        if (byReason.size() > BARRED_SHOWN) {
            lines.add("… and " + byReason.values().stream().skip(BARRED_SHOWN).mapToInt(List::size).sum()
                    + " more for other reasons; --json names them all.");
        }
        List<String> soonDry = barred.stream().filter(b -> b.opensWith().isPresent())
                .filter(b -> b.staysWet().filter(w -> w.basis().equals("computed")).isPresent())
                .sorted(Comparator.comparingDouble(b -> b.staysWet().get().toSeconds())).limit(SOON_DRY_SHOWN)
                .map(b -> b.name() + " " + span(b.staysWet().get())).toList();
        if (!soonDry.isEmpty()) {
            lines.add("Wet for only so long now: " + String.join(", ", soonDry) + ".");
        }
        if (!elsewhere.isEmpty()) {
            lines.add("Left out here: " + elsewhere.size() + " made for another material; --why METHOD tells of one.");
        }
        section(title, lines);
    }

    private static Map<String, String> passed() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("enough", "Not reached, as next to nothing is left for it");
        words.put("same-again", "Same again as a gentler or quicker one");
        words.put("harsher-for-less", "Harsher than a likelier one");
        words.put("finest-first", "Coarser than a finer grade that is not worth it");
        words.put("real-chance", "Film or an agreement for too small a chance");
        words.put("slow", "Too slow");
        words.put("not-worth-its-minutes", "Costs more minutes than it saves");
        words.put("pointless", "Pointless here");
        return words;
    }

    private void wear(String label, List<Answer.Ppe> ppe) {
        if (!ppe.isEmpty()) {
            Map<String, List<String>> byPlace = ppe.stream().collect(Collectors.groupingBy(p -> p.where().orElse(""),
                    TreeMap::new, Collectors.mapping(p -> words(p.item()), Collectors.toList())));
            out.println(label + byPlace.entrySet().stream().map(e -> (e.getKey().isEmpty() ? "" : e.getKey() + ": ")
                    + String.join(", ", e.getValue())).collect(Collectors.joining("; ")));
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

    private void wet(String label, Wet wet) {
        if (wet.basis().equals("computed")) {
            out.println(label + span(wet) + wet.atOnce().spots()
                    .map(s -> s + (s == 1 ? " spot" : " spots")).or(() -> wet.atOnce().areaM2().map(m -> Figures.text(m) + " m²"))
                    .map(most -> "; wet at most " + most + " at once").orElse(""));
        }
    }

    private static String span(Wet wet) {
        String from = minutes(wet.fromSeconds());
        String to = minutes(wet.toSeconds());
        return from.equals(to) ? from : from + " to " + to;
    }

    private static String minutes(double seconds) {
        return seconds < 120 ? Math.round(seconds) + " s" : seconds < 7200 ? Math.round(seconds / 60) + " min"
                : "hours";
    }

    private void brief(Answer answer) {
        out.println();
        out.println(bold("Ladder, gentlest first"));
        answer.rungs().forEach(r -> out.printf(Locale.ROOT, "  %-2d %-32s %s, %s min%n", r.rank(), r.name(),
                Math.round(r.chance().mean() * 100) + " %", Figures.text(Math.round(r.minutes() * 10) / 10.0)));
    }

    private void ladder(Answer answer) {
        out.println();
        out.println(bold("Ladder, gentlest first"));
        out.printf(Locale.ROOT, "  %-2s %-32s %-9s %-7s %-7s %-10s %s%n", "", "method", "M C T µm", "chance", "min",
                "dwell min", "needed first");
        for (Answer.Rung rung : answer.rungs()) {
            Answer.Grades s = rung.severity();
            out.printf(Locale.ROOT, "  %-2d %-32s %-9s %-7s %-7s %-10s %s%n", rung.rank(), rung.name(),
                    s.mechanical() + " " + s.chemical() + " " + s.thermal() + " " + Figures.text(s.filmMicrons()),
                    Math.round(rung.chance().mean() * 100) + " %", Figures.text(Math.round(rung.minutes() * 10) / 10.0),
                    rung.dwell().to() == 0 ? "-" : Figures.text(rung.dwell().from()) + "–"
                            + Figures.text(rung.dwell().to()),
                    rung.gates().stream().filter(g -> g.state().equals(Answer.GateState.MISSING)).map(AnswerText::needed)
                            .collect(Collectors.joining(", ")));
            wear("     wear ", rung.ppe());
            rung.bridgeBefore().stream().map(Answer.Bridge::text).distinct().forEach(b -> out.println("     first: " + b));
        }
        Answer.Expected e = answer.ladder().orElseThrow().expected();
        out.println("  Off at the end: " + Math.round(e.chanceCleared() * 100) + " %, a mark already beneath: "
                + Math.round(e.alreadyMarked() * 100) + " %, minutes " + Figures.text(Math.round(e.minutes().best()))
                + " / " + Figures.text(Math.round(e.minutes().likely())) + " / "
                + Figures.text(Math.round(e.minutes().worst())) + " (best, likely, worst)");
    }

    void why(Answer answer, String method) {
        String name = base.methods().get(method).name();
        answer.rungs().stream().filter(r -> r.method().equals(method)).findFirst().ifPresent(r -> {
            out.println(name + " is step " + r.rank() + " of " + answer.rungs().size() + ".");
            reasons(r.because());
            r.gates().forEach(g -> {
                out.println("  Needed first, " + needed(g) + ", " + g.state() + ": " + g.obtain());
                reasons(g.because());
            });
        });
        answer.alternatives().stream().filter(a -> a.method().equals(method)).findFirst().ifPresent(a -> {
            out.println(name + " is an alternative: " + a.why() + ".");
            reasons(a.rung().because());
        });
        answer.never().stream().filter(b -> b.method().equals(method)).findFirst().ifPresent(b -> {
            out.println(name + " is never used here.");
            reasons(b.because());
        });
        answer.usedUp().stream().filter(b -> b.method().equals(method)).findFirst().ifPresent(b -> {
            out.println(name + " is used up on this spot.");
            reasons(b.because());
        });
        answer.notNow().stream().filter(b -> b.method().equals(method)).findFirst().ifPresent(b -> {
            out.println(name + ": not now" + b.opensWith().map(o -> ", " + opens(o)).orElse("") + ".");
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
            out.println("  " + Texts.ENGLISH.fill(because.says(), because.figures()) + (because.cause().isEmpty() ? "" : " "
                    + Texts.ENGLISH.fill(because.cause(), because.figures())));
            if (!because.figures().isEmpty()) {
                out.println("      found: " + Texts.ENGLISH.of(because.figures()));
            }
            out.println("      " + because.id() + ", " + because.reason().basis().name().toLowerCase(Locale.ROOT)
                    .replace('_', ' ') + (because.allSources().isEmpty() ? "" : ", sources "
                    + String.join(", ", because.allSources())));
        }
    }

    private void section(String title, List<String> lines) {
        if (!lines.isEmpty()) {
            out.println();
            out.println(bold(title));
            lines.forEach(l -> out.println("  " + l));
        }
    }

    /** What would lift a bar, as one would say it. */
    private static String opens(String with) {
        return switch (with) {
            case "spent" -> "used up here";
            case "next_visit" -> "open again at the next visit";
            case "ask_product" -> "open once it is known what was put on it";
            case "buy" -> "open once it is bought";
            case "gauge" -> "open with a gauge reading";
            case "another_worker" -> "open for another worker";
            case "ventilate" -> "open with moving air";
            default -> "until " + words(with);
        };
    }

    /** A gate by its id where that is a word, else by its name. */
    private static String needed(Answer.GateState gate) {
        return gate.id().matches("g\\d+[a-z]?") ? Sentence.within(gate.name()) : words(gate.id());
    }

    private static String words(String id) {
        return id.replace('_', ' ');
    }

    private String bold(String text) {
        return colour ? "\u001b[1m" + text + "\u001b[0m" : text;
    }
}
