package rungwise.knowledge.decision;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;
import rungwise.knowledge.common.Basis;

/**
 * A figure at which something is decided, or a step by which a method is left out.
 *
 * @param says  the sentence a person reads where it decided
 * @param cause what lies beneath it
 * @param stage where in working out an answer it counts
 * @param value what is compared with
 * @param unit  of the value; "step" where there is nothing to compare and the entry only gives the reason
 */
public record Decision(String id, String says, String cause, Stage stage, double value, String unit, Basis basis, List<String> sources) {
    public Decision {
        sources = sources == null ? List.of() : List.copyOf(sources);
    }

    /** Whether there is nothing to compare, and the entry only gives the reason. */
    @JsonIgnore
    public boolean isStep() {
        return unit.equals("step");
    }
}
