package rungwise.knowledge.check;

import java.util.List;
import java.util.stream.Stream;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.method.Dwell;
import rungwise.knowledge.method.Method;
import rungwise.text.Texts;

/** A stay runs from its shortest to its longest, and the usual one lies between. */
final class DwellCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        return draft.each(Kind.METHOD, Method.class, (entry, method) -> {
            Dwell dwell = method.dwell();
            if (dwell.from() > dwell.to()) {
                return Stream.of(entry.fault("dwell", Texts.said("fault.dwell-backwards", "from", dwell.from(), "to", dwell.to()),
                        Texts.said("fault.backwards.do")));
            }
            return dwell.usual() < dwell.from() || dwell.usual() > dwell.to()
                    ? Stream.of(entry.fault("dwell/usual", Texts.said("fault.usual-outside", "usual", dwell.usual(), "from",
                            dwell.from(), "to", dwell.to()),
                    Texts.said("fault.usual-outside.do"))) : Stream.empty();
        });
    }
}
