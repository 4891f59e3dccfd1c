package rungwise.rules;

import java.util.List;
import java.util.Map;
import rungwise.text.Figure;
import rungwise.text.Texts;

/**
 * A step around the rungs.
 *
 * @param place    before, after
 * @param order    place among its like
 * @param name     method id, or a plain word where no method is meant (shade, mask, wait)
 * @param template what it says, naming its figures in braces
 * @param done     word by which the question says that it was done; empty = never skipped
 * @param dilution as mixed for this step; empty = as the agent's own sheet says
 * @param onDry    whether it goes onto a dry panel, before any water
 * @param watch    what to read while it works; empty = nothing
 */
public record Step(String place, int order, String name, String template, String done, List<Figure> figures, String dilution,
                   boolean onDry, String watch) implements Conclusion {
    public Step(String place, int order, String name, String template, String done, List<Figure> figures) {
        this(place, order, name, template, done, figures, "", false, "");
    }

    public Step(String place, int order, String name, String text, String done, String figures) {
        this(place, order, name, text, done, figures, "", false, "");
    }

    public Step(String place, int order, String name, String text, String done, String figures, String dilution, boolean onDry, String watch) {
        this(place, order, name, text, done, Figure.said(figures), dilution, onDry, watch);
    }

    /** What a person reads: the template with its figures. */
    public String text() {
        return Texts.ENGLISH.fill(template, figures);
    }

    @Override
    public Map<Entry, List<String>> named() {
        return Map.of(Entry.STEP, List.of(name));
    }
}
