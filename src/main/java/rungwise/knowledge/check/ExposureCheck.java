package rungwise.knowledge.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Entry;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.safety.AirHazard;
import rungwise.knowledge.safety.AirLimit;
import rungwise.knowledge.safety.Dissociation;
import rungwise.knowledge.safety.Exposure;
import rungwise.text.Texts;

/** Limits that run the wrong way, and a vapour of which too little is said to work it out. */
final class ExposureCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        List<Fault> faults = new ArrayList<>(draft.each(Kind.EXPOSURE, Exposure.class, (entry, exposure) ->
                Stream.of(order(entry, exposure), vapour(entry, exposure), constants(entry, exposure)).flatMap(s -> s)));
        if (draft.isWhole(Kind.EXPOSURE)) {
            faults.addAll(Uncovered.faults(draft, Kind.EXPOSURE, solvent -> draft.items(Kind.EXPOSURE, Exposure.class)
                    .values().stream().anyMatch(e -> e.solvents().contains(solvent)), Texts.said("fault.covers-vapour")));
        }
        return faults;
    }

    private static Stream<Fault> order(Entry entry, Exposure exposure) {
        return Stream.of(AirLimit.Unit.values()).filter(unit -> {
            double shift = lowest(exposure, AirLimit.Over.SHIFT, unit);
            double soon = Math.min(lowest(exposure, AirLimit.Over.SHORT, unit), lowest(exposure, AirLimit.Over.CEILING, unit));
            double dangerous = lowest(exposure, AirLimit.Over.DANGEROUS, unit);
            return above(shift, soon) || above(shift, dangerous) || above(soon, dangerous);
        }).map(unit -> entry.fault("limits", Texts.said("fault.limits-fall"),
                Texts.said("fault.limits-fall.do")));
    }

    private static boolean above(double one, double other) {
        return one != Double.POSITIVE_INFINITY && one > other;
    }

    private static double lowest(Exposure exposure, AirLimit.Over over, AirLimit.Unit unit) {
        return exposure.limits().stream().filter(l -> l.over() == over && l.unit() == unit)
                .mapToDouble(AirLimit::value).min().orElse(Double.POSITIVE_INFINITY);
    }

    private static Stream<Fault> vapour(Entry entry, Exposure exposure) {
        boolean whole = exposure.vapour().isPresent() && exposure.molarMass().isPresent()
                && exposure.lowestPpm(AirLimit.Over.SHIFT).isPresent();
        return exposure.hazard() != AirHazard.VAPOUR || whole ? Stream.empty()
                : Stream.of(entry.fault("vapour", Texts.said("fault.no-share-of-limit"),
                Texts.said("fault.no-share-of-limit.do")));
    }

    private static Stream<Fault> constants(Entry entry, Exposure exposure) {
        List<Double> constants = exposure.dissociation().map(Dissociation::constants).orElse(List.of());
        return constants.equals(constants.stream().sorted().toList()) ? Stream.empty()
                : Stream.of(entry.fault("dissociation", Texts.said("fault.constants-fall"), Texts.said("fault.constants-fall.do")));
    }
}
