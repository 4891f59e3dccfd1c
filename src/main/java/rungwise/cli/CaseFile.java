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
                out.add(Texts.said("cases.refused", "said", bad.getMessage()));
            }
            return out;
        }
        if (expect.has("error")) {
            out.add(Texts.said("cases.answered", "pointer", expect.path("error").asString()));
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
        each(expect, "offered", m -> need(offered.contains(m), Texts.said("cases.offered", "method", m), why(answer, m), out));
        each(expect, "rungs", m -> need(rungs.contains(m), Texts.said("cases.rung", "method", m), why(answer, m), out));
        each(expect, "mustNot", m -> need(!anywhere.contains(m), Texts.said("cases.never", "method", m),
                Texts.said("cases.is-offered"), out));
        each(expect, "barred", m -> need(barred.contains(m), Texts.said("cases.barred", "method", m), why(answer, m), out));
        each(expect, "passedOver", m -> need(answer.passedOver().stream().anyMatch(p -> p.method().equals(m)),
                Texts.said("cases.passed-over", "method", m), why(answer, m), out));
        each(expect, "pointless", m -> need(answer.passedOver().stream().anyMatch(p -> p.method().equals(m)
                && p.step().equals("pointless")), Texts.said("cases.pointless", "method", m), why(answer, m), out));
        for (JsonNode any : expect.path("offeredAny")) {
            List<String> names = names(any);
            need(names.stream().anyMatch(offered::contains), Texts.said("cases.one-of", "methods", names), Texts.said("cases.offered-are",
                    "methods", offered), out);
        }
        for (JsonNode pair : expect.path("order")) {
            int first = offered.indexOf(pair.path(0).asString());
            int then = offered.indexOf(pair.path(1).asString());
            if (pair.size() == 3 && (first < 0 || then < 0)) {
                continue;
            }
            need(first >= 0 && then >= 0 && first < then, Texts.said("cases.order", "first", pair.path(0).asString(), "then",
                    pair.path(1).asString()), Texts.said("cases.order-is", "offered", offered), out);
        }
        gates(expect.path("gates"), answer, false, out);
        gates(expect.path("openGates"), answer, true, out);
        expect.path("ppe").properties().forEach(e -> names(e.getValue()).forEach(item -> need(worn(answer, e.getKey())
                .anyMatch(p -> p.item().equals(item)), Texts.said("cases.ppe", "item", item, "method", e.getKey()),
                        Texts.said("cases.not-there"), out)));
        expect.path("dwellAtMost").properties().forEach(e -> need(rungsAnd(answer).stream().anyMatch(r -> r.method()
                .equals(e.getKey()) && r.dwell().to() <= e.getValue().asDouble()), Texts.said("cases.dwell", "method", e.getKey(),
                        "minutes", e.getValue()), Texts.said("cases.dwell-is", "dwell",
                        rungsAnd(answer).stream().filter(r -> r.method().equals(e.getKey()))
                .map(Answer.Rung::dwell).toList()), out));
        each(expect, "assumed", f -> need(answer.assumed().stream().anyMatch(a -> a.fact().equals(f)), Texts.said("cases.assumed", "fact", f),
                Texts.said("cases.assumed-are", "facts", answer.assumed().stream().map(Answer.Assumed::fact).toList()), out));
        if (expect.has("hold")) {
            need(answer.hold().isPresent() == expect.path("hold").asBoolean(), Texts.said("cases.hold", "held",
                    expect.path("hold").asBoolean()), Texts.said("cases.hold-is", "held", answer.hold().isPresent()), out);
        }
        if (expect.has("next")) {
            JsonNode next = expect.path("next");
            need(answer.next().action().equals(next.path("action").asString())
                    && (!next.has("method") || answer.next().method()
                    .filter(next.path("method").asString()::equals).isPresent()), Texts.said("cases.next", "next", next),
                    Texts.said("cases.next-is", "action", answer.next().action(), "method", answer.next().method().orElse("")), out);
        }
        if (expect.has("nextAny")) {
            need(names(expect.path("nextAny")).contains(answer.next().action()), Texts.said("cases.next-one-of", "actions",
                    names(expect.path("nextAny"))), Texts.said("cases.next-is", "action", answer.next().action(), "method",
                    answer.next().method().orElse("")), out);
        }
        each(expect, "before", m -> need(answer.before().stream().anyMatch(s -> s.step().equals(m)), Texts.said("cases.before", "step", m),
                Texts.said("cases.before-is", "steps", answer.before().stream().map(Answer.Around::step).toList()), out));
        each(expect, "after", m -> need(answer.after().stream().anyMatch(s -> s.step().equals(m)), Texts.said("cases.after", "step", m),
                Texts.said("cases.after-is", "steps", answer.after().stream().map(Answer.Around::step).toList()), out));
        for (JsonNode pair : expect.path("bridge")) {
            need(answer.rungs().stream().anyMatch(r -> r.method().equals(pair.path(1).asString())
                            && r.bridgeBefore().stream().anyMatch(b -> b.after().equals(pair.path(0).asString()))),
                    Texts.said("cases.bridge", "pair", pair), Texts.said("cases.no-such-bridge"), out);
        }
        if (expect.has("mark")) {
            String mark = answer.mark().map(Answer.Mark::mark).orElse("none");
            need(mark.equals(expect.path("mark").asString()), Texts.said("cases.mark", "mark", expect.path("mark").asString()),
                    Texts.said("cases.mark-is", "mark", mark), out);
        }
        if (expect.has("wayOut")) {
            String wayOut = answer.whoTakesOver().map(Answer.WayOut::method).orElse("none");
            need(wayOut.equals(expect.path("wayOut").asString()), Texts.said("cases.way-out", "method", expect.path("wayOut").asString()),
                    Texts.said("cases.way-out-is", "method", wayOut), out);
        }
        expect.path("neighbour").properties().forEach(e -> need(answer.neighbours().stream()
                .anyMatch(n -> n.surface().equals(e.getKey()) && n.action().equals(e.getValue().asString())),
                Texts.said("cases.neighbour", "surface", e.getKey(), "action", e.getValue()), Texts.said("cases.neighbours-are",
                        "neighbours", answer.neighbours().stream()
                        .map(n -> n.surface() + " " + n.action()).toList()), out));
        said(expect, answer, out);
        if (expect.path("noRungs").asBoolean(false)) {
            need(rungs.isEmpty(), Texts.said("cases.no-steps"), Texts.said("cases.rungs", "rungs", rungs), out);
        }
    }

    private static void said(JsonNode expect, Answer answer, List<String> out) {
        expect.path("advice").properties().forEach(e -> need(answer.advice().stream().anyMatch(a ->
                a.about().equals(e.getKey()) && a.text().contains(e.getValue().asString())), Texts.said("cases.advice", "about",
                        e.getKey(), "says", e.getValue()), Texts.said("cases.advice-is", "advice",
                        answer.advice().stream().map(Answer.Advice::text).toList()), out));
        List<Answer.Around> around = Stream.concat(answer.before().stream(), answer.after().stream()).toList();
        expect.path("steps").properties().forEach(e -> need(around.stream().anyMatch(s -> s.step().equals(e.getKey())
                        && s.text().contains(e.getValue().path("says").asString(""))
                        && s.dilution().orElse("").contains(e.getValue().path("dilution").asString(""))
                        && s.watch().orElse("").contains(e.getValue().path("watch").asString(""))
                        && (!e.getValue().has("onDry") || s.onDry() == e.getValue().path("onDry").asBoolean())),
                Texts.said("cases.step-says", "step", e.getKey(), "says", e.getValue()), Texts.said("cases.steps-are", "steps", around), out));
        List<String> before = answer.before().stream().map(Answer.Around::step).toList();
        for (JsonNode pair : expect.path("stepOrder")) {
            int first = before.indexOf(pair.path(0).asString());
            int then = before.indexOf(pair.path(1).asString());
            need(first >= 0 && first < then, Texts.said("cases.step-order", "first", pair.path(0).asString(), "then", pair.path(1).asString()),
                    Texts.said("cases.before-is", "steps", before), out);
        }
        expect.path("risks").properties().forEach(e -> need(rungsAnd(answer).stream().anyMatch(r -> r.method()
                .equals(e.getKey()) && r.risks().stream().anyMatch(k -> k.text().contains(e.getValue().asString()))),
                Texts.said("cases.risk", "risk", e.getValue(), "method", e.getKey()), Texts.said("cases.not-said"), out));
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
                Texts.said(open ? "cases.still-needed" : "cases.needed", "gate", gate, "method", e.getKey()), why(answer, e.getKey()), out)));
    }

    private static List<Answer.Rung> rungsAnd(Answer answer) {
        return Stream.concat(answer.rungs().stream(), answer.alternatives().stream().map(Answer.Alternative::rung))
                .toList();
    }

    /** Whether an answer says nothing of a method. */
    static boolean isNowhere(Answer answer, String method) {
        return why(answer, method).equals(Texts.said("cases.nowhere"));
    }

    /** Where a method went, in a line. */
    static String why(Answer answer, String method) {
        for (Answer.Rung rung : rungsAnd(answer)) {
            if (rung.method().equals(method)) {
                return Texts.said("cases.offered-needing", "gates", rung.gates().stream().map(g -> g.id() + "=" + g.state()).toList());
            }
        }
        return answer.barred().stream().filter(b -> b.method().equals(method)).findFirst()
                .map(b -> Texts.said(answer.never().contains(b) ? "cases.never-by" : answer.notNow().contains(b) ? "cases.not-now-by"
                        : "cases.used-up-by", "reasons",
                                b.because().stream().map(r -> r.name() + " " + Texts.chosen().of(r.figures())).toList()))
                .or(() -> answer.passedOver().stream().filter(p -> p.method().equals(method)).findFirst()
                        .map(p -> Texts.said("cases.passed-over-by", "step", p.step(), "why", p.why())))
                .orElse(Texts.said("cases.nowhere"));
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
            out.add(Texts.said("cases.expected-but", "expected", expected, "found", found));
        }
    }
}
