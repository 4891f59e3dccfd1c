package rungwise.rules.use;

import java.util.List;
import java.util.Optional;
import rungwise.knowledge.common.Sentence;
import rungwise.knowledge.safety.Exposure;
import rungwise.knowledge.safety.Respirator;
import rungwise.rules.fact.Bay;
import rungwise.text.Figure;

/**
 * A gas that rises from an agent in a bay, with what takes it out of the air again, judged by its kind. Where its amount can
 * be worked out it counts with the vapours too, see {@link Airing}.
 *
 * @param limitPpm   the lowest limit
 * @param respirator the least made for this kind
 * @param maximumPpm the most it may be worn in
 * @param unknown    why how much rises cannot be worked out; empty where it is
 */
public record Fume(String method, String agent, Bay bay, Exposure what, double limitPpm, Respirator respirator,
                   double maximumPpm, Optional<String> unknown) {
    public List<Figure> figures() {
        return Figure.all(bay.figures(), List.of(Figure.of("agent", agent), Figure.of("fume", what.inSentence()),
                Figure.of("limit", limitPpm, "ppm"), Figure.of("respirator", Sentence.within(respirator.name())),
                Figure.of("factor", respirator.factor()), Figure.of("maximum", maximumPpm, "ppm")),
                unknown.map(why -> List.of(Figure.of("unreckoned", why))).orElse(List.of()));
    }
}
