package rungwise.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.question.BadQuestion;
import rungwise.question.Problem;
import rungwise.question.Question;
import rungwise.text.Texts;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Tries each fact that is unknown or could be otherwise, one at a time, and keeps what changes the next step. */
public final class WhatIf {
    private static final String FIELD = "whatIf";
    private static final String SHELF = "shelf";
    /** Gates asked about, so that the list stays short. */
    private static final int GATES_AT_MOST = 6;

    private WhatIf() {
    }

    /**
     * A fact that would change the next step.
     *
     * @param fact    the field of the question
     * @param value   what it would have to be
     * @param unknown whether the question left it open
     * @param next    what the next step would then be
     */
    public record Change(String fact, String value, boolean unknown, Answer.Next next) {
    }

    private record Variant(String fact, String value, boolean unknown, Question question) {
    }

    /** Whether the question asks for it. */
    public static boolean isAsked(JsonNode tree) {
        JsonNode field = tree.path(FIELD);
        if (!field.isMissingNode() && !field.isBoolean()) {
            throw new BadQuestion(List.of(Problem.said("/" + FIELD, "neither-true-nor-false")));
        }
        return field.asBoolean(false);
    }

    /** The question itself, as {@link rungwise.question.QuestionReader} takes it. */
    public static JsonNode without(JsonNode tree) {
        if (!tree.isObject() || !tree.has(FIELD)) {
            return tree;
        }
        ObjectNode copy = ((ObjectNode) tree).deepCopy();
        copy.remove(FIELD);
        return copy;
    }

    /**
     * What would change the next step.
     *
     * @param answer the answer to the question as it stands
     * @param ask    answers a question
     * @param base   what the question was answered by
     */
    public static List<Change> changes(Question question, Answer answer, Function<Question, Answer> ask,
                                       KnowledgeBase base) {
        List<Change> changes = new ArrayList<>();
        for (Variant variant : variants(question, answer)) {
            keep(variant, answer, ask.apply(variant.question()), changes);
        }
        question.shelf().ifPresent(shelf -> {
            Question whole = with(question, Optional.empty(), question.canWaitMinutes());
            Answer all = ask.apply(whole);
            keep(new Variant(SHELF, Texts.said("compare.everything-known"), false, whole), answer, all, changes);
            for (List<String> lacking : Lacking.of(question, all, base)) {
                Question more = with(question, Optional.of(Stream.concat(shelf.stream(), lacking.stream()).toList()),
                        question.canWaitMinutes());
                keep(new Variant(SHELF, Texts.said("compare.plus", "things", String.join(Texts.said("list.and"), lacking)), false, more),
                        answer, ask.apply(more),
                        changes);
            }
        });
        return changes;
    }

    private static void keep(Variant variant, Answer answer, Answer then, List<Change> changes) {
        if (!then.next().action().equals(answer.next().action()) || !then.next().method().equals(answer.next().method())) {
            changes.add(new Change(variant.fact(), variant.value(), variant.unknown(), then.next()));
        }
    }

