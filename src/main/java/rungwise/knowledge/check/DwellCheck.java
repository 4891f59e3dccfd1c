package rungwise.knowledge.check;

import java.util.List;
import java.util.stream.Stream;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.method.Dwell;
import rungwise.knowledge.method.Method;

/** A stay runs from its shortest to its longest, and the usual one lies between. */
final class DwellCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        return draft.each(Kind.METHOD, Method.class, (entry, method) -> {
            Dwell dwell = method.dwell();
            if (dwell.from() > dwell.to()) {
                return Stream.of(entry.fault("dwell", "the stay from " + Figures.text(dwell.from()) + " to "
                        + Figures.text(dwell.to()) + " min runs backwards", "swap the two figures"));
            }
            return dwell.usual() < dwell.from() || dwell.usual() > dwell.to()
                    ? Stream.of(entry.fault("dwell/usual", "the usual stay of " + Figures.text(dwell.usual())
                    + " min lies outside " + Figures.text(dwell.from()) + " to " + Figures.text(dwell.to()),
                    "plan with a stay that is allowed")) : Stream.empty();
        });
    }
}
