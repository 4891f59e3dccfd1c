package rungwise.knowledge.check;

import java.util.List;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;

/** One thing that can be wrong only when all entries are seen together. */
@FunctionalInterface
public interface Check {
    List<Check> ALL = List.of(new DuplicateIdCheck(), new FileNameCheck(), new DanglingIdCheck(),
            new MissingSourceCheck(), new UnusedEntryCheck(), new AskedForCheck(), new NeededMethodCheck(), new AgeingChanceCheck(),
            new RemarkCheck(), new RinseCheck(), new WindowCheck(), new DwellCheck(),
            new PercentCheck(), new HoursCheck(), new AgeOrderCheck(), new LeavesCheck(), new MechanicalCheck(), new ExposureCheck(),
            new GloveCheck(), new RespiratorCheck(), new CompositionCheck(),
            new SubstanceCheck(), new RoleCheck(), new MechanismCheck(), new SharesCheck(), new WayCheck(),
            new AlsoCalledCheck());

    List<Fault> faults(Draft draft);

    default String id() {
        return CheckId.of(getClass());
    }
}
