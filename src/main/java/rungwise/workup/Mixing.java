package rungwise.workup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Form;
import rungwise.knowledge.method.ToolKind;
import rungwise.question.Question;
import rungwise.rules.use.Use;
import rungwise.science.Dilution;
import rungwise.text.Texts;

/**
 * How much of an agent goes into a bottle of the size asked for. It reads a dilution as labels write it: 1:5 to 1:20,
 * 2 to 4 %, 1 part to 9 water. What it cannot read is left to the label.
 */
public final class Mixing {
    private static final String FIGURE = "(\\d+(?:\\.\\d+)?)";
    private static final Pattern RATIO = Pattern.compile("1:" + FIGURE + "(?: to 1:" + FIGURE + ")?");
    private static final Pattern PARTS = Pattern.compile("1 part .*? to " + FIGURE + " water");
    private static final Pattern PERCENT = Pattern.compile("(?:" + FIGURE + " to |up to )?" + FIGURE + " %");

    private static final Pattern NAMED = Pattern.compile("^[a-z][a-z ,]* (?:\\d|up to)[^:]*%");

    private Mixing() {
    }

    /** Shares of the bottle, weakest and strongest. */
    private record Shares(double weak, double strong) {
    }

    /** The agent's own words on mixing, and the amounts where a size was asked for. */
    public static String text(Use use, Optional<Question.Mixing> asked) {
        Agent agent = use.agent();
        Optional<Shares> shares = agent.dilution().startsWith("ready to use") ? Optional.empty() : read(agent.dilution());
        if (asked.isEmpty() || shares.isEmpty()) {
            return agent.mix();
        }
        String amounts = amounts(agent, shares.get(), asked.get().bottleMl(),
                isFoamed(use) ? asked.get().drawParts() : OptionalDouble.empty());
        return agent.mix().isEmpty() ? amounts : amounts + " " + agent.mix();
    }

    private static Optional<Shares> read(String dilution) {
        Matcher ratio = RATIO.matcher(dilution);
        if (ratio.find()) {
            double strong = Dilution.oneToParts(Double.parseDouble(ratio.group(1)));
            return Optional.of(new Shares(ratio.group(2) == null ? strong
                    : Dilution.oneToParts(Double.parseDouble(ratio.group(2))), strong));
        }
        Matcher parts = PARTS.matcher(dilution);
        if (parts.find()) {
            double share = Dilution.oneToParts(Double.parseDouble(parts.group(1)));
            return Optional.of(new Shares(share, share));
        }
        Matcher percent = PERCENT.matcher(dilution);
        if (percent.find()) {
            double strong = Double.parseDouble(percent.group(2)) / 100;
            double weak = percent.group(1) == null ? strong : Double.parseDouble(percent.group(1)) / 100;
            return Optional.of(new Shares(weak, strong));
        }
        return Optional.empty();
    }

    /** A lance lays foam that nothing rubs in; everything else goes into a plain bottle. */
    private static boolean isFoamed(Use use) {
        return use.tool().kind() == ToolKind.NONE
                && (use.agent().form() == Form.FOAM || use.agent().family().equals("wash"));
    }

    private static String amounts(Agent agent, Shares shares, double bottle, OptionalDouble drawParts) {
        double draw = drawParts.orElse(0);
        if (shares.strong() > Dilution.oneToParts(draw)) {
            return Texts.said("mix.lance-too-weak", "draw", draw, "percent", 100 * Dilution.oneToParts(draw));
        }
        List<String> sentences = new ArrayList<>();
        sentences.add(Texts.said(isByMass(agent) ? "mix.grams" : "mix.millilitres", "bottle", bottle, "amount", span(
                round(Dilution.lance(bottle, draw, shares.weak()).concentrateMl()),
                round(Dilution.lance(bottle, draw, shares.strong()).concentrateMl()))));
        if (drawParts.isPresent()) {
            sentences.add(Texts.said("mix.panel-gets", "percent", span(100 * shares.weak(), 100 * shares.strong())));
        }
        if (RATIO.matcher(agent.dilution()).find()) {
            sentences.add(Texts.said("mix.ratio"));
        }
        if (isByMass(agent)) {
            sentences.add(Texts.said("mix.pure"));
        }
        return String.join(" ", sentences);
    }

    private static String span(double from, double to) {
        String first = Figures.text(from);
        String last = Figures.text(to);
        return first.equals(last) ? last : Texts.said("span", "from", first, "to", last);
    }

    /** A percentage of something named is one by mass. */
    private static boolean isByMass(Agent agent) {
        return NAMED.matcher(agent.dilution()).find();
    }

    private static double round(double ml) {
        return ml >= 20 ? Math.round(ml) : Math.round(ml * 10) / 10.0;
    }
}
