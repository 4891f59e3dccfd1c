package rungwise.workup;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rungwise.knowledge.Agent;
import rungwise.knowledge.Dwell;
import rungwise.knowledge.Figures;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Layer;
import rungwise.knowledge.Method;
import rungwise.question.Question;
import rungwise.rules.Because;
import rungwise.rules.Concluded;
import rungwise.rules.Narrow;
import rungwise.rules.Panel;
import rungwise.rules.Reason;
import rungwise.rules.Use;
import rungwise.science.Antoine;
import rungwise.science.Evaporation;
import rungwise.science.Solubility;
import rungwise.science.WetTime;
import rungwise.text.Texts;

/** How long an agent stays wet on this panel in this air, and how much may be wetted at once. */
public final class Wetness {
    /** Air never stands quite still over a panel somebody works on; m/s. */
    private static final double STILL_FROM_MS = 0.15;
    private static final double STILL_TO_MS = 0.3;
    private static final double GUSTS = 1.5;
    private static final double HUMIDITY = 0.5;
    private static final double HUMIDITY_WITHIN = 0.15;
    /** Distance below the upper edge of a patch: of one spot, and of a hand's breadth. */
    private static final double NEAR_EDGE_M = 0.01;
    private static final double FAR_FROM_EDGE_M = 0.1;
    private static final double PER_MINUTE = 60;
    /** A hand's breadth. */
    private static final double SMALLEST_M2 = 0.01;

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
        Layer layer = agent.layer().orElse(Layer.THIN_LIQUID);
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

    private Wet byTable(Method method, Dwell dwell, Agent agent, boolean knowsWarmth) {
        return new Wet(dwell.from() * PER_MINUTE, dwell.to() * PER_MINUTE, "table",
                atOnce(method, dwell.to() * PER_MINUTE, dwell), List.of(Because.of(Reason.decision(base.decisions().of("kept-wet")), knowsWarmth ? "what " + agent.name() + " is made of is not known"
                        : "neither panel nor air temperature given")));
    }

    private double seconds(Agent agent, Layer layer, boolean dry) {
        double panelC = panel.celsius();
        double wind = panel.windMs();
        double moving = dry ? Math.max(STILL_TO_MS, wind * GUSTS) : Math.max(STILL_FROM_MS, wind);
        double humid = question.setting().humidity().orElse(HUMIDITY);
        humid += question.setting().humidity().isPresent() ? 0 : dry ? -HUMIDITY_WITHIN : HUMIDITY_WITHIN;
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
        if (parts.isEmpty() || oil >= Solubility.COUNTS_FROM_PERCENT) {
            return WetTime.FOR_GOOD_SECONDS;
        }
        // thickener, surfactant and salt
        double stays = Math.max(0, 100 - volatilePercent);
        double pace = WetTime.secondsPerMicron(parts, stays, new Evaporation.Air(panelC, moving, overFilm),
                volatiles.reference().orElseThrow());
        return WetTime.seconds(dry ? layer.appliedMicrons().from() : layer.appliedMicrons().to(), layer.yieldPascals(),
                layer.millipascalSeconds(), grams / volatilePercent, dry ? NEAR_EDGE_M : FAR_FROM_EDGE_M, pace);
    }

    /**
     * What may be wetted at once, so that the last is wiped before the first is dry or has stayed longer than it may.
     * It goes by the shorter time; one spot is always possible.
     */
    private static AtOnce atOnce(Method method, double seconds, Dwell dwell) {
        double until = dwell.to() > 0 ? Math.min(seconds, dwell.to() * PER_MINUTE) : seconds;
        if (until >= WetTime.FOR_GOOD_SECONDS) {
            return new AtOnce(Optional.empty(), Optional.empty());
        }
        double wait = dwell.from() * PER_MINUTE;
        Optional<Integer> spots = positive(method.minutes().spot()).map(minutes ->
                (int) Math.max(1, Math.floor(WetTime.batch(until, wait, minutes * PER_MINUTE))));
        Optional<Double> area = positive(method.minutes().squareMetre()).map(minutes ->
                Math.max(SMALLEST_M2, Math.floor(100 * WetTime.batch(until, wait, minutes * PER_MINUTE)) / 100));
        return new AtOnce(spots, area);
    }

    private static Optional<Double> positive(OptionalDouble minutes) {
        return minutes.isPresent() && minutes.getAsDouble() > 0 ? Optional.of(minutes.getAsDouble()) : Optional.empty();
    }

    private Because because(Agent agent, Layer layer, double from, double to, Dwell dwell) {
        List<String> facts = new ArrayList<>();
        facts.add(Texts.ENGLISH.of(panel.figures()) + ", wind " + Figures.text(panel.windMs()) + " m/s"
                + (question.setting().humidity().isPresent() ? ", humidity "
                + Figures.text(question.setting().humidity().getAsDouble() * 100) + " %"
                : ", humidity taken as 35 to 65 %"));
        facts.add("laid on " + layer.appliedMicrons() + " µm thick; "
                + (from >= WetTime.FOR_GOOD_SECONDS ? "it does not dry until it is washed off"
                : "dry or spent after " + Figures.text(Math.floor(from)) + " to "
                + (to >= WetTime.FOR_GOOD_SECONDS ? "days" : Figures.text(Math.ceil(to)) + " s")));
        if (from < dwell.from() * PER_MINUTE) {
            facts.add("it may dry before its dwell of " + Figures.text(dwell.from()) + " min is over: wet it again");
        }
        boolean gel = layer.yieldPascals() > 0;
        return Because.of(Reason.decision(base.decisions().of(gel ? "gel-outlasts" : "liquid-dries-first")), String.join("; ", facts));
    }
}
