package rungwise.shoplog;

import java.util.List;

/**
 * What the log teaches, for a person to read.
 *
 * @param revision of the knowledge that it is weighed against
 * @param counted  attempts that moved chances
 * @param leftOut  attempts that could not
 * @param moved    chances that moved, those with most tries first
 * @param minutes how long methods take here
 * @param alarms   harm that was done, the most frequent first
 */
public record Lessons(String revision, long counted, LeftOut leftOut, List<Move> moved, List<Pace> minutes, List<Alarm> alarms) {

    /**
     * Why attempts did not count.
     *
     * @param unprepared on a dirty, wet or hot panel
     * @param unknown    contaminant, surface or method is not known, or the method removes nothing
     */
    public record LeftOut(long unprepared, long unknown) {
    }

    /**
     * One chance.
     *
     * @param surface family of surfaces
     * @param from    the prior, over the deposits that were tried
     * @param to      what the ladder uses now
     * @param tries   each weighed by the belief in that state at the moment of the try
     * @param cleared of these tries; a part counts as a part
     */
    public record Move(String method, String bond, String state, String surface, double from, double to, double tries,
                       double cleared) {
    }

    /**
     * Worker minutes of one method on a spot.
     *
     * @param from  what knowledge states
     * @param to    what the ladder reckons with now
     * @param tries of which the minutes are known, the last five hundred at most
     */
    public record Pace(String method, double from, double to, long tries) {
    }

    /**
     * Harm done by a method on a family of surfaces.
     *
     * @param tries    of this method there, harm included
     * @param last     ids of the last attempts that harmed, at most five
     * @param proposal what to tighten; a person decides, and writes it into the knowledge
     */
    public record Alarm(String method, String surface, long harms, long tries, List<String> last, Proposal proposal) {
    }

    /**
     * A stricter entry.
     *
     * @param cause mechanical, chemical or thermal: the harshest of the method's grades
     * @param from  that grade now
     * @param to    one grade harsher, 10 at most
     * @param gate  to be put before the method
     */
    public record Proposal(String cause, int from, int to, String gate, String text) {
    }
}
