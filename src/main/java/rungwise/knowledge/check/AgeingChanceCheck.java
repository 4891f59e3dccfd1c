package rungwise.knowledge.check;

import java.util.List;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.method.Method;
import rungwise.text.Texts;

/** Within one bond class age never helps. */
final class AgeingChanceCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        return draft.each(Kind.METHOD, Method.class, (entry, method) -> method.chances().entrySet().stream()
                .filter(c -> c.getValue().gainsWithAge())
                .map(c -> entry.fault("chances/" + c.getKey(), Texts.said("fault.ages-well"),
                        Texts.said("fault.ages-well.do"))));
    }
}
