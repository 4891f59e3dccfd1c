package rungwise.knowledge.check;

import java.util.List;
import java.util.stream.Stream;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.surface.Surface;
import rungwise.text.Texts;

/** Agreement widens what may be done. */
final class MechanicalCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        return draft.each(Kind.SURFACE, Surface.class, (entry, surface) ->
                surface.mechanical().free() <= surface.mechanical().agreed() ? Stream.empty()
                        : Stream.of(entry.fault("mechanical", Texts.said("fault.more-free"),
                        Texts.said("fault.more-free.do"))));
    }
}
