package rungwise.workup;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import rungwise.knowledge.Agent;
import rungwise.knowledge.AirHazard;
import rungwise.knowledge.AirLimit;
import rungwise.knowledge.Exposure;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Method;
import rungwise.knowledge.Respirator;
import rungwise.knowledge.Solvent;
import rungwise.knowledge.Substance;
import rungwise.knowledge.Vapour;
import rungwise.question.Question;
import rungwise.rules.Airing;
import rungwise.rules.Bay;
import rungwise.rules.Breathed;
import rungwise.rules.Candidate;
import rungwise.rules.Panel;
import rungwise.science.BayAir;
import rungwise.science.Breathing;
import rungwise.science.Evaporation;
import rungwise.science.WetTime;

/**
 * Works out what each solvent method would put into the air of a bay, substance by substance. What is not known errs to
 * the side of more vapour: no extent means work for a whole shift, and where nobody stated what an agent is made of, each
 * kind of solvent counts as the strictest of its kind.
 */
public final class Vapours {
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
    /** What a damp cloth brings to a spot and what wets a square metre; common practice. */
    private static final double SPOT_ML = 2;
    private static final double SQUARE_METRE_ML = 50;
    /** Of the air, which only holds water back. */
    private static final double HUMIDITY = 0.5;

    /** Air that moves past a wet panel indoors, m/s; the livelier end, as it brings more vapour. */
    private static final double MOVING_MS = 0.3;
    private static final double SECONDS = 60;
    private static final double NEVER_BURNS = 100;
    /** Warm, where nobody gave a temperature. */
    private static final double WARM_C = 25;

    private final KnowledgeBase base;
    private final Volatiles volatiles;
    private final Gases gases;
    private final Question.Extent extent;
    private final double warmestC;

    private Vapours(KnowledgeBase base, Worked worked, Question question, Panel panel) {
        this.base = base;
        this.volatiles = worked.volatiles();
        this.gases = worked.gases();
        this.extent = question.extent();
        double air = question.setting().airC().orElse(WARM_C);
        this.warmestC = panel.measured() ? Math.max(air, panel.celsius()) : air;
    }

    /**
     * A component with what it comes to.
     *
     * @param gMin    spread over the averaging time
     * @param ppm     the same, to hold against a limit
     * @param peakPpm at the pace of the work, to hold against what burns or harms at once
     */
    private record Part(String name, AirHazard hazard, double molarMass, double gMin, double ppm, double peakPpm, double limitPpm,
                        double dangerousPpm, double lowerFlammablePercent) {
        /** No more of it than stands right over the agent. */
        Part atMost(double ppmOverIt) {
            return new Part(name, hazard, molarMass, gMin, Math.min(ppm, ppmOverIt), Math.min(peakPpm, ppmOverIt), limitPpm,
                    dangerousPpm, lowerFlammablePercent);
        }

        /** Against a limit that may never be passed, not even for a quarter of an hour. */
        Part atItsPeak() {
            return new Part(name, hazard, molarMass, gMin, peakPpm, peakPpm, limitPpm, dangerousPpm, lowerFlammablePercent);
        }

        double share() {
            return ppm / limitPpm;
        }

        Breathed breathed() {
            return new Breathed(name, ppm, limitPpm);
        }
    }

    public static List<Airing> of(Question question, KnowledgeBase base, Worked worked, Panel panel, Bay bay,
                           Collection<Candidate> candidates) {
        Vapours vapours = new Vapours(base, worked, question, panel);
        List<Airing> airings = new ArrayList<>();
        for (Candidate candidate : candidates) {
            vapours.airing(candidate, bay).ifPresent(airings::add);
        }
        return airings;
    }

