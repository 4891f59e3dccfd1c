package rungwise.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import rungwise.answer.Answer;
import rungwise.card.Before;
import rungwise.card.Dwelling;
import rungwise.card.KeptOff;
import rungwise.card.Lying;
import rungwise.card.PlainTime;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Sentence;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.safety.Protective;
import rungwise.rules.said.Because;
import rungwise.text.Texts;
import rungwise.workup.Wet;

/**
 * An answer as a card to hang beside the vehicle: what to do now, what to wear, when to stop, what then. It never runs over one
 * page; what does not fit is counted, and printed by --all.
 */
final class Card {
    /** Lines of one page. */
    static final int PAGE = 34;
    private static final String ALL = "--all";
    /** Cautions for the vehicle; those for people are all said. */
    private static final int CAUTIONS = 2;
    /** About as many lines as defer to data sheets. */
    private static final int LAST = 2;
    private static final int AFTERWARDS = 3;
    private static final int THEN = 3;
    private static final Set<String> WITH_A_METHOD = Set.of("try", "test", "prepare", "repeat");

    private static final String FIRST_AID = "flush";
    private static final String SAFETY = "safety";

    private final KnowledgeBase base;
    private final Page page;

    Card(KnowledgeBase base, int width, boolean plain) {
        this.base = base;
        this.page = new Page(width, plain);
    }

    /** As wide and as plain as where it is printed. */
    static Card on(CommandSpec spec, KnowledgeBase base) {
        return new Card(base, Terminal.width(spec), Terminal.isPlain());
    }

    /**
     * The lines of the card.
     *
     * @param asked how the question was asked, to ask it again
     */
    List<String> lines(Answer answer, String asked) {
        return lines(answer, method -> say("tell-me", "asked", asked, "method", method), ALL);
    }

    /** The same of a spot that is kept. */
    List<String> ofSpot(Answer answer, String id) {
        return lines(answer, method -> say("tell-spot", "id", id, "method", method), say("all-of-spot", "id", id));
    }

    /**
     * The lines.
     *
     * @param tell how to say how a method went
     * @param all  what prints all of it
     */
    private List<String> lines(Answer answer, UnaryOperator<String> tell, String all) {
        List<String> telling = List.of();
        List<String> why = List.of();
        now(answer);
        if (answer.isStopped()) {
            page.add(say("avoid"), answer.firstAid().map(Answer.FirstAid::avoid).orElse(""));
            page.add(say("until"), answer.hold().map(Answer.Held::until).or(() -> answer.firstAid().map(Answer.FirstAid::until))
                    .or(() -> answer.next().until()).orElse(""));
            page.add(say("wear"), wear(answer.next().ppe()));
            page.add(say("why"), answer.firstAid().map(Answer.FirstAid::why).orElse(""));
            page.add(say("if-off"), answer.firstAid().map(Answer.FirstAid::ifOff).orElse(""));
            page.add(say("if-not"), answer.firstAid().map(Answer.FirstAid::ifNot).orElse(""));
            page.add(say("call"), answer.whoTakesOver().map(Answer.WayOut::text).orElse(""));
            page.add(say("tell"), answer.next().method().filter(m -> answer.next().action().equals(FIRST_AID)).map(tell).orElse(""));
        } else {
            Optional<Answer.Rung> first = answer.rungs().stream().findFirst().filter(r -> answer.next().method().filter(r.method()::equals)
                    .isPresent() && WITH_A_METHOD.contains(answer.next().action()));
            if (first.isPresent()) {
                why = doing(answer, first.get());
            } else {
                handingOver(answer);
            }
            page.add(say("until"), answer.next().until().orElse(""));
            page.add(say("dries"), answer.notNow().stream().filter(b -> answer.next().method().filter(b.method()::equals).isPresent())
                    .flatMap(b -> b.staysWet().stream()).filter(Wet::computed).findFirst()
                    .map(w -> say("dries-now", "dries", PlainTime.ofMinutes(w.fromSeconds() / 60))).orElse(""));
            telling = added(say("tell"), first.isEmpty() ? "" : tell.apply(first.get().method()));
            then(answer, first.isPresent() ? 1 : 0);
            barred(answer);
            page.add(say("unused"), String.join(", ", UnusedFacts.names(answer)));
        }
        int at = Collections.indexOfSubList(page.lines(), why);
        if (!why.isEmpty() && at >= 0 && page.lines().size() > PAGE - LAST) {
            page.lines().subList(at, at + why.size()).clear();
        }
        int body = page.lines().size();
        page.add("", say("sheets", "all", all, "revision", answer.revision()));
        return cut(page.lines(), telling, page.lines().size() - body, all);
    }

