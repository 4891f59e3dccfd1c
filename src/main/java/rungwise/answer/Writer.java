package rungwise.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.decision.AssumptionId;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.MethodKind;
import rungwise.ladder.Choice;
import rungwise.ladder.Ladder;
import rungwise.ladder.NextStep;
import rungwise.ladder.PassedOver;
import rungwise.ladder.Still;
import rungwise.ladder.Surroundings;
import rungwise.ladder.Verdict;
import rungwise.question.FactUse;
import rungwise.question.Question;
import rungwise.rules.said.Action;
import rungwise.rules.said.Advice;
import rungwise.rules.said.Bar;
import rungwise.rules.said.Because;
import rungwise.rules.said.Concluded;
import rungwise.rules.said.FlushFirst;
import rungwise.rules.said.Hold;
import rungwise.rules.said.Reason;
import rungwise.text.Figure;
import rungwise.text.Texts;
import rungwise.workup.Rinses;
import rungwise.workup.Taking;
import rungwise.workup.Wet;
import rungwise.workup.Wetness;

/** Writes a ladder out as an answer. */
final class Writer {
    /** Advice of this kind says how a mark is looked at. */
    private static final String OF_THE_MARK = "mark";

    private final KnowledgeBase base;
    private final Ladder ladder;
    private final Question question;
    private final Texts texts;
    private final boolean all;
    private final Surroundings around;
    private final StepWriter steps;
    private final RungWriter rungs;
    private final NextWriter next;

    /**
     * A writer.
     *
     * @param all name also what is barred and could never matter here
     */
    Writer(Ladder ladder, boolean all, Texts texts) {
        this.base = ladder.revision().base();
        this.ladder = ladder;
        this.question = ladder.situation().question();
        this.texts = texts;
        this.all = all;
        this.around = new Surroundings(ladder);
        Rinses rinses = ladder.revision().worked().rinses().by(question.setting().water());
        this.steps = new StepWriter(ladder, around, rinses, texts);
        this.rungs = new RungWriter(ladder, around, steps, rinses);
        this.next = new NextWriter(ladder, around, steps, rungs, texts);
    }

    Answer answer() {
        return ladder.situation().isStopped() ? stopped() : laddered();
    }

    private Answer stopped() {
        NextStep step = NextStep.of(ladder, around);
        StoppedAnswer answer = new StoppedAnswer(base.revision(), ladder.asked(), facts(), assumed().stream()
                .filter(a -> FactUse.countsWhereWorkStops(a.fact())).toList(), held(),
                next.of(step, List.of()), call(step).map(m -> next.wayOut(step)), firstAid(step), Map.of());
        return answer.with(Reasons.in(answer));
    }

    private Optional<Answer.FirstAid> firstAid(NextStep step) {
        return step.said().conclusion().action() != Action.FLUSH ? Optional.empty() : ladder.situation().derived().of(FlushFirst.class).stream()
                .map(Concluded::conclusion).filter(f -> f.method().equals(step.said().conclusion().method())).findFirst()
                .map(f -> new Answer.FirstAid(f.method(), f.act(), f.aid().avoid(), f.aid().until(), f.aid().why(), f.aid().off(),
                        f.aid().left()));
    }

    /** What holds all work says itself whom to call; a trade for the surface helps only where the deposit or harm stops it. */
    private Optional<Method> call(NextStep step) {
        boolean byDeposit = ladder.situation().isForAnotherTrade();
        return Optional.of(step.wayOut()).filter(m -> m.kind() == MethodKind.REFER && (held().isEmpty() || byDeposit));
    }

    private Optional<Answer.Held> held() {
        List<Concluded<Hold>> holds = ladder.situation().derived().of(Hold.class);
        return holds.isEmpty() ? Optional.empty() : Optional.of(new Answer.Held(
                String.join("; ", holds.stream().map(h -> h.conclusion().what()).distinct().toList()),
                String.join(" ", holds.stream().map(h -> h.conclusion().doFirst()).distinct().toList()),
                String.join("; ", holds.stream().map(h -> h.conclusion().until()).distinct().toList()),
                holds.stream().map(Concluded::because).toList()));
    }

    private Answer laddered() {
        NextStep step = NextStep.of(ladder, around);
        List<Answer.Rung> written = rungs.rungs();
        Map<String, List<Answer.Barred>> barred = barred();
        LadderAnswer answer = new LadderAnswer(base.revision(), ladder.asked(), facts(), mark(), reckonedWith(), state(), steps.of("before"),
                written, ladder.slow().stream().map(this::alternative).toList(), passedOver(), barred.get("never"), barred.get("notNow"),
                barred.get("usedUp"), neighbours(written), steps.of("after"), next.wayOut(step),
                next.of(step, written), expected(written), around.advice().stream().map(a -> advice(a)).distinct().toList(), Map.of());
        return answer.with(Reasons.in(answer));
    }