    private Optional<Airing> airing(Candidate candidate, Bay bay) {
        Method method = candidate.use().method();
        Agent agent = candidate.use().agent();
        double minutes = minutes(method);
        boolean composed = agent.composition().keySet().stream().anyMatch(id -> isBreathed(base.substances().get(id)));
        List<Part> parts = new ArrayList<>(composed ? bySubstance(agent, method, bay, minutes)
                : byKind(agent, method, bay, minutes));
        boolean standIns = !composed && !parts.isEmpty();
        parts.addAll(overWater(agent, method, bay, minutes));
        double share = parts.stream().mapToDouble(Part::share).sum();
        if (share == 0) {
            return Optional.empty();
        }
        double needed = 0;
        for (Part part : parts) {
            // each part may take its own share of the limit of the whole
            double allowed = BayAir.mgM3(part.limitPpm() * part.share() / share, part.molarMass()) - near(part.gMin());
            needed = Math.max(needed, BayAir.airChangesNeeded(room(bay, part.gMin()), allowed,
                    Math.max(minutes, AVERAGING_MINUTES)));
        }
        boolean dangerous = parts.stream().anyMatch(p -> p.peakPpm() >= p.dangerousPpm());
        double burns = parts.stream().mapToDouble(p -> BayAir.shareOfFlammable(p.peakPpm(), p.lowerFlammablePercent())).sum();
        boolean possible = needed <= base.decisions().value("fan-airs-at-most");
        Bay aired = new Bay(bay.volumeM3(), Math.max(bay.airChangesPerHour(),
                Math.max(OPEN_CHANGES, possible ? Math.ceil(needed) : 0)));
        return Optional.of(new Airing(method.id(), bay, parts.stream().map(Part::breathed)
                .sorted(Comparator.comparingDouble((Breathed b) -> -b.share()).thenComparing(Breathed::name)).toList(),
                !standIns, share, burns, dangerous, needed, aired.airChangesPerHour(),
                room(aired, parts.get(0).gMin()).minutesToNinetyFivePercent(), isExtentKnown(),
                respirator(share, dangerous, hazards(parts)), hazards(parts)));
    }

