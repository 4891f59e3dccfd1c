package rungwise.knowledge;

import java.util.List;
import java.util.Locale;

/** One thing that can be wrong only when all entries are seen together. */
@FunctionalInterface
interface Check {
    List<Check> ALL = List.of(new DuplicateIdCheck(), new FileNameCheck(), new DanglingIdCheck(),
            new MissingSourceCheck(), new UnusedEntryCheck(), new NeededMethodCheck(), new AgeingChanceCheck(),
            new OverrideCheck(), new GainsWithAgeCheck(), new RinseCheck(), new WindowCheck(), new DwellCheck(),
            new PercentCheck(), new HoursCheck(), new AgeOrderCheck(), new MechanicalCheck(), new ExposureCheck(),
            new GloveCheck(), new RespiratorCheck(), new CompositionCheck(),
            new SubstanceCheck(), new RoleCheck());

    List<Fault> faults(Draft draft);

    /** Its class in small letters: {@code DuplicateIdCheck} is {@code duplicate-id}. */
    default String id() {
        return getClass().getSimpleName().replaceAll("Check$", "").replaceAll("(?<=[a-z])(?=[A-Z])", "-")
                .toLowerCase(Locale.ROOT);
    }
}
