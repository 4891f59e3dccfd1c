package rungwise.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import rungwise.answer.Answer;
import rungwise.answer.LadderAnswer;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.common.Sentence;
import rungwise.rules.said.Because;
import rungwise.text.Texts;

/**
 * Two answers side by side: only what differs, and which rule or figure made the difference.
 *
 * @param asked   fields of the question that differ
 * @param methods where a method went in each, where that differs
 * @param others  everything else that differs
 */
public record Comparison(String revisionOne, String revisionOther, List<Asked> asked, Optional<NextChange> next,
                         List<Moved> methods, List<Other> others) {

    /** A field of the question. */
    public record Asked(String field, String one, String other) {
    }

    /** The next step, where it differs. */
    public record NextChange(Answer.Next one, Answer.Next other) {
    }

    /**
     * A method that went elsewhere, or stands there with another figure.
     *
     * @param because reasons that stand in only one of the two answers
     * @param figures figures that differ, in words
     */
    public record Moved(String method, String name, String one, String other, List<Reason> because,
                        List<String> figures) {
    }

    /** A reason that stands in only one of the two answers. */
    public record Reason(String standsIn, Because because) {
    }

    /** Something else that differs. */
    public record Other(String what, String one, String other) {
    }

    private record Place(String name, String words, List<Because> because, Map<String, String> figures) {
    }

    public boolean isEmpty() {
        return asked.isEmpty() && next.isEmpty() && methods.isEmpty() && others.isEmpty();
    }

    /**
     * Compares.
     *
     * @param asked what differs between the questions, see {@link Differences}
     */
    public static Comparison of(Answer one, Answer other, List<Asked> asked) {
        Map<String, Place> first = places(one);
        Map<String, Place> second = places(other);
        List<Moved> moved = new ArrayList<>();
        TreeSet<String> methods = new TreeSet<>(first.keySet());
        methods.addAll(second.keySet());
        Place nowhere = new Place("", Texts.said("compare.not-considered"), List.of(), Map.of());
        for (String method : methods) {
            Place a = first.getOrDefault(method, nowhere);
            Place b = second.getOrDefault(method, nowhere);
            List<String> figures = figures(a.figures(), b.figures());
            if (!a.words().equals(b.words()) || !figures.isEmpty()) {
                List<Reason> because = new ArrayList<>();
                a.because().stream().filter(r -> isNew(r, b)).forEach(r -> because.add(new Reason("one", r)));
                b.because().stream().filter(r -> isNew(r, a)).forEach(r -> because.add(new Reason("other", r)));
                moved.add(new Moved(method, a.name().isEmpty() ? b.name() : a.name(), a.words(), b.words(), because,
                        figures));
            }
        }
        boolean same = one.next().action().equals(other.next().action())
                && one.next().method().equals(other.next().method()) && one.next().text().equals(other.next().text());
        return new Comparison(one.revision(), other.revision(), asked,
                same ? Optional.empty() : Optional.of(new NextChange(one.next(), other.next())), moved,
                others(one, other));
    }

    private static boolean isNew(Because reason, Place there) {
        return there.because().stream().noneMatch(r -> r.name().equals(reason.name())
                && r.figures().equals(reason.figures()));
    }

    private static Map<String, Place> places(Answer answer) {
        Map<String, Place> places = new TreeMap<>();
        answer.never().forEach(b -> places.put(b.method(), new Place(b.name(), Texts.said("compare.never"), b.because(), Map.of())));
        answer.usedUp().forEach(b -> places.put(b.method(), new Place(b.name(), Texts.said("compare.used-up"), b.because(), Map.of())));
        answer.notNow().forEach(b -> places.put(b.method(), new Place(b.name(), b.opensWith()
                .map(o -> Texts.said("compare.not-now-until", "opens", words(o))).orElseGet(() -> Texts.said("compare.not-now")),
                        b.because(), Map.of())));
        answer.passedOver().forEach(p -> places.put(p.method(), new Place(p.name(), Texts.said("compare.passed-over", "step", p.step()),
                p.because(), Map.of(Texts.said("compare.chance"), Figures.text(p.chance())))));
        answer.alternatives().forEach(a -> places.put(a.method(), new Place(a.name(), Texts.said("compare.alternative"),
                reasons(a.rung()), figures(a.rung()))));
        answer.rungs().forEach(r -> places.put(r.method(), new Place(r.name(), Texts.said("compare.step", "rank", r.rank()), reasons(r),
                figures(r))));
        return places;
    }

    private static List<Because> reasons(Answer.Rung rung) {
        List<Because> reasons = new ArrayList<>(rung.because());
        rung.gates().forEach(g -> reasons.addAll(g.because()));
        rung.bridgeBefore().forEach(b -> reasons.addAll(b.because()));
        return reasons;
    }

    private static Map<String, String> figures(Answer.Rung rung) {
        Map<String, String> figures = new TreeMap<>();
        figures.put(Texts.said("compare.chance"), Figures.text(rung.chance().mean()));
        figures.put(Texts.said("compare.severity"), rung.severity().mechanical() + " " + rung.severity().chemical() + " "
                + rung.severity().thermal() + " " + Figures.text(rung.severity().filmMicrons()));
        figures.put(Texts.said("compare.minutes"), Figures.text(rung.minutes()));
        figures.put(Texts.said("compare.dwell-min"), Texts.said("compare.dwell-span", "from", rung.dwell().from(), "to", rung.dwell().to()));
        rung.gates().forEach(g -> figures.put(Texts.said("compare.needed-first", "name", Sentence.within(g.name())), g.state()));
        return figures;
    }

    private static List<String> figures(Map<String, String> one, Map<String, String> other) {
        TreeSet<String> names = new TreeSet<>(one.keySet());
        names.addAll(other.keySet());
        List<String> figures = new ArrayList<>();
        for (String name : names) {
            String a = one.getOrDefault(name, none());
            String b = other.getOrDefault(name, none());
            if (!a.equals(b) && !one.isEmpty() && !other.isEmpty()) {
                figures.add(name + ": " + a + " → " + b);
            }
        }
        return figures;
    }

    private static List<Other> others(Answer one, Answer other) {
        List<Other> others = new ArrayList<>();
        add(others, Texts.said("compare.hold"), one.hold().map(Answer.Held::what).orElseGet(Comparison::none),
                other.hold().map(Answer.Held::what).orElseGet(Comparison::none));
        add(others, Texts.said("compare.belief-hardened"), figure(one, l -> l.belief().hardened()), figure(other, l -> l.belief().hardened()));
        add(others, Texts.said("compare.belief-marked"), figure(one, l -> l.belief().marked()), figure(other, l -> l.belief().marked()));
        add(others, Texts.said("compare.before"), steps(one.before()), steps(other.before()));
        add(others, Texts.said("compare.after"), steps(one.after()), steps(other.after()));
        add(others, Texts.said("compare.way-out"), wayOut(one), wayOut(other));
        add(others, Texts.said("compare.assumed"), joined(one.assumed().stream().map(a -> a.fact() + ": " + a.value())),
                joined(other.assumed().stream().map(a -> a.fact() + ": " + a.value())));
        add(others, Texts.said("compare.chance-cleared"), figure(one, l -> l.expected().chanceCleared()),
                figure(other, l -> l.expected().chanceCleared()));
        add(others, Texts.said("compare.likely-minutes"), figure(one, l -> l.expected().minutes().likely()),
                figure(other, l -> l.expected().minutes().likely()));
        return others;
    }

    private static String figure(Answer answer, ToDoubleFunction<LadderAnswer> figure) {
        return answer.ladder().map(l -> Figures.text(figure.applyAsDouble(l))).orElseGet(Comparison::none);
    }

    private static String steps(List<Answer.Around> steps) {
        return joined(steps.stream().map(s -> words(s.step())));
    }

    private static String wayOut(Answer answer) {
        return answer.ladder().map(l -> l.wayOut().text().replaceAll("\\.$", "")).orElseGet(Comparison::none);
    }

    private static String none() {
        return Texts.said("compare.empty");
    }

    private static String joined(Stream<String> words) {
        return words.reduce((a, b) -> a + ", " + b).orElseGet(Comparison::none);
    }

    /** An id as one would say it. */
    private static String words(String id) {
        return id.replace('_', ' ');
    }

    private static void add(List<Other> others, String what, String one, String other) {
        if (!one.equals(other)) {
            others.add(new Other(what, one, other));
        }
    }
}
