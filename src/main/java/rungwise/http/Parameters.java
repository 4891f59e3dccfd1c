package rungwise.http;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import rungwise.text.Near;
import rungwise.text.Texts;

/** What stands behind the question mark of a request. */
final class Parameters {
    private Parameters() {
    }

    /** Refuses whatever is not known here, so that a mistyped one never falls silent. */
    static void only(Context ctx, List<String> known) {
        ctx.queryParamMap().keySet().stream().filter(name -> !known.contains(name)).findFirst().ifPresent(name -> {
            throw known.isEmpty() ? Refused.said(Kind.UNREADABLE, "no-parameter", "name", name)
                    : Refused.said(Kind.UNREADABLE, "no-such-parameter", "name", name, "near",
                            Near.among(name, known, Texts.said("near.parameters")));
        });
    }

    /** Its value, where it is given; it may not be given twice. */
    static Optional<String> one(Context ctx, String name) {
        List<String> given = ctx.queryParamMap().getOrDefault(name, List.of());
        if (given.size() > 1) {
            throw Refused.said(Kind.UNREADABLE, "parameter-twice", "name", name);
        }
        return given.stream().findFirst();
    }
}
