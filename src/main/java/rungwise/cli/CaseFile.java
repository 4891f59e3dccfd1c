package rungwise.cli;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import rungwise.answer.Advisor;
import rungwise.answer.Answer;
import rungwise.knowledge.load.Mappers;
import rungwise.question.BadQuestion;
import rungwise.question.Question;
import rungwise.question.QuestionReader;
import rungwise.text.Texts;
import tools.jackson.databind.JsonNode;

/** Checks answers against cases written as data. */
public final class CaseFile {
    private static final Schema SCHEMA = schema();

    private final Advisor advisor;

    public CaseFile(Advisor advisor) {
        this.advisor = advisor;
    }

    /** What differs from what the case expects; empty where all is as expected. */
    public List<String> differences(JsonNode one) {
        JsonNode expect = one.path("expect");
        List<String> out = new ArrayList<>();
        SCHEMA.validate(one).forEach(e -> out.add(e.getInstanceLocation() + " " + e.getMessage()));
        Question question;
        try {
            question = QuestionReader.read(one.path("question"), advisor.knowledge());
        } catch (BadQuestion bad) {
            if (!expect.has("error") || bad.problems().stream()
                    .noneMatch(p -> p.pointer().equals(expect.path("error").asString()))) {
                out.add("the question was refused: " + bad.getMessage());
            }
            return out;
        }
        if (expect.has("error")) {
            out.add("the question was answered; an error at " + expect.path("error").asString() + " was expected");
            return out;
        }
        compare(expect, advisor.answer(question, true), out);
        return out;
    }

