package rungwise.ladder;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import rungwise.knowledge.Agent;
import rungwise.knowledge.Figures;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Method;
import rungwise.knowledge.ToolKind;
import rungwise.question.Question;
import rungwise.rules.Because;
import rungwise.rules.Clash;
import rungwise.rules.Reason;
import rungwise.science.ChanceRange;

/**
 * Answers for a spot whose contaminant is only believed. It holds one question; beliefs may be put to it one after
 * another, and what was worked out for a contaminant is kept. Not for several threads.
 */
public final class SpotAdvisor {
    private final Advisor advisor;
    private final KnowledgeBase base;
    private final Question question;
    private final Prospects prospects;

    /**
     * An advisor for one question.
     *
     * @param chances what the shop's log teaches; it moves no belief in what the deposit is, since a belief can lift a bar
     */
    public SpotAdvisor(Advisor advisor, Question question, ChanceTable chances) {
        this.advisor = advisor;
        this.base = advisor.knowledge();
        this.question = question;
        this.prospects = new Prospects(advisor, question, chances);
    }

    /**
     * What a belief leads to, in short.
     *
     * @param minutes expected worker minutes, referral included
     * @param first   the first rung; empty where work is held or none is left
     */
    public record Outlook(double minutes, Optional<String> first, boolean held) {
    }

    /** Short form of {@link #answer}, for weighing what a check would be worth. */
    public Outlook outlook(Believed belief) {
        Mix mix = new Mix(advisor, question, prospects, belief, true);
        return new Outlook(mix.cost(), mix.rungs().stream().findFirst().map(a -> a.method().id()), mix.isHeld());
    }

    /**
     * One ladder over all that the deposit may be.
     *
     * @param belief each summing to one
     */
    public Answer answer(Believed belief) {
        Mix mix = new Mix(advisor, question, prospects, belief, false);
        List<Answer> all = mix.asked().stream().map(mix::answerFor).toList();
        List<Answer> hazards = mix.hazards().map(mix::answerFor).toList();
        Answer likeliest = all.get(0);
        Optional<Answer.Held> hold = hazards.stream().flatMap(a -> a.hold().stream()).findFirst();
        boolean stopped = hold.isPresent() || hazards.stream().anyMatch(a -> Set.of("flush", "stop")
                .contains(a.next().action()));
        List<Answer.Rung> rungs = stopped ? List.of() : rungs(mix);
        List<Answer.Alternative> alternatives = stopped ? List.of() : alternatives(mix, all, rungs);
        Set<String> barred = mix.barred();
        return new Answer(base.revision(), question,
                union(all, Answer::assumed, a -> a.fact() + a.value(), (a, b) -> a), hold, state(mix),
                around(all, Answer::before, barred), rungs, alternatives, passedOver(mix, all, rungs, alternatives),
                union(all, Answer::barred, Answer.Barred::method, (a, b) -> a.because().size() >= b.because().size()
                        ? a : b).stream().filter(b -> barred.contains(b.method())).toList(),
                union(all, Answer::neighbours, n -> n.surface() + n.method(), (a, b) -> a).stream().filter(n -> rungs
                        .stream().anyMatch(r -> r.method().equals(n.method()))).toList(),
                around(all, Answer::after, barred), likeliest.wayOut(),
                next(hold, hazards, mix, rungs, alternatives), expected(mix, rungs),
                union(all, Answer::advice, Answer.Advice::text, (a, b) -> a));
    }

    private Answer.State state(Mix mix) {
        double sum = mix.asked().stream().mapToDouble(mix::weight).sum();
        double hardened = 0;
        double marked = 0;
        for (String id : mix.asked()) {
            hardened += mix.weight(id) / sum * mix.answerFor(id).belief().hardened();
            marked += mix.weight(id) / sum * mix.answerFor(id).belief().marked();
        }
        return new Answer.State(Figures.thousandths(1 - hardened), Figures.thousandths(hardened), Figures.thousandths(marked));
    }

    private static <T> List<T> union(List<Answer> all, Function<Answer, List<T>> part, Function<T, String> id,
                                     BinaryOperator<T> both) {
        Map<String, T> union = new LinkedHashMap<>();
        all.forEach(a -> part.apply(a).forEach(one -> union.merge(id.apply(one), one, both)));
        return List.copyOf(union.values());
    }

    private static List<Answer.Around> around(List<Answer> all, Function<Answer, List<Answer.Around>> part,
                                              Set<String> barred) {
        return union(all, part, Answer.Around::step, (a, b) -> a).stream().filter(s -> !barred.contains(s.step()))
                .toList();
    }

    private List<Answer.Rung> rungs(Mix mix) {
        List<Answer.Rung> rungs = new ArrayList<>();
        List<Agent> earlier = new ArrayList<>();
        question.tried().stream().filter(t -> t.hoursAgo() < 24).forEach(t -> t.method().map(base.methods()::get)
                .map(base::agentOf).or(() -> t.substance().map(base.agents()::get)).ifPresent(earlier::add));
        for (Mix.Able able : mix.rungs()) {
            rungs.add(rung(rungs.size() + 1, able, mix, bridges(able, mix, earlier)));
            earlier.add(base.agentOf(able.method()));
        }
        return rungs;
    }

