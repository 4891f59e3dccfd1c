package rungwise.rules.said;

import java.util.List;
import rungwise.knowledge.common.Basis;

/** The one form of a reason; only this package can make one. */
record KnownReason(String id, String says, String cause, List<String> sources, Basis basis) implements Reason {
    KnownReason {
        sources = List.copyOf(sources);
    }

    @Override
    public String toString() {
        return id;
    }
}
