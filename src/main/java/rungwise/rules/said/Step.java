package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rungwise.rules.use.Chosen;
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
 * @param rungs    methods that ask for it; empty = the whole job does
 * @param dilution as mixed for this step; empty = as the agent's own sheet says
 * @param onDry    whether it goes onto a dry panel, before any water
 * @param watch    what to read while it works; empty = nothing
 * @param standsIn whether it is for where no other of its place and order may be done
 */
public record Step(String place, int order, String name, String template, String done, List<String> rungs, List<Figure> figures,
                   String dilution, boolean onDry, String watch, boolean standsIn) implements Conclusion {
    public Step {
        rungs = List.copyOf(rungs);
        figures = List.copyOf(figures);
    }

    /** Before the first rung, asked for by the whole job. */
    public static Step before(int order, String name, String template, String done, List<Figure> figures) {
        return new Step("before", order, name, template, done, List.of(), figures, "", false, "", false);
    }

    /** Before a rung that asks for it. */
    public static Step before(int order, String name, String template, String done, Chosen rung) {
        return new Step("before", order, name, template, done, List.of(rung.name()), rung.figures(), "", false, "", false);
    }

    /** At the end, asked for by the whole job. */
    public static Step after(int order, String name, String template, List<Figure> figures) {
        return new Step("after", order, name, template, "", List.of(), figures, "", false, "", false);
    }

    /** At the end, where a rung that asks for it was used. */
    public static Step after(int order, String name, String template, Chosen rung) {
        return new Step("after", order, name, template, "", List.of(rung.name()), rung.figures(), "", false, "", false);
    }

    public Step mixed(String asMixed) {
        return new Step(place, order, name, template, done, rungs, figures, asMixed, onDry, watch, standsIn);
    }

    public Step ontoDry() {
        return new Step(place, order, name, template, done, rungs, figures, dilution, true, watch, standsIn);
    }

    public Step watched(String sign) {
        return new Step(place, order, name, template, done, rungs, figures, dilution, onDry, sign, standsIn);
    }

    public Step found(List<Figure> more) {
        return new Step(place, order, name, template, done, rungs, Figure.all(figures, more), dilution, onDry, watch, standsIn);
    }

    public Step standingIn() {
        return new Step(place, order, name, template, done, rungs, figures, dilution, onDry, watch, true);
    }

    /** For the rungs of both; for the whole job where either is. */
    public Step with(Step other) {
        return new Step(place, order, name, template, done, rungs.isEmpty() || other.rungs.isEmpty() ? List.of()
                : Stream.concat(rungs.stream(), other.rungs.stream()).distinct().toList(), figures, dilution, onDry, watch, standsIn && other.standsIn);
    }

    /** Whether a rung, or the whole job, asks for it. */
    public boolean isFor(String rung) {
        return rungs.isEmpty() || rungs.contains(rung);
    }

    /** What a person reads: the template with its figures. */
    public String text() {
        return Texts.chosen().fill(template, figures);
    }

    @Override
    public Map<Entry, List<String>> named() {
        return Map.of(Entry.STEP, List.of(name), Entry.METHOD, rungs);
    }
}
