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
import rungwise.answer.ChanceWords;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.common.Sentence;
import rungwise.rules.said.Because;
import rungwise.text.Texts;
import rungwise.workup.Wet;

/** An answer for a person at a wash bay: the next step first, then the ladder, then what was left out and why. */
final class AnswerText {
    private static final int BARRED_SHOWN = 12;
    private static final int SOON_DRY_SHOWN = 4;
    /** The steps by which a method is passed over, in the order in which they are read; --why gives the figures. */
    private static final List<String> PASSED = List.of("enough", "needless", "changed-nothing", "same-again", "harsher-for-less", "finest-first",
            "real-chance", "slow", "not-worth-its-minutes", "pointless");

    private final KnowledgeBase base;
    private final PrintWriter out;
    private final boolean colour;
    private final ChanceWords chances;

    AnswerText(KnowledgeBase base, PrintWriter out) {
        this.base = base;
        this.out = out;
        this.chances = new ChanceWords(base.decisions());
        this.colour = System.console() != null && System.getenv("NO_COLOR") == null;
    }

    /** Prints all of it. */
    void print(Answer answer) {
        answer.mark().ifPresent(m -> out.println(m.text()));
        out.println(bold(heading(answer) + answer.next().method()
                .map(m -> ": " + base.methods().get(m).name()).orElse("")));
        out.println("  " + answer.next().text());
        wear("  " + say("wear"), answer.next().ppe());
        answer.next().until().ifPresent(u -> out.println("  " + say("until", "until", u)));
        answer.barred().stream().filter(b -> answer.next().method().filter(b.method()::equals).isPresent())
                .flatMap(b -> b.staysWet().stream()).forEach(w -> wet("would-stay-wet", w));
        answer.hold().ifPresent(h -> out.println("  " + say("hold", "what", h.what())));
        if (!answer.rungs().isEmpty()) {
            Answer.Rung rung = answer.rungs().get(0);
            if (answer.next().method().filter(rung.method()::equals).isPresent()) {
                wear("  " + say("wear"), rung.ppe());
                first(rung);
            }
            ladder(answer);
        }
        section(say("alternatives"), answer.alternatives().stream()
                .map(a -> say("of", "name", a.name(), "why", a.why())).toList());
        section(say("before"), answer.before().stream().flatMap(this::step).toList());
        section(say("after"), answer.after().stream().flatMap(this::step).toList());
        section(say("next-door"), answer.neighbours().stream().collect(Collectors.groupingBy(n -> say("next-door." + n.action(),
                "surface", base.surfaces().get(n.surface()).name()), TreeMap::new, Collectors.mapping(n ->
                base.methods().get(n.method()).name(), Collectors.joining(", ")))).entrySet().stream()
                .map(e -> e.getKey() + " " + e.getValue()).toList());
        section(say("advice"), answer.advice().stream().map(Answer.Advice::text).toList());
        never(say("never"), answer.never());
        never(say("not-now"), answer.notNow());
        never(say("used-up"), answer.usedUp());
        passedOver(answer);
        section(say("assumed"), answer.assumed().stream().map(a -> say("of", "name", a.fact(), "why", a.value())).toList());
        out.println();
        takesOver(answer);
        out.println(say("end", "revision", answer.revision()));
        UnusedFacts.lines(answer).forEach(out::println);
    }

    static String heading(Answer answer) {
        return say("action." + answer.next().action()).toUpperCase(Locale.ROOT);
    }

    private void takesOver(Answer answer) {
        answer.whoTakesOver().ifPresent(w -> out.println(say(answer.isStopped() ? "takes-over" : "nothing-left", "who", w.text())));
    }

    private Stream<String> step(Answer.Around step) {
        return Stream.of(Optional.of(step.onDry() ? say("onto-dry", "step", step.text()) : step.text()),
                step.dilution().filter(d -> d.matches(".*(\\d|part).*")).map(d -> "   " + say("step-mix", "mix", d)),
                step.watch().map(w -> "   " + say("step-watch", "watch", w)),
                step.rinse().map(r -> "   " + say("step-enough", "rinse", r.words())),
                Optional.of(step.wear()).filter(w -> step.onDry()).map(w -> "   " + say("step-wear", "wear",
                        w.stream().map(AnswerText::words).collect(Collectors.joining(", "))))).flatMap(Optional::stream);
    }

    private void passedOver(Answer answer) {
        Map<String, List<String>> byStep = new LinkedHashMap<>();
        PASSED.forEach(k -> byStep.put(k, new ArrayList<>()));
        answer.passedOver().forEach(p -> byStep.computeIfAbsent(p.step(), k -> new ArrayList<>()).add(p.step()
                .equals("pointless") ? p.name() : say("passed-over.one", "name", p.name(), "often", chances.word(p.chance()))));
        section(say("passed-over"), byStep.entrySet().stream().filter(e -> !e.getValue().isEmpty())
                .map(e -> say("of", "name", Texts.chosen().has("text.passed-over." + e.getKey()) ? say("passed-over." + e.getKey())
                        : e.getKey(), "why", String.join(", ", e.getValue()))).toList());
    }

