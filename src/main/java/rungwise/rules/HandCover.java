package rungwise.rules;

import java.util.List;
import rungwise.knowledge.Figures;
import rungwise.knowledge.GloveMaterial;

/**
 * Which gloves hold against an agent for as long as a method takes.
 *
 * @param charts         names of the charts that count for it
 * @param glove          the first of the shop's materials that holds, or the one that holds longest
 * @param minutes        its shortest charted time over all that the agent holds
 * @param thinMinutes    the same for thin disposable nitrile
 * @param contactMinutes how long hands are in it
 */
public record HandCover(String method, String agent, List<String> charts, GloveMaterial glove, double minutes,
                        double thinMinutes, double contactMinutes) {
    public HandCover {
        charts = List.copyOf(charts);
    }

    public String text() {
        boolean thin = glove == GloveMaterial.NITRILE_THIN;
        String first = rungwise.science.GloveTime.holds(minutes, contactMinutes)
                ? "Gloves: " + glove.words() + ", good for " + Figures.text(minutes) + " min."
                : "Gloves: " + glove.words() + ", a fresh pair every " + Figures.text(minutes) + " min.";
        return thin ? first : first + " Thin disposable ones hold " + Figures.text(thinMinutes)
                + " min: off at the first splash.";
    }

    public String figures() {
        return agent + ", hands in it for about " + Figures.text(Math.ceil(contactMinutes)) + " min; charts of "
                + String.join(", ", charts) + ", the shortest " + Figures.text(minutes) + " min";
    }
}
