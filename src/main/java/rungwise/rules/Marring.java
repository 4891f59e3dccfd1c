package rungwise.rules;

import java.util.List;
import rungwise.text.Figure;

/** Marring shows so many times as soon as on average gloss clear. */
public record Marring(String method, double times, List<Figure> figures) implements Conclusion {
}