    /** What a cartridge must be made for: all that comes near its limit, and whatever comes nearest. */
    private Set<AirHazard> hazards(List<Part> parts) {
        double most = parts.stream().mapToDouble(Part::share).max().orElse(0);
        return parts.stream().filter(p -> p.share() >= Math.min(base.decisions().value("worth-airing"), most)).map(Part::hazard)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /**
     * Gas over what is dissolved in water: at the pressure of the fresh solution, until all of it is gone or the wet film is
     * rinsed off. A film that dries before gets stronger, so that it is counted for a quarter of an hour at least, though its
     * dwell may be two minutes.
     */
    private List<Part> overWater(Agent agent, Method method, Bay bay, double minutes) {
        List<Part> parts = new ArrayList<>();
        double ml = millilitres(method, SPOT_ML, SQUARE_METRE_ML);
        double seconds = Math.max(method.dwell().to(), AVERAGING_MINUTES) * SECONDS;
        for (Gases.Gas gas : gases.of(agent)) {
            double molarMass = gas.what().molarMass().orElseThrow();
            double share = gas.law().leaves(molarMass, gas.molar(), SQUARE_METRE_ML * gas.percent() / 100, warmestC, MOVING_MS, seconds);
            OptionalDouble shift = gas.what().lowestPpm(AirLimit.Over.SHIFT);
            Part part = part(gas.what().name(), gas.what().hazard(), molarMass, ml * gas.percent() / 100 * share,
                    shift.orElseGet(() -> Fumes.limit(gas.what()).orElseThrow()), dangerous(gas.what()), NEVER_BURNS, bay, minutes);
            parts.add((shift.isPresent() ? part : part.atItsPeak()).atMost(gas.law().ppm(gas.molar(), warmestC)));
        }
        return parts;
    }

    /** A solvent, or something else that somebody set a limit for. */
    private static boolean isBreathed(Substance substance) {
        return substance.isOrganic() || substance.exposureLimitPpm().isPresent();
    }

    /** Each substance by its own vapour pressure, limits and share; what nobody published of it by its kind. */
    private List<Part> bySubstance(Agent agent, Method method, Bay bay, double minutes) {
        List<Volatiles.Piece> pieces = volatiles.of(agent);
        double ml = millilitres(method, SPOT_ML, SQUARE_METRE_ML);
        double[] left = volatiles.reference().map(r -> WetTime.left(pieces.stream().map(Volatiles.Piece::part).toList(),
                new Evaporation.Air(warmestC, MOVING_MS, HUMIDITY), r,
                Math.max(minutes, AVERAGING_MINUTES) * SECONDS / SQUARE_METRE_ML)).orElseGet(() -> new double[pieces.size()]);
        Map<String, Double> grams = new LinkedHashMap<>();
        for (int i = 0; i < pieces.size(); i++) {
            WetTime.Part part = pieces.get(i).part();
            grams.merge(pieces.get(i).of().id(), ml * part.volume() / 100 * part.component().gramsPerCm3() * (1 - left[i]),
                    Double::sum);
        }
        List<Part> parts = new ArrayList<>();
        for (Map.Entry<String, Double> held : agent.composition().entrySet()) {
            Substance substance = base.substances().get(held.getKey());
            Optional<Exposure> kind = substance.solvent().flatMap(this::standIn);
            double limit = substance.exposureLimitPpm().orElseGet(() -> kind.map(Vapours::limit).orElse(Double.POSITIVE_INFINITY));
            Double paced = grams.get(substance.id());
            if (!isBreathed(substance)) {
                continue;
            }
            if (paced != null) {
                parts.add(part(substance.name() + (substance.exposureLimitPpm().isPresent() ? "" : " by the limit of its kind"),
                        AirHazard.VAPOUR, substance.molarMassGrams(), paced, limit,
                        substance.idlhPpm().orElseGet(() -> kind.map(Vapours::dangerous).orElse(Double.POSITIVE_INFINITY)),
                        substance.lowerFlammablePercent().orElseGet(() -> kind.flatMap(Exposure::vapour)
                                .map(Vapour::lowerFlammablePercent).orElse(NEVER_BURNS)), bay, minutes));
            } else {
                // nobody published a vapour pressure: next to none, as of an oil
                standIn(Solvent.OIL).ifPresent(o -> parts.add(part(o, held.getValue() / 100, method, bay, minutes)));
            }
        }
        return parts;
    }

    private Optional<Exposure> standIn(Solvent kind) {
        return base.exposures().values().stream().filter(e -> e.solvents().contains(kind) && e.vapour().isPresent()).findFirst();
    }

    /** What it is made of is not stated: each kind of solvent as the strictest of its kind, all of it evaporating. */
    private List<Part> byKind(Agent agent, Method method, Bay bay, double minutes) {
        List<Part> parts = new ArrayList<>();
        agent.solvents().forEach((kind, percent) -> base.exposures().values().stream()
                .filter(e -> e.solvents().contains(kind) && e.vapour().isPresent())
                .forEach(e -> parts.add(part(e, percent / 100, method, bay, minutes))));
        return parts;
    }

    private Part part(Exposure what, double content, Method method, Bay bay, double minutes) {
        Vapour vapour = what.vapour().orElseThrow();
        double grams = content * millilitres(method, vapour.mlPerSpot(), vapour.mlPerSquareMetre()) * vapour.densityGMl()
                * vapour.evaporatingShare();
        return part(what.name(), what.hazard(), what.molarMass().orElseThrow(), grams, limit(what), dangerous(what),
                vapour.lowerFlammablePercent(), bay, minutes);
    }

    private static Part part(String name, AirHazard hazard, double molarMass, double paced, double limit, double dangerous, double burns,
                             Bay bay, double minutes) {
        double over = Math.max(minutes, AVERAGING_MINUTES);
        double spread = paced * minutes / over;
        return new Part(name, hazard, molarMass, spread,
                BayAir.ppm(room(bay, spread).mgM3After(over) + near(spread), molarMass),
                BayAir.ppm(room(bay, paced).mgM3After(minutes) + near(paced), molarMass), limit, dangerous, burns);
    }

    private static double limit(Exposure what) {
        return what.lowestPpm(AirLimit.Over.SHIFT).orElseThrow();
    }

    private static double dangerous(Exposure what) {
        return what.lowestPpm(AirLimit.Over.DANGEROUS).orElse(Double.POSITIVE_INFINITY);
    }

    /** What is laid on in a minute of work: its pace sets the rate, the extent only how long it lasts. */
    private double millilitres(Method method, double perSpot, double perSquareMetre) {
        double spot = perSpot / Math.max(method.minutes().perSpot(), 0.5);
        double area = method.minutes().squareMetre().isEmpty() ? spot
                : perSquareMetre / Math.max(method.minutes().squareMetre().getAsDouble(), 0.5);
        return extent.areaM2().isPresent() ? area : extent.spots().isPresent() ? spot : Math.max(spot, area);
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

    /** The least that is enough; none where it is dangerous at once. */
    private Optional<Respirator> respirator(double share, boolean dangerous, Set<AirHazard> hazards) {
        return dangerous ? Optional.empty() : base.respirators().values().stream()
                .filter(r -> r.against().containsAll(hazards))
                .filter(r -> Breathing.isEnough(r.factor(), share, 1, Double.POSITIVE_INFINITY))
                .min(Comparator.comparingDouble(Respirator::factor).thenComparing(Respirator::id));
    }
}
