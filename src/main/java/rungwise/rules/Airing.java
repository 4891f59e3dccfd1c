package rungwise.rules;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rungwise.knowledge.AirHazard;
import rungwise.knowledge.Figures;
import rungwise.knowledge.Respirator;
import rungwise.knowledge.Sentence;

/**
 * What a method would put into the air of the bay, near the hands, by the end of its work.
 *
 * @param parts            each component, over at least a quarter of an hour; what counts most first
 * @param composed         by its substances; else each kind of solvent was counted as one stand-in
 * @param shareOfLimit     of all components together, 1 = the limit over a shift
 * @param shareOfFlammable of all components together at the pace of the work, 1 = it burns
 * @param dangerous        at or above what is dangerous at once
 * @param changesNeeded    air changes an hour that keep it at the limit; infinite where no shop's airing does
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
    private static final double STOP = rungwise.science.BayAir.STOP_SHARE_OF_FLAMMABLE;
    /** Below this share nothing need be said. */
    public static final double WORTH_SAYING = 0.1;

    public boolean stops() {
        return shareOfFlammable >= STOP || dangerous;
    }

    /** Over the limit of a shift, or near what burns or harms at once, which is over any. */
    public boolean overLimit() {
        return shareOfLimit > 1 || stops();
    }

    public boolean hasRespirator() {
        return respirator.isPresent();
    }

    public boolean worthSaying() {
        return !overLimit() && shareOfLimit >= WORTH_SAYING;
    }

    public String figures() {
        return bay.figures() + "; near the hands " + parts.stream().limit(NAMED).map(Breathed::figures)
                .collect(Collectors.joining(", ")) + (parts.size() > NAMED ? " and others" : "")
                + (composed ? "" : ", a stand-in as what it is made of is not stated") + "; together "
                + percent(shareOfLimit) + " of the limit, " + percent(shareOfFlammable)
                + " of what burns" + (extentKnown ? "" : "; extent not given, a whole shift assumed");
    }

    /** What to do about it. */
    public String overText() {
        String air = Double.isInfinite(changesNeeded) ? "No fan airs this bay enough: work outdoors or extract at the spot."
                : "The bay needs " + Figures.text(Math.ceil(changesNeeded)) + " air changes an hour while it lasts.";
        return air + " " + airOut() + (respirator.isPresent() ? " Otherwise: " + Sentence.within(respirator.get().name())
                + ". A particle mask stops no vapour." : " No cartridge is enough here.");
    }

    public String mildText() {
        return "Vapour to " + percent(shareOfLimit) + " of the limit near the hands. " + airOut();
    }

    private String airOut() {
        return "Afterwards " + Figures.text(Math.ceil(airOutMinutes)) + " min at " + Figures.text(airOutChanges)
                + " air changes an hour clear it.";
    }

    private static String percent(double share) {
        double percent = share * 100;
        return Figures.text(percent >= 10 ? Math.round(percent) : Math.round(percent * 10) / 10.0) + " %";
    }
}
