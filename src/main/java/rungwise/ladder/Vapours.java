package rungwise.ladder;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwise.knowledge.AirHazard;
import rungwise.knowledge.AirLimit;
import rungwise.knowledge.Exposure;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Method;
import rungwise.knowledge.Respirator;
import rungwise.knowledge.Solvent;
import rungwise.knowledge.Vapour;
import rungwise.rules.Airing;
import rungwise.rules.Bay;
import rungwise.rules.Candidate;
import rungwise.science.BayAir;
import rungwise.science.Breathing;

/**
 * Works out what each solvent method would put into the air of a bay. What is not known errs to the side of more
 * vapour: no extent means work for a whole shift, and each kind of solvent counts as the strictest of its kind.
 */
final class Vapours {
    /** A bay without designed airflow mixes badly (ACGIH: 1/3 to 1/10 of the air counts; the milder third). */
    private static final double MIXING = 0.3;
    /** Half ball of a metre around the hands, m². */
    private static final double ZONE_M2 = 2 * Math.PI;
    /** Air indoors drifts through it at some 0.06 m/s. */
    private static final double DRIFT_MS = 0.06;
    private static final double SHIFT_MINUTES = 480;
    /** The shortest time over which a limit is averaged. What is quicker is spread over it, as work is seldom done once. */
    private static final double AVERAGING_MINUTES = 15;
    /** An open gate or a good fan. */
    private static final double OPEN_CHANGES = 10;
    /** More than this no shop's fan gives. */
    private static final double MOST_CHANGES = 30;

    private final KnowledgeBase base;
    private final Question.Extent extent;

    private Vapours(KnowledgeBase base, Question.Extent extent) {
        this.base = base;
        this.extent = extent;
    }

    /**
     * A component with what it comes to.
     *
     * @param gMin    spread over the averaging time
     * @param ppm     the same, to hold against a limit
     * @param peakPpm at the pace of the work, to hold against what burns or harms at once
     */
    private record Part(Exposure what, double gMin, double ppm, double peakPpm, double limitPpm, double dangerousPpm) {
        double share() {
            return ppm / limitPpm;
        }
    }

    static List<Airing> of(Question question, KnowledgeBase base, Collection<Candidate> candidates) {
        if (question.setting().indoors().isEmpty()) {
            return List.of();
        }
        Question.Indoors indoors = question.setting().indoors().get();
        Vapours vapours = new Vapours(base, question.extent());
        List<Airing> airings = new ArrayList<>();
        for (Candidate candidate : candidates) {
            vapours.airing(candidate, new Bay(indoors.volumeM3(), indoors.airChangesPerHour())).ifPresent(airings::add);
        }
        return airings;
    }

    private Optional<Airing> airing(Candidate candidate, Bay bay) {
        Method method = candidate.use().method();
        double minutes = minutes(method);
        List<Part> parts = new ArrayList<>();
        double needed = 0;
        for (Map.Entry<Solvent, Double> held : candidate.use().agent().solvents().entrySet()) {
            for (Exposure what : base.exposures().values()) {
                if (what.solvents().contains(held.getKey()) && what.vapour().isPresent()) {
                    parts.add(part(what, held.getValue() / 100, method, bay, minutes));
                }
            }
        }
        double share = parts.stream().mapToDouble(Part::share).sum();
        if (share == 0) {
            return Optional.empty();
        }
        for (Part part : parts) {
            // each part may take its own share of the limit of the whole
            double allowed = BayAir.mgM3(part.limitPpm() * part.share() / share, molarMass(part)) - near(part.gMin());
            needed = Math.max(needed, BayAir.airChangesNeeded(room(bay, part.gMin()), allowed,
                    Math.max(minutes, AVERAGING_MINUTES)));
        }
        Part most = parts.stream().max(Comparator.comparingDouble(Part::share)).orElseThrow();
        boolean dangerous = parts.stream().anyMatch(p -> p.peakPpm() >= p.dangerousPpm());
        double burns = parts.stream().mapToDouble(p -> BayAir.shareOfFlammable(p.peakPpm(),
                p.what().vapour().orElseThrow().lowerFlammablePercent())).sum();
        boolean possible = needed <= MOST_CHANGES;
        Bay aired = new Bay(bay.volumeM3(), Math.max(bay.airChangesPerHour(),
                Math.max(OPEN_CHANGES, possible ? Math.ceil(needed) : 0)));
        return Optional.of(new Airing(method.id(), bay, most.what(), most.ppm(), share, burns, dangerous,
                possible ? needed : Double.POSITIVE_INFINITY, aired.airChangesPerHour(),
                room(aired, most.gMin()).minutesToNinetyFivePercent(), isExtentKnown(), respirator(share, dangerous)));
    }

    private Part part(Exposure what, double content, Method method, Bay bay, double minutes) {
        double paced = content * grams(what.vapour().orElseThrow(), method);
        double over = Math.max(minutes, AVERAGING_MINUTES);
        double spread = paced * minutes / over;
        double molarMass = what.molarMass().orElseThrow();
        return new Part(what, spread,
                BayAir.ppm(room(bay, spread).mgM3After(over) + near(spread), molarMass),
                BayAir.ppm(room(bay, paced).mgM3After(minutes) + near(paced), molarMass),
                what.lowestPpm(AirLimit.Over.SHIFT).orElseThrow(),
                what.lowestPpm(AirLimit.Over.DANGEROUS).orElse(Double.POSITIVE_INFINITY));
    }

    /** What evaporates of the neat agent in a minute of work: its pace sets the rate, the extent only how long it lasts. */
    private double grams(Vapour vapour, Method method) {
        double spot = vapour.mlPerSpot() / Math.max(method.minutes().perSpot(), 0.5);
        double area = method.minutes().squareMetre().isEmpty() ? spot
                : vapour.mlPerSquareMetre() / Math.max(method.minutes().squareMetre().getAsDouble(), 0.5);
        double ml = extent.areaM2().isPresent() ? area : extent.spots().isPresent() ? spot : Math.max(spot, area);
        return ml * vapour.densityGMl() * vapour.evaporatingShare();
    }

    private boolean isExtentKnown() {
        return Extents.isKnown(extent);
    }

    private double minutes(Method method) {
        if (!isExtentKnown()) {
            return SHIFT_MINUTES;
        }
        double work = Extents.workMinutes(method, extent);
        return Math.min(SHIFT_MINUTES, work);
    }

    private static BayAir.Room room(Bay bay, double gMin) {
        return new BayAir.Room(bay.volumeM3(), bay.airChangesPerHour(), MIXING, gMin);
    }

    private static double near(double gMin) {
        return BayAir.nearFieldMgM3(gMin, ZONE_M2, DRIFT_MS);
    }

    private static double molarMass(Part part) {
        return part.what().molarMass().orElseThrow();
    }

    /** The least that is enough; none where it is dangerous at once. */
    private Optional<Respirator> respirator(double share, boolean dangerous) {
        return dangerous ? Optional.empty() : base.respirators().values().stream()
                .filter(r -> r.against().contains(AirHazard.VAPOUR))
                .filter(r -> Breathing.isEnough(r.factor(), share, 1, Double.POSITIVE_INFINITY))
                .min(Comparator.comparingDouble(Respirator::factor).thenComparing(Respirator::id));
    }
}