    /** Bars by reason, as one reason often bars several; what is merely made for something else is only counted. */
    private void never(String title, List<Answer.Barred> barred) {
        List<Answer.Barred> elsewhere = barred.stream().filter(Answer.Barred::madeForOther).toList();
        Map<String, List<String>> byReason = new LinkedHashMap<>();
        barred.stream().filter(b -> !elsewhere.contains(b)).forEach(b -> byReason.computeIfAbsent(b.because().get(0)
                .says() + b.opensWith().map(o -> " " + say("opens", "opens", opens(o))).orElse(""), r -> new ArrayList<>())
                .add(b.name()));
        List<String> lines = new ArrayList<>();
        byReason.entrySet().stream().limit(BARRED_SHOWN).forEach(e -> lines.add(say("of", "name",
                String.join(", ", e.getValue()), "why", e.getKey())));
        if (byReason.size() > BARRED_SHOWN) {
            lines.add(say("more", "many", byReason.values().stream().skip(BARRED_SHOWN).mapToInt(List::size).sum()));
        }
        List<String> soonDry = barred.stream().filter(b -> b.opensWith().isPresent())
                .filter(b -> b.staysWet().filter(Wet::computed).isPresent())
                .sorted(Comparator.comparingDouble(b -> b.staysWet().get().toSeconds())).limit(SOON_DRY_SHOWN)
                .map(b -> b.name() + " " + span(b.staysWet().get())).toList();
        if (!soonDry.isEmpty()) {
            lines.add(say("soon-dry", "methods", String.join(", ", soonDry)));
        }
        if (!elsewhere.isEmpty()) {
            lines.add(say("made-for-other", "many", elsewhere.size()));
        }
        section(title, lines);
    }

    private void wear(String label, List<Answer.Ppe> ppe) {
        if (!ppe.isEmpty()) {
            out.println(label + " " + byPlace(ppe).entrySet().stream().map(e -> (e.getKey().isEmpty() ? "" : e.getKey() + ": ")
                    + e.getValue().stream().map(AnswerText::words).collect(Collectors.joining(", "))).collect(Collectors.joining("; ")));
        }
    }

    /** What to wear by the place that was not told and for which alone it is needed; what is needed everywhere first. */
    static Map<String, List<String>> byPlace(List<Answer.Ppe> ppe) {
        return ppe.stream().collect(Collectors.groupingBy(p -> p.where().orElse(""), TreeMap::new,
                Collectors.mapping(Answer.Ppe::item, Collectors.toList())));
    }

    private void first(Answer.Rung rung) {
        if (!rung.stopSigns().isEmpty()) {
            out.println("  " + say("stop-at", "signs", String.join(", ", rung.stopSigns())));
        }
        rung.agent().filter(a -> !a.mix().isEmpty()).ifPresent(a -> out.println("  " + say("mix", "agent", a.name(),
                "dilution", a.dilution(), "mix", a.mix())));
        rung.staysWet().ifPresent(w -> wet("stays-wet", w));
        rung.bridgeBefore().forEach(b -> out.println("  " + say("between", "step", b.text())
                + b.rinse().map(r -> " " + say("between-rinse", "agent", base.agents().get(b.after()).name(), "rinse", r.words())).orElse("")));
        rung.risks().forEach(r -> out.println("  " + say("mind", "risk", r.text())));
    }

    private void wet(String id, Wet wet) {
        if (wet.computed()) {
            out.println("  " + say(id, "span", span(wet)) + wet.atOnce().spots()
                    .map(s -> say(s == 1 ? "spot" : "spots", "many", s)).or(() -> wet.atOnce().areaM2().map(m -> say("area", "area", m)))
                    .map(most -> say("at-once", "most", most)).orElse(""));
        }
    }

    private static String span(Wet wet) {
        String from = minutes(wet.fromSeconds());
        String to = minutes(wet.toSeconds());
        return from.equals(to) ? from : Texts.said("span", "from", from, "to", to);
    }

    private static String minutes(double seconds) {
        return seconds < 120 ? say("seconds", "seconds", Math.round(seconds))
                : seconds < 7200 ? say("minutes", "minutes", Math.round(seconds / 60)) : say("hours");
    }

