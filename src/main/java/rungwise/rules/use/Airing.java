package rungwise.rules.use;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungwise.knowledge.common.Sentence;
import rungwise.knowledge.safety.AirHazard;
import rungwise.knowledge.safety.Respirator;
import rungwise.rules.fact.Bay;
import rungwise.rules.fact.Breathed;
import rungwise.text.Figure;

/**
 * What a method would put into the air of the bay, near the hands, by the end of its work.
 *
 * @param parts            each component, over at least a quarter of an hour; what counts most first
 * @param composed         by its substances; else each kind of solvent was counted as one stand-in
 * @param shareOfLimit     of all components together, 1 = the limit over a shift
 * @param shareOfFlammable of all components together at the pace of the work, 1 = it burns
 * @param dangerous        at or above what is dangerous at once
 * @param changesNeeded    air changes an hour that keep it at the limit; more than any fan gives where only open air does
 * @param airOutChanges    air changes an hour with the gate open
 * @param airOutMinutes    until 95 % is gone with those, once the work is done
 * @param extentKnown      false where work for a whole shift was assumed
 * @param respirator       the least that is enough, if any is
 * @param hazards          by what takes them out of the air again
 */
public record Airing(String method, Bay bay, List<Breathed> parts, boolean composed, double shareOfLimit, double shareOfFlammable,
                     boolean dangerous, double changesNeeded, double airOutChanges, double airOutMinutes, boolean extentKnown,
                     Optional<Respirator> respirator, Set<AirHazard> hazards) {
    public Airing {
        parts = List.copyOf(parts);
        hazards = Set.copyOf(hazards);
    }

    private static final int NAMED = 3;

    public List<Figure> figures() {
        List<Figure> all = new ArrayList<>(bay.figures());
        parts.stream().limit(NAMED).forEach(p -> all.addAll(p.figures()));
        if (parts.size() > NAMED) {
            all.add(Figure.of("otherVapours", parts.size() - NAMED));
        }
        if (!composed) {
            all.add(Figure.of("untold", "composition"));
        }
        all.add(Figure.of("shareOfLimit", percent(shareOfLimit), "%"));
        all.add(Figure.of("shareOfFlammable", percent(shareOfFlammable), "%"));
        if (!extentKnown) {
            all.add(Figure.of("untold", "extent"));
        }
        return List.copyOf(all);
    }

    /** The same with what clears the air; where none are needed, or no number of them is enough, none are given. */
    public List<Figure> airingFigures() {
        List<Figure> all = new ArrayList<>(figures());
        if (changesNeeded > 0 && Double.isFinite(changesNeeded)) {
            all.add(Figure.of("changesNeeded", Math.ceil(changesNeeded), "ach"));
        }
        all.add(Figure.of("airOutMinutes", Math.ceil(airOutMinutes), "min"));
        all.add(Figure.of("airOutChanges", airOutChanges, "ach"));
        return List.copyOf(all);
    }

    public List<Figure> respiratorFigures() {
        return Figure.all(figures(), respirator.map(r -> List.of(Figure.of("respirator", Sentence.within(r.name())))).orElse(List.of()));
    }

    private static double percent(double share) {
        double percent = share * 100;
        return percent >= 10 ? Math.round(percent) : Math.round(percent * 10) / 10.0;
    }
}
