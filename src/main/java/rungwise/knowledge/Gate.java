package rungwise.knowledge;

import java.util.List;

/**
 * What must be true or obtained before a method may be used.
 *
 * @param kind      consent = the customer's; supervision = a supervisor's; preparation = what the worker does first
 * @param obtain    what to get or do
 * @param otherwise what happens if it is refused or cannot be had
 */
public record Gate(String id, String name, GateKind kind, String obtain, String otherwise, Basis basis,
                   List<String> sources) {
    /** Who opens a gate. */
    public enum GateKind { CONSENT, SUPERVISION, PREPARATION }

    public Gate {
        otherwise = otherwise == null ? "" : otherwise;
        sources = sources == null ? List.of() : List.copyOf(sources);
    }

    /** Whether somebody other than the worker has to agree. */
    public boolean needsAgreement() {
        return kind != GateKind.PREPARATION;
    }
}