    private void ladder(Answer answer) {
        out.println();
        out.println(bold(say("ladder")));
        out.printf(Locale.ROOT, "  %-2s %-32s %-9s %-17s %-7s %-10s %s%n", "", say("column.method"), say("column.grades"), say("column.chance"),
                say("column.minutes"), say("column.dwell"), say("column.needed"));
        for (Answer.Rung rung : answer.rungs()) {
            Answer.Grades s = rung.severity();
            out.printf(Locale.ROOT, "  %-2d %-32s %-9s %-17s %-7s %-10s %s%n", rung.rank(), rung.name(),
                    s.mechanical() + " " + s.chemical() + " " + s.thermal() + " " + Figures.text(s.filmMicrons()),
                    rung.chance().word() + " " + drawn(rung.chance().bars()), Figures.text(Math.round(rung.minutes() * 10) / 10.0),
                    rung.dwell().to() == 0 ? "-" : Figures.text(rung.dwell().from()) + "–"
                            + Figures.text(rung.dwell().to()),
                    rung.gates().stream().filter(g -> g.state().equals(Answer.GateState.MISSING)).map(AnswerText::needed)
                            .collect(Collectors.joining(", ")));
            wear("     " + say("rung-wear"), rung.ppe());
            rung.bridgeBefore().stream().map(Answer.Bridge::text).distinct().forEach(b -> out.println("     " + say("rung-first", "step", b)));
        }
        List<String> tried = answer.rungs().stream().filter(r -> r.chance().tries() > 0 || !r.chance().basis().equals("prior"))
                .map(r -> say("here-of", "name", r.name(), "text", r.chance().text())).toList();
        out.println("  " + say("here", "tries", tried.isEmpty() ? say("here-none") : String.join("; ", tried)));
        Answer.Expected e = answer.ladder().orElseThrow().expected();
        boolean alike = e.minutes().tenth() == e.minutes().nineTenths();
        out.println("  " + say(alike ? "expected-alike" : "expected", "cleared", chances.word(e.chanceCleared()), "bars", drawn(chances.bars(e.chanceCleared())),
                "marked", chances.word(e.alreadyMarked()), "tenth", Math.round(e.minutes().tenth()), "nineTenths", Math.round(e.minutes().nineTenths())));
    }

    private static String drawn(int bars) {
        return ChanceWords.drawn(bars, Terminal.isPlain());
    }

    void why(Answer answer, String method) {
        String name = base.methods().get(method).name();
        answer.rungs().stream().filter(r -> r.method().equals(method)).findFirst().ifPresent(r -> {
            out.println(say("why.step", "name", name, "rank", r.rank(), "of", answer.rungs().size()));
            reasons(r.because());
            r.gates().forEach(g -> {
                out.println("  " + say("why.needed", "gate", needed(g), "state", say("state." + g.state()), "obtain", g.obtain()));
                reasons(g.because());
            });
        });
        answer.alternatives().stream().filter(a -> a.method().equals(method)).findFirst().ifPresent(a -> {
            out.println(say("why.alternative", "name", name, "why", a.why()));
            reasons(a.rung().because());
        });
        answer.never().stream().filter(b -> b.method().equals(method)).findFirst().ifPresent(b -> {
            out.println(say("why.never", "name", name));
            reasons(b.because());
        });
        answer.usedUp().stream().filter(b -> b.method().equals(method)).findFirst().ifPresent(b -> {
            out.println(say("why.used-up", "name", name));
            reasons(b.because());
        });
        answer.notNow().stream().filter(b -> b.method().equals(method)).findFirst().ifPresent(b -> {
            out.println(b.opensWith().map(o -> say("why.not-now-until", "name", name, "opens", opens(o)))
                    .orElseGet(() -> say("why.not-now", "name", name)));
            reasons(b.because());
            b.staysWet().ifPresent(w -> reasons(w.because()));
        });
        answer.passedOver().stream().filter(p -> p.method().equals(method)).findFirst().ifPresent(p -> {
            out.println(say("why.passed-over", "name", name, "step", p.step(), "why", p.why()));
            reasons(p.because());
        });
        if (CaseFile.isNowhere(answer, method)) {
            out.println(say("why.nowhere", "name", name, "next", answer.next().text()));
        }
    }

    private void reasons(List<Because> reasons) {
        for (Because because : reasons) {
            out.println("  " + Texts.chosen().fill(because.says(), because.figures()) + (because.cause().isEmpty() ? "" : " "
                    + Texts.chosen().fill(because.cause(), because.figures())));
            if (!because.figures().isEmpty()) {
                out.println("      " + say("why.found", "figures", Texts.chosen().of(because.figures())));
            }
            String basis = words(because.reason().basis().name().toLowerCase(Locale.ROOT));
            out.println("      " + (because.allSources().isEmpty() ? say("why.reason", "id", because.id(), "basis", basis)
                    : say("why.reason-sources", "id", because.id(), "basis", basis, "sources", String.join(", ", because.allSources()))));
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
        return Texts.chosen().has("text.opens." + with) ? say("opens." + with) : say("opens-else", "what", words(with));
    }

    /** A gate by its id where that is a word, else by its name. */
    private static String needed(Answer.GateState gate) {
        return gate.id().matches("g\\d+[a-z]?") ? Sentence.within(gate.name()) : words(gate.id());
    }

    static String words(String id) {
        return id.replace('_', ' ');
    }

    private String bold(String text) {
        return colour ? "\u001b[1m" + text + "\u001b[0m" : text;
    }

    private static String say(String id, Object... named) {
        return Texts.said("text." + id, named);
    }
}
