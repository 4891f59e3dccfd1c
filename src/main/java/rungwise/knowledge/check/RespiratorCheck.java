package rungwise.knowledge.check;

import java.util.List;
import java.util.stream.Stream;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.safety.AirHazard;
import rungwise.knowledge.safety.Respirator;
import rungwise.text.Texts;

/** A particle mask that is said to stop a vapour. */
final class RespiratorCheck implements Check {
    private static final String PARTICLE_MASK = "particle_mask";

    @Override
    public List<Fault> faults(Draft draft) {
        return draft.each(Kind.RESPIRATOR, Respirator.class, (entry, respirator) ->
                !respirator.ppe().equals(PARTICLE_MASK) || respirator.against().stream().allMatch(h -> h == AirHazard.DUST)
                        ? Stream.empty() : Stream.of(entry.fault("against", Texts.said("fault.particle-mask"),
                        Texts.said("fault.particle-mask.do"))));
    }
}
