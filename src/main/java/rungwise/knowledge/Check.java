package rungwise.knowledge;

import java.util.List;

/** One thing that can be wrong only when all entries are seen together. */
@FunctionalInterface
interface Check {
    List<Check> ALL = List.of(new DuplicateIdCheck(), new FileNameCheck(), new DanglingIdCheck(),
            new MissingSourceCheck(), new UnusedEntryCheck(), new AskedForCheck(), new NeededMethodCheck(), new AgeingChanceCheck(),
            new OverrideCheck(), new RinseCheck(), new WindowCheck(), new DwellCheck(),
            new PercentCheck(), new HoursCheck(), new AgeOrderCheck(), new MechanicalCheck(), new ExposureCheck(),
            new GloveCheck(), new RespiratorCheck(), new CompositionCheck(),
            new SubstanceCheck(), new RoleCheck(), new MechanismCheck());

    List<Fault> faults(Draft draft);

    default String id() {
        return CheckId.of(getClass());
    }
}