    private void now(Answer answer) {
        page.add(say("mark"), answer.mark().map(Answer.Mark::text).orElse(""));
        page.add(AnswerText.heading(answer), answer.hold().map(h -> say("hold", "what", h.what(), "first", h.doFirst()))
                .or(() -> answer.next().method().filter(m -> WITH_A_METHOD.contains(answer.next().action())).map(m -> base.methods().get(m).name() + "."))
                .orElseGet(() -> answer.next().method().filter(m -> answer.next().action().equals(FIRST_AID))
                        .map(m -> base.methods().get(m).name() + ". ").orElse("") + answer.firstAid().map(Answer.FirstAid::act).orElse(answer.next().text())));
    }

    /**
     * The first step: what to ask and do before it, mix, how, how long, what to wear, when to stop, and why.
     *
     * @return the lines of the reason, which give way first where a card is too long
     */
    private List<String> doing(Answer answer, Answer.Rung rung) {
        List<Answer.GateState> missing = rung.gates().stream().filter(g -> rung.isMissing(g.id())).toList();
        List<String> first = new ArrayList<>();
        Before.of(base, answer, rung).lines(answer.next().steps(), missing).forEach(l -> first.add(first.size() + 1 + ". " + l));
        page.add(say("ask"), missing.stream().filter(g -> base.gates().get(g.id()).asks()).map(g -> g.name() + "?").collect(Collectors.joining(" ")));
        page.add(say("first"), first);
        page.add(say("mix"), rung.agent().filter(a -> !a.dilution().isEmpty()).map(a -> (a.name().equals(rung.name()) ? "" : a.name() + ", ")
                + a.dilution() + (a.mix().isEmpty() ? "" : ". " + a.mix())).orElse(""));
        Dwelling dwelling = Dwelling.of(rung);
        page.add(say("how"), how(rung.parts(), dwelling));
        page.add(say("see"), see(answer, rung));
        page.add(say("wear"), Stream.of(wear(rung.ppe()), gloves(rung)).filter(w -> !w.isEmpty()).collect(Collectors.joining("; ")));
        page.add(say("stop"), rung.stopSigns().stream().filter(dwelling::reaches).collect(Collectors.joining(", ")));
        List<Answer.Risk> risks = rung.risks().stream().filter(r -> glove(r).isEmpty()).toList();
        page.add(say("caution"), once(Stream.concat(risks.stream().filter(Answer.Risk::toPeople),
                risks.stream().filter(r -> !r.toPeople()).limit(CAUTIONS)).map(Answer.Risk::text)));
        return added(say("why"), rung.because().stream().limit(1).map(Card::said).collect(Collectors.joining())
                + " " + say("works", "often", often(rung.chance().mean())));
    }

    /** Adds to the page, and gives the lines that were added. */
    private List<String> added(String label, String text) {
        int before = page.lines().size();
        page.add(label, text);
        return List.copyOf(page.lines().subList(before, page.lines().size()));
    }

    /** Where nothing is tried: what to do, what to mind, and by which reasons all that could be tried is kept off. */
    private void handingOver(Answer answer) {
        page.add(say("how"), answer.next().method().map(m -> base.methods().get(m).inOneGo()).orElse(""));
        page.add(say("caution"), answer.advice().stream().filter(a -> a.about().equals(SAFETY)).map(Answer.Advice::text).toList());
        page.add(say("after"), answer.after().stream().map(Answer.Around::text).toList());
        page.add(say("why"), damage(answer).or(() -> new KeptOff(base, answer).reason())
                .or(() -> answer.next().because().stream().findFirst().map(Card::said)).orElse(""));
    }

    /** The texts without the sentences that an earlier one has said. */
    private static List<String> once(Stream<String> texts) {
        Set<String> said = new HashSet<>();
        return texts.map(text -> Arrays.stream(text.split("(?<=[.])\\s+")).filter(said::add).collect(Collectors.joining(" ")))
                .filter(text -> !text.isEmpty()).toList();
    }

    /** In one go, or part by part with the time last. */
    private static List<String> how(List<String> parts, Dwelling dwelling) {
        String first = parts.size() == 1 ? parts.get(0) + " " : "";
        List<String> how = new ArrayList<>();
        parts.stream().skip(first.isEmpty() ? 0 : 1).forEach(p -> how.add(how.size() + 1 + ". " + p));
        how.add((first + dwelling.words()).strip());
        return how;
    }

