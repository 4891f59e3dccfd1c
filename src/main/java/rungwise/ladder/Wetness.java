package rungwise.ladder;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rungwise.knowledge.Agent;
import rungwise.knowledge.Basis;
import rungwise.knowledge.Dwell;
import rungwise.knowledge.Figures;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Layer;
import rungwise.knowledge.Method;
import rungwise.rules.Because;
import rungwise.rules.Concluded;
import rungwise.rules.Narrow;
import rungwise.science.Antoine;
import rungwise.science.Evaporation;
import rungwise.science.Solubility;
import rungwise.science.WetTime;

/** How long an agent stays wet on this panel in this air, and how much may be wetted at once. */
final class Wetness {
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
    private final Scene scene;
    private final Volatiles volatiles;

    Wetness(KnowledgeBase base, Volatiles volatiles, Question question, Scene scene) {
        this.base = base;
        this.volatiles = volatiles;
        this.question = question;
        this.scene = scene;
    }

    /** Empty where nothing wet stays on the panel. */
    Optional<Answer.Wet> of(Choice choice) {
        Method method = choice.method();
        Agent agent = choice.use().agent();
        Dwell dwell = dwell(choice);
        if (!agent.isChemistry()) {
            return Optional.empty();
        }
        boolean knowsWarmth = scene.panel().measured() || question.setting().airC().isPresent();
        if (!knowsWarmth || agent.composition().isEmpty() || volatiles.reference().isEmpty()) {
            return dwell.to() <= 0 ? Optional.empty() : Optional.of(byTable(method, dwell, agent, knowsWarmth));
        }
        Layer layer = agent.layer().orElse(Layer.THIN_LIQUID);
        double from = seconds(agent, layer, true);
        double to = Math.max(from, seconds(agent, layer, false));
        return Optional.of(new Answer.Wet(Math.floor(from), Math.ceil(to), "computed",
                atOnce(method, from, dwell), List.of(because(agent, layer, from, to, dwell))));
    }

    /** The dwell as the day narrows it. */
    static Dwell dwell(Choice choice) {
        Dwell dwell = choice.method().dwell();
        double from = dwell.from();
        double to = dwell.to();
        for (Concluded<Narrow> narrow : choice.judged().narrows()) {
            from = Math.min(from * narrow.conclusion().share(), narrow.conclusion().atMostMinutes());
            to = Math.min(to * narrow.conclusion().share(), narrow.conclusion().atMostMinutes());
        }
        return new Dwell(from, to, to == 0 ? 0 : (from + to) / 2);
    }

    private Answer.Wet byTable(Method method, Dwell dwell, Agent agent, boolean knowsWarmth) {
        return new Answer.Wet(dwell.from() * PER_MINUTE, dwell.to() * PER_MINUTE, "table",
                atOnce(method, dwell.to() * PER_MINUTE, dwell), List.of(new Because("staysWet",
                "It is kept wet for its dwell; wet it again before it dries.", "Not enough is known to work the drying out.",
                List.of(knowsWarmth ? "what " + agent.name() + " is made of is not known"
                        : "neither panel nor air temperature given"), method.sources(), method.basis())));
    }

    private double seconds(Agent agent, Layer layer, boolean dry) {
        double panelC = scene.panel().celsius();
        double wind = scene.panel().windMs();
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
    private static Answer.AtOnce atOnce(Method method, double seconds, Dwell dwell) {
        double until = dwell.to() > 0 ? Math.min(seconds, dwell.to() * PER_MINUTE) : seconds;
        if (until >= WetTime.FOR_GOOD_SECONDS) {
            return new Answer.AtOnce(Optional.empty(), Optional.empty());
        }
        double wait = dwell.from() * PER_MINUTE;
        Optional<Integer> spots = positive(method.minutes().spot()).map(minutes ->
                (int) Math.max(1, Math.floor(WetTime.batch(until, wait, minutes * PER_MINUTE))));
        Optional<Double> area = positive(method.minutes().squareMetre()).map(minutes ->
                Math.max(SMALLEST_M2, Math.floor(100 * WetTime.batch(until, wait, minutes * PER_MINUTE)) / 100));
        return new Answer.AtOnce(spots, area);
    }

    private static Optional<Double> positive(OptionalDouble minutes) {
        return minutes.isPresent() && minutes.getAsDouble() > 0 ? Optional.of(minutes.getAsDouble()) : Optional.empty();
    }

    private Because because(Agent agent, Layer layer, double from, double to, Dwell dwell) {
        List<String> facts = new ArrayList<>();
        facts.add(scene.panel().figures() + ", wind " + Figures.text(scene.panel().windMs()) + " m/s"
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
        return new Because("staysWet", gel ? "A gel outlasts a liquid."
                : "A thin liquid on an upright panel is soon dry; a gel of the same would outlast it.",
                gel ? "Both lose vapour at the same rate, but the gel holds its thickness where a liquid runs off."
                        : "It runs off to a thin film while vapour leaves it, and dries from its upper edge.",
                facts, List.of("H14", "H17"), Basis.MEMORY);
    }
}
