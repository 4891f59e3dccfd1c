package rungwise.workup;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Range;
import rungwise.knowledge.decision.AssumptionId;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Dwell;
import rungwise.knowledge.method.Layer;
import rungwise.knowledge.method.Method;
import rungwise.question.Question;
import rungwise.rules.fact.Panel;
import rungwise.rules.said.Because;
import rungwise.rules.said.Concluded;
import rungwise.rules.said.Narrow;
import rungwise.rules.said.Reason;
import rungwise.rules.use.Use;
import rungwise.science.Antoine;
import rungwise.science.Evaporation;
import rungwise.science.WetTime;
import rungwise.text.Figure;

/** How long an agent stays wet on this panel in this air, and how much may be wetted at once. */
public final class Wetness {
    private static final double PER_MINUTE = 60;

    private final KnowledgeBase base;
    private final Question question;
    private final Panel panel;
    private final Volatiles volatiles;

    public Wetness(KnowledgeBase base, Volatiles volatiles, Question question, Panel panel) {
        this.base = base;
        this.volatiles = volatiles;
        this.question = question;
        this.panel = panel;
    }

    /** Empty where nothing wet stays on the panel. */
    public Optional<Wet> of(Use use, Dwell dwell) {
        Method method = use.method();
        Agent agent = use.agent();
        if (!agent.isChemistry()) {
            return Optional.empty();
        }
        boolean knowsWarmth = panel.measured() || question.setting().airC().isPresent();
        if (!knowsWarmth || agent.composition().isEmpty() || volatiles.reference().isEmpty()) {
            return dwell.to() <= 0 ? Optional.empty() : Optional.of(byTable(method, dwell, agent, knowsWarmth));
        }
        Layer layer = agent.layer().orElseGet(this::thinLiquid);
        double from = seconds(agent, layer, true);
        double to = Math.max(from, seconds(agent, layer, false));
        return Optional.of(new Wet(Math.floor(from), Math.ceil(to), "computed",
                atOnce(method, from, dwell), List.of(because(agent, layer, from, to, dwell))));
    }

    /** The dwell as the day narrows it. */
    public static Dwell dwell(Method method, List<Concluded<Narrow>> narrows) {
        Dwell dwell = method.dwell();
        double from = dwell.from();
        double to = dwell.to();
        for (Concluded<Narrow> narrow : narrows) {
            from = Math.min(from * narrow.conclusion().share(), narrow.conclusion().atMostMinutes());
            to = Math.min(to * narrow.conclusion().share(), narrow.conclusion().atMostMinutes());
        }
        return new Dwell(from, to, to == 0 ? 0 : (from + to) / 2);
    }

    private double assumed(AssumptionId id) {
        return base.assumptions().value(id);
    }

    /** From a cloth or a sprayer, for an agent of which nobody says how it lies. */
    private Layer thinLiquid() {
        return new Layer(new Range(assumed(AssumptionId.THIN_LIQUID_LEAST), assumed(AssumptionId.THIN_LIQUID_MOST)), 0,
                assumed(AssumptionId.THIN_LIQUID_VISCOSITY));
    }

    /** Share of water in the air where it was told, or between which shares it is taken to be. */
    private Range humidity() {
        if (question.setting().humidity().isPresent()) {
            return new Range(question.setting().humidity().getAsDouble(), question.setting().humidity().getAsDouble());
        }
        double middle = assumed(AssumptionId.AIR_HUMIDITY);
        double within = assumed(AssumptionId.HUMIDITY_WITHIN);
        return new Range(middle - within, middle + within);
    }

    private Wet byTable(Method method, Dwell dwell, Agent agent, boolean knowsWarmth) {
        return new Wet(dwell.from() * PER_MINUTE, dwell.to() * PER_MINUTE, "table", atOnce(method, dwell.to() * PER_MINUTE, dwell),
                List.of(Because.of(Reason.decision(base.decisions().of(DecisionId.KEPT_WET)), List.of(
                        Figure.of(knowsWarmth ? "makeUpNotKnown" : "noTemperature", agent.name())))));
    }

