package rungwise.knowledge.decision;

import java.util.Map;

/** The figures at which something is decided, by id. What the program asks for by name is checked when it is loaded. */
public record Decisions(Map<String, Decision> byId) {
    public Decision of(DecisionId id) {
        return of(id.id());
    }

    public double value(DecisionId id) {
        return of(id).value();
    }

    public Decision of(String id) {
        Decision decision = byId.get(id);
        if (decision == null) {
            throw new IllegalStateException("decisions.yaml has no " + id);
        }
        return decision;
    }

    public double value(String id) {
        return of(id).value();
    }
}
