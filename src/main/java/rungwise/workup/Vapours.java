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
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.Solvent;
import rungwise.knowledge.chemistry.Substance;
import rungwise.knowledge.decision.AssumptionId;
import rungwise.knowledge.decision.Assumptions;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.decision.Decisions;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.safety.AirHazard;
import rungwise.knowledge.safety.AirLimit;
import rungwise.knowledge.safety.Exposure;
import rungwise.knowledge.safety.Respirator;
import rungwise.knowledge.safety.Vapour;
import rungwise.question.Question;
import rungwise.rules.fact.Bay;
import rungwise.rules.fact.Breathed;
import rungwise.rules.fact.Panel;
import rungwise.rules.use.Airing;
import rungwise.rules.use.Candidate;
import rungwise.science.BayAir;
import rungwise.science.Breathing;
import rungwise.science.Evaporation;
import rungwise.science.WetTime;
import rungwise.text.Texts;

/**
 * Works out what each solvent method would put into the air of a bay, substance by substance. What is not known errs to
 * the side of more vapour: no extent means work for a whole shift, and where nobody stated what an agent is made of, each
 * kind of solvent counts as the strictest of its kind.
 */
public final class Vapours {
    private static final double SECONDS = 60;
    /** Percent of air that is all vapour: what burns only above that never does. */
    private static final double NEVER_BURNS = 100;

    private final KnowledgeBase base;
    private final Volatiles volatiles;
    private final Gases gases;
    private final Question.Extent extent;
    private final double warmestC;
    private final Extents extents;
    private final Shop shop;

    /**
     * What counts for every bay, as nobody measures it.
     *
     * @param mixing           share of its air that counts as mixed in
     * @param zoneM2           surface of half a ball around the hands
     * @param driftMs          how air drifts through it
     * @param movingMs         how air moves past a wet panel; the livelier end, as it brings more vapour
     * @param averagingMinutes over which what is quicker is spread
     */
    private record Shop(double mixing, double zoneM2, double driftMs, double movingMs, double humidity, double averagingMinutes,
                        double shiftMinutes, double openChanges, double mostChanges, double spotMl, double squareMetreMl,
                        double quickestMinutes) {
        static Shop of(Assumptions known, Decisions decisions) {
            double reach = known.value(AssumptionId.REACH_OF_HANDS);
            return new Shop(known.value(AssumptionId.BAY_MIXING), 2 * Math.PI * reach * reach, known.value(AssumptionId.INDOOR_DRIFT),
                    known.value(AssumptionId.STILL_AIR_MOST), known.value(AssumptionId.AIR_HUMIDITY),
                    known.value(AssumptionId.AVERAGING_TIME), known.value(AssumptionId.WHOLE_SHIFT),
                    known.value(AssumptionId.OPEN_GATE), decisions.value(DecisionId.FAN_AIRS_AT_MOST),
                    known.value(AssumptionId.ML_PER_SPOT), known.value(AssumptionId.ML_PER_SQUARE_METRE),
                    known.value(AssumptionId.QUICKEST_PACE));
        }

        BayAir.Room room(Bay bay, double gMin) {
            return new BayAir.Room(bay.volumeM3(), bay.airChangesPerHour(), mixing, gMin);
        }

        /** What the air near the hands holds beyond that of the room, mg/m³. */
        double near(double gMin) {
            return BayAir.nearFieldMgM3(gMin, zoneM2, driftMs);
        }
    }

