package rungwise.card;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungwise.answer.Answer;
import rungwise.text.Texts;
import rungwise.workup.Wet;

/**
 * How long it stays on, as one reading: no longer than its dwell, than what contact is left, and than it stays wet here.
 *
 * @param longest minutes; 0 = it does not stay on
 * @param dries   whether it is drying that ends it
 * @param spots   how many may be wetted at once, where those are few
 */
public record Dwelling(double shortest, double longest, boolean dries, Optional<Integer> spots, boolean toldByTechnique) {
    /** More are worked one after the other anyway. */
    private static final int FEW = 5;

    public static Dwelling of(Answer.Rung rung) {
        double may = Math.min(rung.dwell().to(), rung.tries().contactMinutesLeft().orElse(Double.MAX_VALUE));
        Optional<Wet> wet = rung.staysWet().filter(Wet::computed);
        double dry = wet.map(w -> w.fromSeconds() / 60).orElse(Double.MAX_VALUE);
        return new Dwelling(rung.dwell().from(), Math.min(may, dry), dry < may, wet.flatMap(w -> w.atOnce().spots()).filter(s -> s <= FEW),
                Pattern.compile(say("dwell-told")).matcher(rung.technique()).find());
    }

    public String words() {
        String end = PlainTime.ofMinutes(longest);
        boolean atMost = shortest <= 0 || Math.round(shortest) >= Math.floor(longest) || PlainTime.ofMinutes(shortest).equals(end);
        String how = longest <= 0 || toldByTechnique ? "" : atMost ? say(dries ? "dwell-at-most-dries" : "dwell-at-most", "to", end)
                : say(dries ? "dwell-dries" : "dwell", "span", PlainTime.span(shortest, longest));
        return (how + " " + spots.map(s -> s == 1 ? say("one-at-once") : say("at-once", "many", s)).orElse("")).strip();
    }

    /** Whether a sign that takes its time comes before the end. */
    public boolean reaches(String sign) {
        Matcher after = Pattern.compile(say("sign-after")).matcher(sign);
        return longest <= 0 || !after.find() || Double.parseDouble(after.group(1)) <= longest;
    }

    private static String say(String id, Object... named) {
        return Texts.said("card." + id, named);
    }
}