    private double seconds(Agent agent, Layer layer, boolean dry) {
        double panelC = panel.celsius();
        double wind = panel.windMs();
        double moving = dry ? Math.max(assumed(AssumptionId.STILL_AIR_MOST), wind * assumed(AssumptionId.GUSTS))
                : Math.max(assumed(AssumptionId.STILL_AIR_LEAST), wind);
        double humid = dry ? humidity().from() : humidity().to();
        Antoine water = volatiles.water().vapour();
        double airC = question.setting().airC().orElse(panelC);
        double overFilm = Math.min(1, humid * water.kpa(airC) / water.kpa(panelC));
        List<WetTime.Part> parts = volatiles.of(agent).stream().map(Volatiles.Piece::part).toList();
        double grams = 0;
        double volatilePercent = 0;
        for (WetTime.Part part : parts) {
            grams += part.volume() * part.component().gramsPerCm3();
            volatilePercent += part.volume();
        }
        double oil = agent.composition().entrySet().stream().filter(e -> volatiles.isSilent(base.substances().get(e.getKey())))
                .mapToDouble(Map.Entry::getValue).sum();
        if (parts.isEmpty() || oil >= base.decisions().value(DecisionId.SOLVENT_COUNTS)) {
            return WetTime.FOR_GOOD_SECONDS;
        }
        // thickener, surfactant and salt
        double stays = Math.max(0, 100 - volatilePercent);
        double pace = WetTime.secondsPerMicron(parts, stays, new Evaporation.Air(panelC, moving, overFilm),
                volatiles.reference().orElseThrow());
        return WetTime.seconds(dry ? layer.appliedMicrons().from() : layer.appliedMicrons().to(), layer.yieldPascals(),
                layer.millipascalSeconds(), grams / volatilePercent,
                assumed(dry ? AssumptionId.UPPER_EDGE_NEAR : AssumptionId.UPPER_EDGE_FAR), pace);
    }

    /**
     * What may be wetted at once, so that the last is wiped before the first is dry or has stayed longer than it may.
     * It goes by the shorter time; one spot is always possible.
     */
    private AtOnce atOnce(Method method, double seconds, Dwell dwell) {
        double until = dwell.to() > 0 ? Math.min(seconds, dwell.to() * PER_MINUTE) : seconds;
        if (until >= WetTime.FOR_GOOD_SECONDS) {
            return new AtOnce(Optional.empty(), Optional.empty());
        }
        double wait = dwell.from() * PER_MINUTE;
        Optional<Integer> spots = positive(method.minutes().spot()).map(minutes ->
                (int) Math.max(1, Math.floor(WetTime.batch(until, wait, minutes * PER_MINUTE))));
        Optional<Double> area = positive(method.minutes().squareMetre()).map(minutes ->
                Math.max(assumed(AssumptionId.SMALLEST_PATCH), Math.floor(100 * WetTime.batch(until, wait, minutes * PER_MINUTE)) / 100));
        return new AtOnce(spots, area);
    }

    private static Optional<Double> positive(OptionalDouble minutes) {
        return minutes.isPresent() && minutes.getAsDouble() > 0 ? Optional.of(minutes.getAsDouble()) : Optional.empty();
    }

    private Because because(Agent agent, Layer layer, double from, double to, Dwell dwell) {
        List<Figure> figures = new ArrayList<>();
        figures.add(Figure.of(panel.measured() ? "panel" : "panelWorkedOut", Math.round(panel.celsius()), "°C"));
        figures.add(Figure.of("wind", panel.windMs(), "m/s"));
        Range humid = new Range(Math.round(100 * humidity().from()), Math.round(100 * humidity().to()));
        figures.add(Figure.of(question.setting().humidity().isPresent() ? "humidity" : "humidityTaken", humid, "%"));
        figures.add(Figure.of("laidOn", layer.appliedMicrons(), "µm"));
        if (from >= WetTime.FOR_GOOD_SECONDS) {
            figures.add(Figure.of("staysWet", agent.name()));
        } else if (to >= WetTime.FOR_GOOD_SECONDS) {
            figures.add(Figure.of("driesAtSoonest", Math.floor(from), "s"));
        } else {
            figures.add(Figure.of("driesAfter", new Range(Math.floor(from), Math.ceil(to)), "s"));
        }
        if (from < dwell.from() * PER_MINUTE) {
            figures.add(Figure.of("driesWithinDwell", dwell.from(), "min"));
        }
        boolean gel = layer.yieldPascals() > 0;
        return Because.of(Reason.decision(base.decisions().of(gel ? DecisionId.GEL_OUTLASTS : DecisionId.LIQUID_DRIES_FIRST)), figures);
    }
}
