package rungwise.http;

import io.javalin.http.Context;
import java.io.IOException;
import java.util.List;
import java.util.function.Supplier;
import rungwise.knowledge.Mappers;
import rungwise.ladder.Advisor;
import rungwise.ladder.Answer;
import rungwise.ladder.BadQuestion;
import rungwise.ladder.ChanceTable;
import rungwise.ladder.QuestionReader;
import tools.jackson.core.JacksonException;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** From a body to an answer. */
final class Asking {
    private static final JsonMapper MAPPER = Mappers.json();

    private final Advisor advisor;
    private final Supplier<ChanceTable> chances;

    Asking(Advisor advisor, Supplier<ChanceTable> chances) {
        this.advisor = advisor;
        this.chances = chances;
    }

    Answer answer(Context ctx) throws IOException {
        boolean all = all(ctx);
        if (!isJson(ctx.contentType())) {
            throw new Refused(Kind.NOT_JSON, "The content type is " + ctx.contentType() + ".");
        }
        JsonNode tree = parse(Body.of(ctx));
        try {
            return advisor.answer(QuestionReader.read(tree, advisor.knowledge()), all, chances.get());
        } catch (BadQuestion e) {
            List<Refusal.Entry> entries = e.problems().stream()
                    .map(p -> new Refusal.Entry(p.pointer(), p.wrong(), p.remedy())).toList();
            throw new Refused(Kind.WRONG_QUESTION, entries.size() == 1 ? "One thing in the question is wrong."
                    : entries.size() + " things in the question are wrong.", entries);
        }
    }

    private static boolean all(Context ctx) {
        ctx.queryParamMap().keySet().stream().filter(name -> !name.equals("explain")).findFirst().ifPresent(name -> {
            throw new Refused(Kind.UNREADABLE, "There is no parameter \"" + name + "\". The only one is explain.");
        });
        List<String> explain = ctx.queryParams("explain");
        if (explain.isEmpty() || explain.equals(List.of("all"))) {
            return !explain.isEmpty();
        }
        throw new Refused(Kind.UNREADABLE, "The parameter explain takes only the word all, once.");
    }

    /** A body without a content type is taken at its word. */
    static boolean isJson(String contentType) {
        if (contentType == null) {
            return true;
        }
        String type = contentType.split(";")[0].trim().toLowerCase(java.util.Locale.ROOT);
        return type.equals("application/json") || type.startsWith("application/") && type.endsWith("+json");
    }

    static JsonNode parse(byte[] body) {
        JsonNode tree;
        try {
            tree = MAPPER.readTree(body);
        } catch (JacksonException e) {
            TokenStreamLocation at = e.getLocation();
            String where = at == null || at.getLineNr() < 1 ? ""
                    : "Line " + at.getLineNr() + ", column " + at.getColumnNr() + ": ";
            throw new Refused(Kind.UNREADABLE, where + e.getOriginalMessage().lines().findFirst().orElse("not JSON"));
        }
        if (tree == null || tree.isMissingNode()) {
            throw new Refused(Kind.UNREADABLE, "The body is empty.");
        }
        return tree;
    }
}
