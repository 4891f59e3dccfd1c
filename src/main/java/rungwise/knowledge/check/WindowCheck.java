package rungwise.knowledge.check;

import java.util.List;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.method.Method;
import rungwise.text.Texts;

/** From 25 °C upward a hotter panel never adds a method. */
final class WindowCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        return draft.each(Kind.METHOD, Method.class, (entry, method) -> method.window().stream()
                .filter(w -> w.from() > 25).map(w -> entry.fault("window",
                        Texts.said("fault.starts-hot"),
                        Texts.said("fault.starts-hot.do"))));
    }
}
