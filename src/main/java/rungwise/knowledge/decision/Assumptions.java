package rungwise.knowledge.decision;

import java.util.Map;

/** What counts where nobody told, by id. What the program asks for by name is checked when it is loaded. */
public record Assumptions(Map<String, Assumption> byId) {
    public Assumption of(AssumptionId id) {
        return of(id.id());
    }

    public double value(AssumptionId id) {
        return value(id.id());
    }

    public String word(AssumptionId id) {
        return word(id.id());
    }

    public Assumption of(String id) {
        Assumption assumption = byId.get(id);
        if (assumption == null) {
            throw new IllegalStateException("assumptions.yaml has no " + id);
        }
        return assumption;
    }

    public double value(String id) {
        return of(id).value().orElseThrow();
    }

    public String word(String id) {
        return of(id).word().orElseThrow();
    }
}