    private static List<Variant> variants(Question q, Answer answer) {
        List<Variant> all = new ArrayList<>();
        Question.Facts f = q.facts();
        for (double[] span : new double[][]{{70, 78}, {100, 120}, {210, 260}}) {
            all.add(new Variant("facts/totalFilmMicrons", Texts.said("compare.film-span", "from", "" + span[0], "to", "" + span[1]),
                    f.totalFilmMicrons().isEmpty(),
                    with(q, new Question.Facts(Optional.of(new Question.Span(span[0], span[1])), f.clearMicrons(),
                            f.colour(), f.paintAgeDays(), f.vehicleYear(), f.refinished(), f.place(),
                            f.priorDamage(), f.warmestPanelC(), f.soiling(), f.protection()))));
        }
        for (double clear : new double[]{20, 45}) {
            all.add(new Variant("facts/clearMicrons", "" + clear, f.clearMicrons().isEmpty(),
                    with(q, new Question.Facts(f.totalFilmMicrons(), OptionalDouble.of(clear), f.colour(),
                            f.paintAgeDays(), f.vehicleYear(), f.refinished(), f.place(), f.priorDamage(),
                            f.warmestPanelC(), f.soiling(), f.protection()))));
        }
        for (double days : new double[]{14, 60, 2000}) {
            all.add(new Variant("facts/paintAgeDays", "" + days, f.paintAgeDays().isEmpty(),
                    with(q, new Question.Facts(f.totalFilmMicrons(), f.clearMicrons(), f.colour(),
                            OptionalDouble.of(days), f.vehicleYear(), f.refinished(), f.place(), f.priorDamage(),
                            f.warmestPanelC(), f.soiling(), f.protection()))));
        }
        Question.Setting s = q.setting();
        for (double panel : new double[]{5, 20, 35, 55}) {
            all.add(new Variant("setting/panelC", "" + panel, s.panelC().isEmpty(), with(q, new Question.Setting(
                    s.airC(), OptionalDouble.of(panel), s.sun(), s.windMs(), s.humidity(), s.indoors(),
                    s.outdoors(), s.water()))));
        }
        for (String gate : openGates(answer)) {
            all.add(new Variant("consent/granted", gate, true, with(q, new Question.Consent(plus(q.consent().granted(),
                    gate), q.consent().refused()))));
            all.add(new Variant("consent/refused", gate, true, with(q, new Question.Consent(q.consent().granted(),
                    plus(q.consent().refused(), gate)))));
        }
        for (double wait : new double[]{0, 120, 720}) {
            all.add(new Variant("canWaitMinutes", "" + wait, false, with(q, q.shelf(), wait)));
        }
        return all;
    }

    private static Set<String> openGates(Answer answer) {
        Set<String> gates = new LinkedHashSet<>();
        for (Answer.Rung rung : answer.rungs()) {
            rung.gates().stream().filter(g -> g.state().equals(Answer.GateState.MISSING) && gates.size() < GATES_AT_MOST)
                    .forEach(g -> gates.add(g.id()));
        }
        return gates;
    }

    private static List<String> plus(List<String> list, String one) {
        List<String> more = new ArrayList<>(list);
        more.add(one);
        return more;
    }

    private static Question with(Question q, Question.Facts facts) {
        return new Question(q.contaminant(), q.observations(), q.notSeen(), q.age(), q.extent(), q.surface(), facts,
                q.circumstances(), q.neighbours(), q.setting(), q.workers(), q.shelf(), q.shelfStrict(), q.consent(),
                q.done(), q.canWaitMinutes(), q.passedTests(), q.wanted(), q.tried(), q.mixing());
    }

    private static Question with(Question q, Question.Setting setting) {
        return new Question(q.contaminant(), q.observations(), q.notSeen(), q.age(), q.extent(), q.surface(), q.facts(),
                q.circumstances(), q.neighbours(), setting, q.workers(), q.shelf(), q.shelfStrict(), q.consent(),
                q.done(), q.canWaitMinutes(), q.passedTests(), q.wanted(), q.tried(), q.mixing());
    }

    private static Question with(Question q, Question.Consent consent) {
        return new Question(q.contaminant(), q.observations(), q.notSeen(), q.age(), q.extent(), q.surface(), q.facts(),
                q.circumstances(), q.neighbours(), q.setting(), q.workers(), q.shelf(), q.shelfStrict(), consent,
                q.done(), q.canWaitMinutes(), q.passedTests(), q.wanted(), q.tried(), q.mixing());
    }

    private static Question with(Question q, Optional<List<String>> shelf, double canWaitMinutes) {
        return new Question(q.contaminant(), q.observations(), q.notSeen(), q.age(), q.extent(), q.surface(), q.facts(),
                q.circumstances(), q.neighbours(), q.setting(), q.workers(), shelf, q.shelfStrict(), q.consent(),
                q.done(), canWaitMinutes, q.passedTests(), q.wanted(), q.tried(), q.mixing());
    }
}