    private Vapours(KnowledgeBase base, Worked worked, Question question, Panel panel) {
        this.base = base;
        this.volatiles = worked.volatiles();
        this.gases = worked.gases();
        this.extent = question.extent();
        this.extents = Extents.of(base.assumptions());
        this.shop = Shop.of(base.assumptions(), base.decisions());
        double air = question.setting().airC().orElseGet(() -> base.assumptions().value(AssumptionId.VAPOUR_TEMPERATURE));
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
            double allowed = BayAir.mgM3(part.limitPpm() * part.share() / share, part.molarMass()) - shop.near(part.gMin());
            needed = Math.max(needed, BayAir.airChangesNeeded(shop.room(bay, part.gMin()), allowed,
                    Math.max(minutes, shop.averagingMinutes())));
        }
        boolean dangerous = parts.stream().anyMatch(p -> p.peakPpm() >= p.dangerousPpm());
        double burns = parts.stream().mapToDouble(p -> BayAir.shareOfFlammable(p.peakPpm(), p.lowerFlammablePercent())).sum();
        boolean possible = needed <= shop.mostChanges();
        Bay aired = new Bay(bay.volumeM3(), Math.max(bay.airChangesPerHour(),
                Math.max(shop.openChanges(), possible ? Math.ceil(needed) : 0)));
        return Optional.of(new Airing(method.id(), bay, parts.stream().map(Part::breathed)
                .sorted(Comparator.comparingDouble((Breathed b) -> -b.share()).thenComparing(Breathed::name)).toList(),
                !standIns, share, burns, dangerous, needed, aired.airChangesPerHour(),
                shop.room(aired, parts.get(0).gMin()).minutesToNinetyFivePercent(), isExtentKnown(),
                respirator(share, dangerous, hazards(parts)), hazards(parts)));
    }

    /** What a cartridge must be made for: all that comes near its limit, and whatever comes nearest. */
    private Set<AirHazard> hazards(List<Part> parts) {
        double most = parts.stream().mapToDouble(Part::share).max().orElse(0);
        return parts.stream().filter(p -> p.share() >= Math.min(base.decisions().value(DecisionId.WORTH_AIRING), most)).map(Part::hazard)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /**
     * Gas over what is dissolved in water: at the pressure of the fresh solution, until all of it is gone or the wet film is
     * rinsed off. A film that dries before gets stronger, so that it is counted for a quarter of an hour at least, though its
     * dwell may be two minutes.
     */
    private List<Part> overWater(Agent agent, Method method, Bay bay, double minutes) {
        List<Part> parts = new ArrayList<>();
        double ml = millilitres(method, shop.spotMl(), shop.squareMetreMl());
        double seconds = Math.max(method.dwell().to(), shop.averagingMinutes()) * SECONDS;
        for (Gases.Gas gas : gases.of(agent)) {
            double molarMass = gas.what().molarMass().orElseThrow();
            double share = gas.law().leaves(molarMass, gas.molar(), shop.squareMetreMl() * gas.percent() / 100, warmestC, shop.movingMs(), seconds);
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
        double ml = millilitres(method, shop.spotMl(), shop.squareMetreMl());
        double[] left = volatiles.reference().map(r -> WetTime.left(pieces.stream().map(Volatiles.Piece::part).toList(),
                new Evaporation.Air(warmestC, shop.movingMs(), shop.humidity()), r,
                Math.max(minutes, shop.averagingMinutes()) * SECONDS / shop.squareMetreMl())).orElseGet(() -> new double[pieces.size()]);
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
                parts.add(part(substance.exposureLimitPpm().isPresent() ? substance.name() : Texts.said("air.by-its-kind", "substance",
                        substance.name()),
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

    private Part part(String name, AirHazard hazard, double molarMass, double paced, double limit, double dangerous, double burns,
                             Bay bay, double minutes) {
        double over = Math.max(minutes, shop.averagingMinutes());
        double spread = paced * minutes / over;
        return new Part(name, hazard, molarMass, spread,
                BayAir.ppm(shop.room(bay, spread).mgM3After(over) + shop.near(spread), molarMass),
                BayAir.ppm(shop.room(bay, paced).mgM3After(minutes) + shop.near(paced), molarMass), limit, dangerous, burns);
    }

    private static double limit(Exposure what) {
        return what.lowestPpm(AirLimit.Over.SHIFT).orElseThrow();
    }

    private static double dangerous(Exposure what) {
        return what.lowestPpm(AirLimit.Over.DANGEROUS).orElse(Double.POSITIVE_INFINITY);
    }

    /** What is laid on in a minute of work: its pace sets the rate, the extent only how long it lasts. */
    private double millilitres(Method method, double perSpot, double perSquareMetre) {
        double spot = perSpot / Math.max(extents.perSpot(method), shop.quickestMinutes());
        double area = method.minutes().squareMetre().isEmpty() ? spot
                : perSquareMetre / Math.max(method.minutes().squareMetre().getAsDouble(), shop.quickestMinutes());
        return extent.areaM2().isPresent() ? area : extent.spots().isPresent() ? spot : Math.max(spot, area);
    }

    private boolean isExtentKnown() {
        return Extents.isKnown(extent);
    }

    private double minutes(Method method) {
        if (!isExtentKnown()) {
            return shop.shiftMinutes();
        }
        double work = extents.workMinutes(method, extent);
        return Math.min(shop.shiftMinutes(), work);
    }

    /** The least that is enough; none where it is dangerous at once. */
    private Optional<Respirator> respirator(double share, boolean dangerous, Set<AirHazard> hazards) {
        return dangerous ? Optional.empty() : base.respirators().values().stream()
                .filter(r -> r.against().containsAll(hazards))
                .filter(r -> Breathing.isEnough(r.factor(), share, 1, Double.POSITIVE_INFINITY))
                .min(Comparator.comparingDouble(Respirator::factor).thenComparing(Respirator::id));
    }
}
