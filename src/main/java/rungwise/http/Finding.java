package rungwise.http;

import io.javalin.http.Context;
import java.util.List;
import rungwise.knowledge.KnowledgeBase;
import rungwise.names.Finder;
import rungwise.names.Found;

/** Looks words up. */
final class Finding {
    private static final String WORDS = "q";
    /** Nobody says more of one thing; each word is held against every other way to say something. */
    private static final int LONGEST = 100;

    private final Finder finder;

    Finding(KnowledgeBase base) {
        this.finder = new Finder(base);
    }

    Found find(Context ctx) {
        ctx.queryParamMap().keySet().stream().filter(name -> !name.equals(WORDS)).findFirst().ifPresent(name -> {
            throw new Refused(Kind.UNREADABLE, "There is no parameter \"" + name + "\". The only one is " + WORDS + ".");
        });
        List<String> words = ctx.queryParams(WORDS);
        if (words.size() != 1 || words.get(0).isBlank() || words.get(0).length() > LONGEST) {
            throw new Refused(Kind.UNREADABLE, "Say once in the parameter " + WORDS + " what to look for, in up to " + LONGEST + " characters.");
        }
        return finder.find(words.get(0));
    }
}