    private FactUse facts() {
        return FactUse.of(ladder.asked(), base, CameBy.of(ladder, around));
    }

    private Optional<Answer.Mark> mark() {
        return ladder.bared().map(b -> {
            List<Concluded<Advice>> look = around.advice().stream().filter(a -> a.conclusion().about().equals(OF_THE_MARK)).toList();
            List<Because> because = new ArrayList<>(List.of(StepWriter.entry(b.deposit())));
            look.forEach(a -> because.add(a.because()));
            return new Answer.Mark(b.deposit().id(), b.mark().id(), b.mark().name(), texts.say("mark.shows", "deposit", b.deposit().name(),
                    "look", look.stream().map(a -> a.conclusion().text()).distinct().collect(Collectors.joining(" "))), because);
        });
    }

    private static Answer.Advice advice(Concluded<Advice> said) {
        return new Answer.Advice(said.conclusion().about(), said.conclusion().text(), List.of(said.because()));
    }

    private List<Answer.Assumed> assumed() {
        return ladder.situation().assumptions().stream().map(a -> new Answer.Assumed(a.conclusion().fact(),
                a.conclusion().value(), List.of(a.because()))).distinct().toList();
    }

    /** What chances, beliefs and minutes rest on besides: how warm it has been, and that spots differ. */
    private List<Answer.Assumed> reckonedWith() {
        List<Answer.Assumed> more = new ArrayList<>(assumed());
        if (ladder.situation().warmthIsAssumed()) {
            more.add(assumed("warmestPanelC", AssumptionId.WARMEST_PANEL));
        }
        more.add(assumed("spots", AssumptionId.STUBBORN_SPOTS));
        return more;
    }

    private Answer.Assumed assumed(String fact, AssumptionId id) {
        return new Answer.Assumed(fact, texts.say("assumed." + id.id(), "value", base.assumptions().value(id)),
                List.of(Because.of(Reason.assumption(base.assumptions().of(id)), List.of())));
    }

    private Answer.State state() {
        double hardened = ladder.hardened();
        return new Answer.State(Figures.thousandths(1 - hardened), Figures.thousandths(hardened), Figures.thousandths(ladder.marked()));
    }

    private Answer.Alternative alternative(Choice choice) {
        return new Answer.Alternative(choice.id(), choice.method().name(),
                texts.say("alternative.slow", "minutes", choice.method().dwell().usual()), rungs.alone(choice));
    }

    private List<Answer.PassedOver> passedOver() {
        Map<String, Answer.PassedOver> passed = new TreeMap<>();
        for (PassedOver one : ladder.passed().values()) {
            List<Because> because = explained(one);
            passed.put(one.choice().id(), new Answer.PassedOver(one.choice().id(), one.choice().method().name(), one.step(),
                    texts.of(because.get(because.size() - 1).figures()), Figures.thousandths(ladder.mean(one.choice())), because));
        }
        return List.copyOf(passed.values());
    }

    /** A chance that is too small says what of the likeliest deposit the method leaves, and what is known of the two. */
    private List<Because> explained(PassedOver one) {
        Because last = one.because().get(one.because().size() - 1);
        if (!one.step().equals(DecisionId.POINTLESS.id())) {
            return one.because();
        }
        Contaminant deposit = base.contaminants().get(ladder.belief().keySet().iterator().next()).on(ladder.situation().asked());
        List<Because> because = new ArrayList<>(one.because().subList(0, one.because().size() - 1));
        List<Figure> figures = new ArrayList<>(last.figures());
        Taking.of(one.choice().method(), deposit, ladder.hardened() > 0.5).ifPresent(figures::add);
        Optional<Contaminant.Remark> remark = deposit.remark(one.choice().id());
        remark.ifPresent(r -> figures.add(Figure.of("why", r.why())));
        because.add(new Because(last.reason(), figures, remark.map(Contaminant.Remark::sources).orElse(last.sources())));
        return because;
    }

