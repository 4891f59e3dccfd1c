package rungwise.rules;

import java.util.List;

/** The rules cannot be used; every fault found is named. */
public final class BadRules extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<String> faults;

    public BadRules(List<String> faults) {
        super(String.join("\n", faults));
        this.faults = List.copyOf(faults);
    }

    public List<String> faults() {
        return faults;
    }
}
