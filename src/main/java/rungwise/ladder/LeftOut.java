package rungwise.ladder;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rungwise.knowledge.Figures;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Method;
import rungwise.knowledge.MethodKind;
import rungwise.question.Question;
import rungwise.rules.Bar;
import rungwise.rules.Because;
import rungwise.rules.Concluded;
import rungwise.science.Belief;
import rungwise.workup.Wet;
import rungwise.workup.Wetness;

/** What is no rung, and why: passed over by worth, or barred by a rule. */
final class LeftOut {
    private final KnowledgeBase base;
    private final Standing standing;
    private final Candidacy candidacy;
    private final Scene scene;
    private final Question question;

    LeftOut(KnowledgeBase base, Standing standing, Candidacy candidacy, Scene scene, Question question) {
        this.base = base;
        this.standing = standing;
        this.candidacy = candidacy;
        this.scene = scene;
        this.question = question;
    }

    /** What is permitted and no rung, each with the step at which it fell. */
    List<Answer.PassedOver> passedOver(Ladder ladder) {
        Map<String, Answer.PassedOver> passed = new TreeMap<>();
        for (Passed one : ladder.passed()) {
            if (ladder.slow().stream().noneMatch(c -> c.id().equals(one.choice().id()))) {
                passed.put(one.choice().id(), passedOver(one.choice(), one.step(), one.why(), ladder.belief()));
            }
        }
        for (Method method : base.methods().values()) {
            boolean candidate = candidacy.all().containsKey(method.id());
            boolean permitted = candidate ? candidacy.isPermitted(method.id())
                    : standing.of(scene.surface(), method.id()).bars().isEmpty()
                    && !question.consent().refused().contains(method.id());
            if (method.kind() == MethodKind.REMOVE && permitted && !passed.containsKey(method.id())
                    && !Candidacy.canMatter(scene.contaminant(), method)) {
                Choice choice = candidacy.choice(method.id());
                passed.put(method.id(), passedOver(choice, "pointless", "chance "
                        + Figures.text(choice.bestChance()) + " fresh or hardened, under "
                        + Figures.text(Worth.POINTLESS_BELOW), ladder.belief()));
            }
        }
        return List.copyOf(passed.values());
    }

    private Answer.PassedOver passedOver(Choice choice, String step, String why, Belief belief) {
        return new Answer.PassedOver(choice.id(), choice.method().name(), step, why, Figures.thousandths(choice.mean(belief)),
                List.of(Because.of(Steps.reason(base, step), why)));
    }

    /**
     * What is barred.
     *
     * @param all also what could never matter for this deposit
     */
    List<Answer.Barred> barred(boolean all, Wetness wetness) {
        Map<String, Answer.Barred> barred = new TreeMap<>();
        for (Map.Entry<String, Judged> one : candidacy.all().entrySet()) {
            List<Concluded<Bar>> bars = one.getValue().bars();
            if (!bars.isEmpty()) {
                barred.put(one.getKey(), barred(one.getKey(), bars, candidacy.waitsForWeather(one.getKey())
                        ? wet(wetness, candidacy.choice(one.getKey())) : Optional.empty()));
            }
        }
        for (Method method : base.methods().values()) {
            List<Concluded<Bar>> bars = standing.of(scene.surface(), method.id()).bars();
            if (!bars.isEmpty() && !barred.containsKey(method.id()) && (all || question.wanted().contains(method.id()))) {
                barred.put(method.id(), barred(method.id(), bars, Optional.empty()));
            }
        }
        return List.copyOf(barred.values());
    }

    private static Optional<Wet> wet(Wetness wetness, Choice choice) {
        return wetness.of(choice.use(), Wetness.dwell(choice.method(), choice.judged().narrows()));
    }

    private Answer.Barred barred(String id, List<Concluded<Bar>> bars, Optional<Wet> wet) {
        boolean opens = bars.stream().noneMatch(b -> b.conclusion().opensWith().isEmpty());
        Optional<String> with = opens ? Optional.of(String.join(" and ", bars.stream()
                .map(b -> b.conclusion().opensWith()).distinct().sorted().toList())) : Optional.empty();
        return new Answer.Barred(id, base.methods().get(id).name(), with,
                wet, bars.stream().map(Concluded::because).distinct().toList());
    }
}
