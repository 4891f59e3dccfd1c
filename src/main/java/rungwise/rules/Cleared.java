package rungwise.rules;

import java.util.List;
import rungwise.text.Figure;

/** The deposit is off. */
public record Cleared(List<Figure> figures) implements Conclusion {
}