    /** What is barred, by whether it is for good, for now, or for what was tried. */
    private Map<String, List<Answer.Barred>> barred() {
        Map<String, List<Answer.Barred>> kinds = new TreeMap<>(Map.of("never", new ArrayList<>(), "notNow", new ArrayList<>(),
                "usedUp", new ArrayList<>()));
        Map<String, List<Concluded<Bar>>> bars = new TreeMap<>();
        ladder.verdicts().all().forEach((id, verdict) -> bars.put(id, verdict.bars()));
        for (Map.Entry<String, Verdict> one : ladder.revision().standingOn(ladder.situation().surface()).entrySet()) {
            if (base.methods().containsKey(one.getKey()) && (all || question.wanted().contains(one.getKey()))) {
                bars.putIfAbsent(one.getKey(), one.getValue().bars());
            }
        }
        bars.forEach((id, here) -> {
            if (!here.isEmpty()) {
                kinds.get(kind(here)).add(barred(id, here));
            }
        });
        return kinds;
    }

    private static String kind(List<Concluded<Bar>> bars) {
        Set<Bar.Kind> kinds = bars.stream().map(b -> b.conclusion().kind()).collect(Collectors.toSet());
        return kinds.contains(Bar.Kind.NEVER) || kinds.contains(Bar.Kind.MADE_FOR_OTHER) ? "never"
                : kinds.contains(Bar.Kind.USED_UP) ? "usedUp" : "notNow";
    }

    private Answer.Barred barred(String id, List<Concluded<Bar>> bars) {
        boolean opens = bars.stream().noneMatch(b -> b.conclusion().opensWith().isEmpty());
        Optional<String> with = opens ? Optional.of(String.join(" and ", bars.stream()
                .map(b -> b.conclusion().opensWith()).distinct().sorted().toList())) : Optional.empty();
        Method method = base.methods().get(id);
        Optional<Wet> wet = bars.stream().allMatch(b -> b.conclusion().isWeather())
                ? rungs.wetness().of(ladder.verdicts().use(method), Wetness.dwell(method, ladder.verdicts().of(id).narrows()))
                : Optional.empty();
        return new Answer.Barred(id, method.name(), bars.stream().allMatch(b -> b.conclusion().kind() == Bar.Kind.MADE_FOR_OTHER), with, wet, bars.stream().map(Concluded::because).distinct().toList());
    }

    /** What the rungs would do next door, and what is left out for its sake though it had a real chance. */
    private List<Answer.Neighbour> neighbours(List<Answer.Rung> written) {
        double real = base.decisions().value(DecisionId.REAL_CHANCE);
        return ladder.verdicts().neighbourNotes().stream()
                .filter(n -> n.conclusion().action().equals("barred")
                        ? !written.isEmpty() && ladder.chance(n.conclusion().method()) >= real
                        : written.stream().anyMatch(r -> r.method().equals(n.conclusion().method())))
                .map(n -> new Answer.Neighbour(n.conclusion().surface(), n.conclusion().method(),
                        n.conclusion().action(), List.of(n.because()))).distinct().toList();
    }

    private Answer.Expected expected(List<Answer.Rung> written) {
        Still left = ladder.still();
        double unmarked = 1;
        double likely = 0;
        double worst = 0;
        double spent = 0;
        double tenth = 0;
        double nineTenths = 0;
        for (int i = 0; i < written.size(); i++) {
            Choice choice = ladder.rungs().get(i);
            double reached = left.reached();
            double minutes = rungs.minutes(choice.method());
            likely += reached * minutes;
            worst += minutes * choice.method().tries();
            unmarked *= 1 - reached * choice.markChance();
            left = left.after(choice);
            // who is not done with this rung goes on with the next; who has none left stops here
            boolean isLast = i + 1 == written.size();
            double done = isLast ? 1 : 1 - left.reached();
            tenth = done >= 0.1 && tenth == 0 ? spent + minutes : tenth;
            nineTenths = done >= 0.9 && nineTenths == 0 ? spent + minutes : nineTenths;
            spent += minutes;
        }
        double best = written.isEmpty() ? 0 : rungs.minutes(ladder.rungs().get(0).method());
        return new Answer.Expected(written.isEmpty() ? 0 : Figures.thousandths(1 - left.reached()), Figures.thousandths(ladder.marked()),
                Figures.thousandths(1 - unmarked),
                new Answer.Took(Figures.thousandths(best), Figures.thousandths(likely), Figures.thousandths(worst), whole(tenth), whole(nineTenths)));
    }

    /** Nobody times a spot to the second, nor a long one to the minute. */
    private static double whole(double minutes) {
        return minutes < 20 ? Math.ceil(minutes) : 5 * Math.ceil(minutes / 5);
    }
}
