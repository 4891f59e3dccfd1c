package rungwise.knowledge.check;

import java.util.List;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.method.Method;

/** From 25 °C upward a hotter panel never adds a method. */
final class WindowCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        return draft.each(Kind.METHOD, Method.class, (entry, method) -> method.window().stream()
                .filter(w -> w.from() > 25).map(w -> entry.fault("window",
                        "it starts above 25 °C, so a hotter panel would add a method",
                        "state the temperature at which it may start, and what it puts on the surface as contactC")));
    }
}