    /** By how the deposit lies, where it is known by name and on one surface; else by the way of working. */
    private String see(Answer answer, Answer.Rung rung) {
        Method method = base.methods().get(rung.method());
        return Optional.of(Lying.of(base, answer)).filter(l -> answer.mark().isEmpty()).flatMap(l -> l.seen(base, method))
                .orElse(base.mechanismOf(method).see());
    }

    private static String said(Because because) {
        return Texts.chosen().fill(because.says(), because.figures());
    }

    /** What a named damage is: that there is nothing to clean is reason enough. */
    private Optional<String> damage(Answer answer) {
        return answer.question().contaminant().map(base.contaminants()::get).filter(c -> c != null && c.isDamage()).map(c -> c.what() + ".");
    }

    /** The glove of a caution that speaks of gloves; it is read beside what else is worn. */
    private static Optional<String> glove(Answer.Risk risk) {
        return risk.because().stream().flatMap(b -> b.figures().stream()).filter(f -> f.name().equals("glove"))
                .map(f -> risk.text()).findFirst();
    }

    private static String gloves(Answer.Rung rung) {
        return rung.risks().stream().map(Card::glove).flatMap(Optional::stream).distinct().map(Sentence::within)
                .map(g -> g.replaceFirst("[.]$", "")).collect(Collectors.joining("; "));
    }

    /** Sets spelled out, and for a place that was not told what it alone asks for. */
    private String wear(List<Answer.Ppe> ppe) {
        Map<String, List<String>> byPlace = AnswerText.byPlace(ppe);
        List<String> everywhere = Protective.spelledOut(byPlace.getOrDefault("", List.of()), base.ppe());
        List<String> parts = new ArrayList<>();
        byPlace.forEach((place, items) -> {
            String words = Protective.spelledOut(items, base.ppe()).stream().filter(i -> place.isEmpty() || !everywhere.contains(i))
                    .map(AnswerText::words).collect(Collectors.joining(", "));
            if (!words.isEmpty()) {
                parts.add(place.isEmpty() ? words : place + ": " + words);
            }
        });
        return String.join("; ", parts);
    }

    private void then(Answer answer, int from) {
        List<String> next = answer.rungs().stream().skip(from).limit(THEN).map(r -> r.name() + " (" + often(r.chance().mean()) + ")").toList();
        int more = answer.rungs().size() - from - next.size();
        List<String> all = new ArrayList<>(next);
        if (more > 0) {
            all.add(say("more", "many", more));
        }
        answer.whoTakesOver().filter(w -> !answer.rungs().isEmpty()).ifPresent(w -> all.add(say("else", "who", Sentence.within(w.text()))));
        page.add(say("then"), String.join("; ", all));
        if (!answer.rungs().isEmpty()) {
            page.add(say("after"), answer.after().stream().map(Answer.Around::text).distinct().limit(AFTERWARDS).collect(Collectors.joining(" ")));
        }
    }

    /** What a hand may reach for and must not: of those made for this material. */
    private void barred(Answer answer) {
        KeptOff off = new KeptOff(base, answer);
        page.add(say("never"), off.names(answer.never()));
        page.add(say("not-now"), off.names(answer.notNow()));
        page.add(say("used-up"), off.names(answer.usedUp()));
    }

    private String often(double chance) {
        return say(chance < base.decisions().value(DecisionId.SOMETIMES_FROM) ? "seldom"
                : chance < base.decisions().value(DecisionId.OFTEN_FROM) ? "sometimes"
                : chance < base.decisions().value(DecisionId.USUALLY_FROM) ? "often" : "usually");
    }

    /**
     * One page. How to answer stays on it, and so do the last lines.
     *
     * @param keep how many of the last lines, which defer to data sheets, always stay
     */
    private List<String> cut(List<String> lines, List<String> telling, int keep, String all) {
        if (lines.size() <= PAGE) {
            return List.copyOf(lines);
        }
        Page end = new Page(page.width(), page.plain());
        end.add("", say("rest", "many", lines.size() - PAGE, "all", all));
        end.lines().addAll(lines.subList(lines.size() - keep, lines.size()));
        List<String> begins = lines.subList(0, PAGE - end.lines().size());
        List<String> shown = Collections.indexOfSubList(begins, telling) >= 0 ? begins
                : Stream.concat(begins.subList(0, begins.size() - telling.size()).stream(), telling.stream()).toList();
        return Stream.concat(shown.stream(), end.lines().stream()).toList();
    }

    private static String say(String id, Object... named) {
        return Texts.said("card." + id, named);
    }
}
