package rungwise.workup;

import java.util.List;
import java.util.Optional;
import rungwise.rules.said.Because;
import rungwise.text.Texts;

/**
 * How much rinsing is enough.
 *
 * @param times         passes over the panel; empty where too little is known of the agent
 * @param litresPerM2   of all passes together
 * @param leavesAcidity pH of the film that is left
 * @param minutes       as stated for the agent
 * @param basis         computed, or table: the stated minutes alone
 */
public record Rinse(Optional<Integer> times, Optional<Double> litresPerM2, Optional<Double> leavesAcidity, double minutes,
                    String basis, List<Because> because) {
    /** As a line for a person. */
    public String words() {
        return times.isPresent() ? Texts.said("rinse.passes", "times", times.get(), "litres", litresPerM2.orElse(0.0),
                "acidity", leavesAcidity.orElse(0.0)) : Texts.said("rinse.minutes", "minutes", minutes);
    }
}
