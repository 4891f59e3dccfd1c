package rungwise.rules;

import java.util.List;
import rungwise.text.Figure;

/** A method helped and may be used once more. */
public record Repeated(String method, List<Figure> figures) implements Conclusion {
}
