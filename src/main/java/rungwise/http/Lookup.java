package rungwise.http;

import io.javalin.http.Context;
import java.util.List;
import rungwise.knowledge.KnowledgeBase;
import rungwise.names.Finder;
import rungwise.names.Found;

/** Looks words up. */
final class Lookup {
    private static final String WORDS = "q";
    /** Nobody says more of one thing; each word is held against every other way to say something. */
    private static final int LONGEST = 100;

    private final Finder finder;

    Lookup(KnowledgeBase base) {
        this.finder = new Finder(base);
    }

    Found find(Context ctx) {
        Parameters.only(ctx, List.of(WORDS));
        return finder.find(Parameters.one(ctx, WORDS).filter(words -> !words.isBlank() && words.length() <= LONGEST)
                .orElseThrow(() -> Refused.said(Kind.UNREADABLE, "no-words", "name", WORDS, "most", LONGEST)));
    }
}
