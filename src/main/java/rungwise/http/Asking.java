package rungwise.http;

import io.javalin.http.Context;
import java.io.IOException;
import java.util.List;
import java.util.function.Supplier;
import rungwise.answer.Advisor;
import rungwise.compare.Comparison;
import rungwise.compare.Differences;
import rungwise.compare.WhatIf;
import rungwise.diagnosis.Identification;
import rungwise.diagnosis.Identifier;
import rungwise.diagnosis.SpotAnswer;
import rungwise.diagnosis.SpotReader;
import rungwise.knowledge.load.Mappers;
import rungwise.ladder.ChanceTable;
import rungwise.question.BadQuestion;
import rungwise.question.BrokenText;
import rungwise.question.Named;
import rungwise.question.Problem;
import rungwise.question.QuestionReader;
import rungwise.text.Texts;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** From a body to an answer. */
final class Asking {
    private static final JsonMapper MAPPER = Mappers.json();

    private final Advisor advisor;
    private final Identifier identifier;
    private final Supplier<ChanceTable> chances;

    Asking(Advisor advisor, Supplier<ChanceTable> chances) {
        this.advisor = advisor;
        this.identifier = new Identifier(advisor);
        this.chances = chances;
    }

    SpotAnswer answer(Context ctx) throws IOException {
        boolean all = all(ctx);
        JsonNode tree = tree(ctx);
        return asked(() -> answer(tree, all, WhatIf.isAsked(tree)));
    }

    Identification identify(Context ctx) throws IOException {
        Parameters.only(ctx, List.of());
        JsonNode tree = tree(ctx);
        return asked(() -> identifier.identify(SpotReader.read(tree, advisor.knowledge()), chances.get()));
    }

    Comparison compare(Context ctx) throws IOException {
        Parameters.only(ctx, List.of());
        JsonNode tree = tree(ctx);
        return asked(() -> {
            JsonNode one = side(tree, "one");
            JsonNode other = side(tree, "other");
            return Comparison.of(under("/one", () -> answer(one, true, false)).answer(),
                    under("/other", () -> answer(other, true, false)).answer(), Differences.between(
                    Named.inIds(one, advisor.knowledge()), Named.inIds(other, advisor.knowledge())));
        });
    }

    private static JsonNode side(JsonNode tree, String name) {
        if (!tree.isObject() || !tree.has(name)) {
            throw new BadQuestion(List.of(Problem.said(tree.isObject() ? "/" + name : "", "not-two-questions")));
        }
        tree.propertyNames().stream().filter(n -> !List.of("one", "other").contains(n)).findFirst().ifPresent(n -> {
            throw new BadQuestion(List.of(Problem.said("/" + n, "no-side", "field", n)));
        });
        return tree.path(name);
    }

    private static <T> T under(String pointer, Supplier<T> ask) {
        try {
            return ask.get();
        } catch (BadQuestion e) {
            throw new BadQuestion(e.problems().stream().map(p -> p.under(pointer)).toList());
        }
    }

    private SpotAnswer answer(JsonNode tree, boolean all, boolean whatIf) {
        return SpotAnswer.to(advisor, identifier, QuestionReader.read(WhatIf.without(tree), advisor.knowledge()), all,
                whatIf, chances.get());
    }

    static JsonNode tree(Context ctx) throws IOException {
        if (!isJson(ctx.contentType())) {
            throw Refused.said(Kind.NOT_JSON, "content-type", "type", ctx.contentType());
        }
        return parse(Body.of(ctx));
    }

    static <T> T asked(Supplier<T> ask) {
        try {
            return ask.get();
        } catch (BadQuestion e) {
            List<Refusal.Entry> entries = e.problems().stream().map(Refusal.Entry::of).toList();
            throw new Refused(Kind.WRONG_QUESTION, Texts.said(entries.size() == 1 ? "refusal.one-thing-in-the-question"
                    : "refusal.things-in-the-question", "many", entries.size()), entries);
        }
    }

    static boolean all(Context ctx) {
        ctx.queryParamMap().keySet().stream().filter(name -> !name.equals("explain")).findFirst().ifPresent(name -> {
            throw Refused.said(Kind.UNREADABLE, "only-explain", "name", name);
        });
        List<String> explain = ctx.queryParams("explain");
        if (explain.isEmpty() || explain.equals(List.of("all"))) {
            return !explain.isEmpty();
        }
        throw Refused.said(Kind.UNREADABLE, "explain-all");
    }

    /** A body without a content type is taken at its word. */
    static boolean isJson(String contentType) {
        if (contentType == null) {
            return true;
        }
        String type = contentType.split(";")[0].trim().toLowerCase(java.util.Locale.ROOT);
        return type.equals("application/json") || type.startsWith("application/") && type.endsWith("+json");
    }

    private static Refused broken(BrokenText broken) {
        return Refused.said(Kind.UNREADABLE, "broken", "said", broken.said(), "remedy", broken.remedy());
    }

    static JsonNode parse(byte[] body) {
        JsonNode tree;
        try {
            tree = MAPPER.readTree(body);
        } catch (JacksonException e) {
            throw broken(BrokenText.of(e, MAPPER, body));
        }
        if (tree == null || tree.isMissingNode()) {
            throw Refused.said(Kind.UNREADABLE, "empty-body");
        }
        return tree;
    }
}
