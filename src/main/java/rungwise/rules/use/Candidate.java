package rungwise.rules.use;

import java.util.List;
import rungwise.knowledge.common.Range;
import rungwise.text.Figure;

/**
 * A method that might be offered today.
 *
 * @param atHand         agent and tool are on the shelf
 * @param comesOff       something on the shelf takes its agent off again
 * @param filmWithRefining micrometres that it and its obligatory refining take
 * @param contactLeft    minutes of contact its family may still have on this spot
 * @param triesLeft      correct attempts still allowed
 */
public record Candidate(Use use, boolean atHand, boolean comesOff, double filmWithRefining, double contactLeft, int triesLeft) {
    public String name() {
        return use.method().id();
    }

    /** Panel temperature under which it does not start; it may have none. */
    public double coldestC() {
        return use.method().window().map(Range::from).orElse(Double.NEGATIVE_INFINITY);
    }

    /** Panel temperature over which it does not start; it may have none. */
    public double warmestC() {
        return use.method().window().map(Range::to).orElse(Double.POSITIVE_INFINITY);
    }

    /** Temperature that it puts on the surface itself; it may put none. */
    public double contactC() {
        return use.method().contactC().orElse(Double.NEGATIVE_INFINITY);
    }

    public List<Figure> windowFigures() {
        return use.method().window().map(w -> List.of(Figure.of("window", w, "°C"))).orElse(List.of());
    }

    public List<Figure> filmFigures() {
        return List.of(Figure.of("withRefining", filmWithRefining, "µm"));
    }

    /** Level number a worker needs: L1 = 1 … L4 = 4, outside trades above that. */
    public int levelNeeded() {
        return use.method().level().startsWith("L") ? use.method().level().charAt(1) - '0' : 5;
    }

    public List<Figure> levelFigures(int onTheJob) {
        return List.of(Figure.against("level", levelNeeded(), "", onTheJob));
    }

    public List<Figure> triesFigures() {
        return List.of(Figure.of("triesLeft", triesLeft));
    }

    public List<Figure> contactFigures() {
        return List.of(Figure.of("contactLeft", contactLeft, "min"));
    }
}
