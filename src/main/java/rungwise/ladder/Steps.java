package rungwise.ladder;

import java.util.Map;
import rungwise.knowledge.KnowledgeBase;
import rungwise.rules.Reason;

/** The steps by which a permitted method is passed over, each with the decision behind it. */
final class Steps {
    private static final Map<String, String> DECISIONS = Map.of("pointless", "pointless", "same again", "same-again",
            "finest first", "finest-first", "earned", "real-chance", "slow", "slow", "cost", "not-worth-its-minutes",
            "harsher for less", "harsher-for-less", "enough", "enough", "climbed past", "comes-back");

    private Steps() {
    }

    static Reason reason(KnowledgeBase base, String step) {
        return Reason.decision(base.decisions().of(DECISIONS.get(step)));
    }
}
