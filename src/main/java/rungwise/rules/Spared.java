package rungwise.rules;

import java.util.List;
import rungwise.text.Figure;

/** A surface loses no film to a method and keeps no mark of it. */
public record Spared(String method, List<Figure> figures) implements Conclusion {
}