    private static Schema schema() {
        try (InputStream in = CaseFile.class.getResourceAsStream("/case.schema.json")) {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(Mappers.json().readTree(in));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void compare(JsonNode expect, Answer answer, List<String> out) {
        List<String> rungs = answer.rungs().stream().map(Answer.Rung::method).toList();
        List<String> offered = Stream.concat(rungs.stream(),
                answer.alternatives().stream().map(Answer.Alternative::method)).toList();
        Set<String> anywhere = new TreeSet<>(offered);
        answer.before().forEach(s -> anywhere.add(s.step()));
        answer.after().forEach(s -> anywhere.add(s.step()));
        for (Answer.Rung rung : rungsAnd(answer)) {
            rung.bridgeBefore().forEach(b -> anywhere.addAll(b.steps()));
            rung.ifMarked().forEach(s -> anywhere.add(s.step()));
        }
        Set<String> barred = new TreeSet<>(answer.barred().stream().map(Answer.Barred::method).toList());
        each(expect, "offered", m -> need(offered.contains(m), "offered " + m, why(answer, m), out));
        each(expect, "rungs", m -> need(rungs.contains(m), "step " + m, why(answer, m), out));
        each(expect, "mustNot", m -> need(!anywhere.contains(m), "never " + m, "it is offered", out));
        each(expect, "barred", m -> need(barred.contains(m), "never, not now or used up " + m, why(answer, m), out));
        each(expect, "passedOver", m -> need(answer.passedOver().stream().anyMatch(p -> p.method().equals(m)),
                "passed over " + m, why(answer, m), out));
        each(expect, "pointless", m -> need(answer.passedOver().stream().anyMatch(p -> p.method().equals(m)
                && p.step().equals("pointless")), "pointless " + m, why(answer, m), out));
        for (JsonNode any : expect.path("offeredAny")) {
            List<String> names = names(any);
            need(names.stream().anyMatch(offered::contains), "one of " + names, "offered " + offered, out);
        }
        for (JsonNode pair : expect.path("order")) {
            int first = offered.indexOf(pair.path(0).asString());
            int then = offered.indexOf(pair.path(1).asString());
            if (pair.size() == 3 && (first < 0 || then < 0)) {
                continue;
            }
            need(first >= 0 && then >= 0 && first < then, pair.path(0).asString() + " before "
                    + pair.path(1).asString(), "order " + offered, out);
        }
        gates(expect.path("gates"), answer, false, out);
        gates(expect.path("openGates"), answer, true, out);
        expect.path("ppe").properties().forEach(e -> names(e.getValue()).forEach(item -> need(worn(answer, e.getKey())
                .anyMatch(p -> p.item().equals(item)), "PPE " + item + " for " + e.getKey(), "it is not there", out)));
        expect.path("dwellAtMost").properties().forEach(e -> need(rungsAnd(answer).stream().anyMatch(r -> r.method()
                .equals(e.getKey()) && r.dwell().to() <= e.getValue().asDouble()), "dwell of " + e.getKey() + " at most "
                + e.getValue() + " min", "dwell " + rungsAnd(answer).stream().filter(r -> r.method().equals(e.getKey()))
                .map(Answer.Rung::dwell).toList(), out));
        each(expect, "assumed", f -> need(answer.assumed().stream().anyMatch(a -> a.fact().equals(f)), "assumed " + f,
                "assumed are " + answer.assumed().stream().map(Answer.Assumed::fact).toList(), out));
        if (expect.has("hold")) {
            need(answer.hold().isPresent() == expect.path("hold").asBoolean(), "hold "
                    + expect.path("hold").asBoolean(), "hold is " + answer.hold().isPresent(), out);
        }
        if (expect.has("next")) {
            JsonNode next = expect.path("next");
            need(answer.next().action().equals(next.path("action").asString())
                    && (!next.has("method") || answer.next().method()
                    .filter(next.path("method").asString()::equals).isPresent()), "next " + next,
                    "next is " + answer.next().action() + " " + answer.next().method().orElse(""), out);
        }
        if (expect.has("nextAny")) {
            need(names(expect.path("nextAny")).contains(answer.next().action()), "next one of "
                    + names(expect.path("nextAny")), "next is " + answer.next().action() + " "
                    + answer.next().method().orElse(""), out);
        }
        each(expect, "before", m -> need(answer.before().stream().anyMatch(s -> s.step().equals(m)), "before " + m,
                "before is " + answer.before().stream().map(Answer.Around::step).toList(), out));
        each(expect, "after", m -> need(answer.after().stream().anyMatch(s -> s.step().equals(m)), "after " + m,
                "after is " + answer.after().stream().map(Answer.Around::step).toList(), out));
        for (JsonNode pair : expect.path("bridge")) {
            need(answer.rungs().stream().anyMatch(r -> r.method().equals(pair.path(1).asString())
                            && r.bridgeBefore().stream().anyMatch(b -> b.after().equals(pair.path(0).asString()))),
                    "bridge " + pair, "no such bridge", out);
        }
        if (expect.has("wayOut")) {
            String wayOut = answer.whoTakesOver().map(Answer.WayOut::method).orElse("none");
            need(wayOut.equals(expect.path("wayOut").asString()), "way out " + expect.path("wayOut").asString(),
                    "it is " + wayOut, out);
        }
        expect.path("neighbour").properties().forEach(e -> need(answer.neighbours().stream()
                .anyMatch(n -> n.surface().equals(e.getKey()) && n.action().equals(e.getValue().asString())),
                "neighbour " + e.getKey() + " " + e.getValue(), "neighbours " + answer.neighbours().stream()
                        .map(n -> n.surface() + " " + n.action()).toList(), out));
        said(expect, answer, out);
        if (expect.path("noRungs").asBoolean(false)) {
            need(rungs.isEmpty(), "no steps", "steps " + rungs, out);
        }
    }

    private static void said(JsonNode expect, Answer answer, List<String> out) {
        expect.path("advice").properties().forEach(e -> need(answer.advice().stream().anyMatch(a ->
                a.about().equals(e.getKey()) && a.text().contains(e.getValue().asString())), "advice on " + e.getKey()
                + " " + e.getValue(), "advice " + answer.advice().stream().map(Answer.Advice::text).toList(), out));
        List<Answer.Around> around = Stream.concat(answer.before().stream(), answer.after().stream()).toList();
        expect.path("steps").properties().forEach(e -> need(around.stream().anyMatch(s -> s.step().equals(e.getKey())
                        && s.text().contains(e.getValue().path("says").asString(""))
                        && s.dilution().orElse("").contains(e.getValue().path("dilution").asString(""))
                        && s.watch().orElse("").contains(e.getValue().path("watch").asString(""))
                        && (!e.getValue().has("onDry") || s.onDry() == e.getValue().path("onDry").asBoolean())),
                "step " + e.getKey() + " " + e.getValue(), "steps " + around, out));
        List<String> before = answer.before().stream().map(Answer.Around::step).toList();
        for (JsonNode pair : expect.path("stepOrder")) {
            int first = before.indexOf(pair.path(0).asString());
            int then = before.indexOf(pair.path(1).asString());
            need(first >= 0 && first < then, "step " + pair.path(0).asString() + " before " + pair.path(1).asString(),
                    "before is " + before, out);
        }
        expect.path("risks").properties().forEach(e -> need(rungsAnd(answer).stream().anyMatch(r -> r.method()
                .equals(e.getKey()) && r.risks().stream().anyMatch(k -> k.text().contains(e.getValue().asString()))),
                "risk " + e.getValue() + " on " + e.getKey(), "it is not said", out));
    }

    /** What a rung or first aid asks for. */
    private static Stream<Answer.Ppe> worn(Answer answer, String method) {
        return Stream.concat(rungsAnd(answer).stream().filter(r -> r.method().equals(method)).flatMap(r -> r.ppe().stream()),
                answer.next().method().filter(method::equals).stream().flatMap(m -> answer.next().ppe().stream()));
    }

    private static void gates(JsonNode expected, Answer answer, boolean open, List<String> out) {
        expected.properties().forEach(e -> names(e.getValue()).forEach(gate -> need(rungsAnd(answer).stream()
                        .anyMatch(r -> r.method().equals(e.getKey()) && r.gates().stream().anyMatch(g ->
                                g.id().equals(gate) && (!open || g.state().equals(Answer.GateState.MISSING)))),
                (open ? "still needed first " : "needed first ") + gate + " on " + e.getKey(), why(answer, e.getKey()), out)));
    }

    private static List<Answer.Rung> rungsAnd(Answer answer) {
        return Stream.concat(answer.rungs().stream(), answer.alternatives().stream().map(Answer.Alternative::rung))
                .toList();
    }

    /** Where a method went, in a line. */
    static String why(Answer answer, String method) {
        for (Answer.Rung rung : rungsAnd(answer)) {
            if (rung.method().equals(method)) {
                return "it is offered, needed first " + rung.gates().stream().map(g -> g.id() + "=" + g.state()).toList();
            }
        }
        return answer.barred().stream().filter(b -> b.method().equals(method)).findFirst()
                .map(b -> (answer.never().contains(b) ? "never, by " : answer.notNow().contains(b) ? "not now, by " : "used up, by ") + b.because().stream().map(r -> r.name() + " " + Texts.ENGLISH.of(r.figures())).toList())
                .or(() -> answer.passedOver().stream().filter(p -> p.method().equals(method)).findFirst()
                        .map(p -> "passed over, " + p.step() + ": " + p.why()))
                .orElse("it is nowhere");
    }

    private static void each(JsonNode expect, String key, java.util.function.Consumer<String> check) {
        names(expect.path(key)).forEach(check);
    }

    private static List<String> names(JsonNode list) {
        List<String> names = new ArrayList<>();
        list.forEach(n -> names.add(n.asString()));
        return names;
    }

    private static void need(boolean met, String expected, String found, List<String> out) {
        if (!met) {
            out.add("expected " + expected + ", but " + found);
        }
    }
}