    private List<Answer.Bridge> bridges(Mix.Able able, Mix mix, List<Agent> earlier) {
        Map<String, Answer.Bridge> bridges = new LinkedHashMap<>();
        for (Agent before : earlier) {
            advisor.sequence().clashes(before, base.agentOf(able.method()), base.toolOf(able.method())).forEach(clash -> {
                Clash said = clash.conclusion();
                bridges.put(before.id() + ">" + said.then(), new Answer.Bridge(before.id(), said.bridge().stream()
                        .filter(m -> !mix.barred().contains(m)).toList(), said.waitMinutes(), said.text(),
                        advisor.rinses().after(before),
                        List.of(clash.because())));
            });
        }
        return List.copyOf(bridges.values());
    }

    /** A rung with everything that any of the suspects asks of it. */
    private Answer.Rung rung(int rank, Mix.Able able, Mix mix, List<Answer.Bridge> bridges) {
        String method = able.method().id();
        List<String> suspects = mix.askedOf(method);
        List<Answer.Rung> same = suspects.stream().map(id -> prospects.of(id).written(method)).toList();
        Answer.Rung r = same.get(suspects.indexOf(able.from()));
        // what stands beside a rung was held against the day only where it is one
        Answer.Rung judged = mix.asked().stream().map(prospects::of).filter(p -> p.rungs().containsKey(method))
                .map(p -> p.rungs().get(method)).findFirst().orElse(r);
        List<String> moved = suspects.stream().filter(id -> prospects.of(id).order().get(method).likely().learned())
                .map(id -> base.contaminants().get(id).name() + ": " + prospects.of(id).order().get(method).likely()
                        .movedFrom(advisor.reckoned().contaminants().get(id).chances(able.method()))).toList();
        double half = ChanceRange.halfWidth(able.mean(), suspects.stream().mapToDouble(id -> mix.weight(id)
                * prospects.of(id).tries(method)).sum());
        List<Because> because = new ArrayList<>();
        mix.asked().forEach(id -> because.add(Because.of(Reason.contaminant(base.contaminants().get(id)), "belief "
                + Figures.thousandths(mix.weight(id)) + ": chance " + Figures.thousandths(prospects.chance(id, method)))));
        Optional.ofNullable(mix.again().get(method)).ifPresent(figures -> because.add(
                Because.of(Reason.decision(base.decisions().of("comes-back")), figures)));
        if (!moved.isEmpty()) {
            because.add(Assembly.learned(base, moved));
        }
        r.because().stream().filter(b -> !b.id().startsWith("contaminants/") && !b.name().equals("learnt-here")).forEach(because::add);
        return new Answer.Rung(rank, method, r.name(), new Answer.Grades(r.severity().mechanical(),
                r.severity().chemical(), r.severity().thermal(), r.severity().filmMicrons(), able.key().fields()),
                new Answer.Odds(Figures.thousandths(able.mean()), Figures.thousandths(Math.max(0, able.mean() - half)),
                        Figures.thousandths(Math.min(1, able.mean() + half)), moved.isEmpty() ? r.chance().basis() : "learned"),
                r.minutes(), r.agent(), r.dwell(), r.staysWet(), r.window(), r.pressureBar(), r.tool(), r.technique(), r.tries(),
                r.level(), r.stopSigns(), parts(same, Answer.Rung::risks, Answer.Risk::text),
                ppe(same), parts(same, Answer.Rung::gates, Answer.GateState::id),
                r.waste(), bridges, allowed(judged.ifCleared(), mix), allowed(judged.ifMarked(), mix), because);
    }

    private static List<Answer.Ppe> ppe(List<Answer.Rung> same) {
        Map<String, Answer.Ppe> items = new LinkedHashMap<>();
        same.forEach(r -> r.ppe().forEach(p -> items.merge(p.item(), p, Answer.Ppe::orEverywhere)));
        return List.copyOf(items.values());
    }

    private static <T> List<T> parts(List<Answer.Rung> same, Function<Answer.Rung, List<T>> part,
                                     Function<T, String> id) {
        Map<String, T> parts = new LinkedHashMap<>();
        same.forEach(r -> part.apply(r).forEach(p -> parts.putIfAbsent(id.apply(p), p)));
        return List.copyOf(parts.values());
    }

    private static List<Answer.Around> allowed(List<Answer.Around> steps, Mix mix) {
        return steps.stream().filter(s -> !mix.barred().contains(s.step())).toList();
    }

    private List<Answer.Alternative> alternatives(Mix mix, List<Answer> all, List<Answer.Rung> rungs) {
        Map<String, Answer.Alternative> slow = new LinkedHashMap<>();
        mix.slow().forEach(s -> slow.put(s.method().id(), new Answer.Alternative(s.method().id(), s.method().name(),
                "gentle but slow: stays " + Figures.text(s.dwell()) + " min", rung(1, s, mix, List.of()))));
        union(all, Answer::alternatives, Answer.Alternative::method, (a, b) -> a).stream()
                .filter(a -> !mix.barred().contains(a.method()) && mix.mean(a.method()) >= Worth.POINTLESS_BELOW
                        && rungs.stream().noneMatch(r -> r.method().equals(a.method())))
                .forEach(a -> slow.putIfAbsent(a.method(), new Answer.Alternative(a.method(), a.name(), a.why(),
                        rung(1, mix.able(a.method()), mix, List.of()))));
        return List.copyOf(slow.values());
    }

    private List<Answer.PassedOver> passedOver(Mix mix, List<Answer> all, List<Answer.Rung> rungs,
                                               List<Answer.Alternative> alternatives) {
        Map<String, Answer.PassedOver> passed = new TreeMap<>();
        union(all, Answer::passedOver, Answer.PassedOver::method, (a, b) -> a).forEach(p -> passed.put(p.method(),
                new Answer.PassedOver(p.method(), p.name(), p.step(), p.why(), Figures.thousandths(mix.mean(p.method())),
                        p.because())));
        mix.passed().forEach((id, step) -> passed.put(id, new Answer.PassedOver(id, base.methods().get(id).name(),
                step[0], step[1], Figures.thousandths(mix.mean(id)), List.of(Because.of(Steps.reason(base, step[0]), step[1])))));
        rungs.forEach(r -> passed.remove(r.method()));
        alternatives.forEach(a -> passed.remove(a.method()));
        mix.barred().forEach(passed::remove);
        return List.copyOf(passed.values());
    }

    private Answer.Next next(Optional<Answer.Held> hold, List<Answer> hazards, Mix mix, List<Answer.Rung> rungs,
                             List<Answer.Alternative> alternatives) {
        if (hold.isPresent()) {
            return new Answer.Next("hold", Optional.empty(), Optional.of(hold.get().until()), hold.get().doFirst(),
                    hold.get().because());
        }
        for (String first : List.of("flush", "stop")) {
            Optional<Answer> found = hazards.stream().filter(a -> a.next().action().equals(first)).findFirst();
            if (found.isPresent()) {
                return found.get().next();
            }
        }
        Answer likeliest = mix.answerFor(mix.asked().get(0));
        if (likeliest.next().action().equals("done")) {
            return likeliest.next();
        }
        if (rungs.isEmpty()) {
            return withoutRungs(likeliest, mix, alternatives);
        }
        Answer.Rung rung = rungs.get(0);
        ToolKind tool = base.toolOf(base.methods().get(rung.method())).kind();
        if (mix.failed().size() >= 2 && (tool.abrades() || tool == ToolKind.CLAY)) {
            return NextStep.reassess(rung);
        }
        return mix.asked().stream().map(id -> mix.answerFor(id).next()).filter(n -> n.method().filter(rung.method()::equals)
                .isPresent()).findFirst().orElseGet(() -> new Answer.Next(rung.hasOpen("test_spot") ? "test" : "try",
                        Optional.of(rung.method()), Optional.empty(), (rung.hasOpen("test_spot")
                        ? "Hidden test spot first: " : "") + rung.name() + ". " + rung.technique(), rung.because()));
    }

    /** What the likeliest would have done, unless that is a rung which the others rule out. */
    private static Answer.Next withoutRungs(Answer likeliest, Mix mix, List<Answer.Alternative> alternatives) {
        if (!Set.of("try", "test", "prepare", "repeat").contains(likeliest.next().action())) {
            return likeliest.next();
        }
        if (!alternatives.isEmpty()) {
            return NextStep.slow(alternatives.get(0));
        }
        return mix.failed().size() >= 2 ? NextStep.reassess(likeliest.wayOut()) : NextStep.over(likeliest.wayOut());
    }

    private Answer.Expected expected(Mix mix, List<Answer.Rung> rungs) {
        if (rungs.isEmpty()) {
            return new Answer.Expected(0, 0, 0, new Answer.Took(0, 0, 0));
        }
        double cleared = 0;
        double likely = 0;
        for (String id : mix.asked()) {
            double left = mix.weight(id);
            for (Answer.Rung rung : rungs) {
                likely += left * rung.minutes();
                left *= 1 - prospects.chance(id, rung.method());
            }
            cleared += mix.weight(id) - left;
        }
        double mark = 1;
        double worst = 0;
        for (Answer.Rung rung : rungs) {
            Method method = base.methods().get(rung.method());
            mark *= 1 - method.marringPercent() / 100;
            worst += rung.minutes() * method.tries();
        }
        return new Answer.Expected(Figures.thousandths(cleared), state(mix).marked(), Figures.thousandths(1 - mark), new Answer.Took(
                Figures.thousandths(rungs.get(0).minutes()), Figures.thousandths(likely), Figures.thousandths(worst)));
    }
}
