package rungwise.answer;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rungwise.knowledge.common.Basis;
import rungwise.question.FactUse;
import rungwise.question.Question;
import rungwise.rules.said.Because;
import rungwise.workup.Rinse;
import rungwise.workup.Wet;

/** What comes out: a ladder with what surrounds it, or a stop beside which nothing else may stand. */
public sealed interface Answer permits LadderAnswer, StoppedAnswer {

    /** Why no work starts, and what to do instead. */
    public record Held(String what, String doFirst, String until, List<Because> because) {
    }

    /**
     * What to do while minutes count.
     *
     * @param avoid what not to do
     * @param until by what is seen or felt it is enough
     * @param ifOff what follows if it is off
     * @param ifNot what follows if it is not
     */
    public record FirstAid(String method, String act, String avoid, String until, String why, String ifOff, String ifNot) {
    }

    /**
     * One method worth trying.
     *
     * @param parts what it is done by, in order: one where it is one operation
     * @param visit from 1: what may never meet in one visit stands in two
     */
    public record Rung(int rank, int visit, String method, String name, Grades severity, Odds chance, double minutes,
                       Optional<Brought> agent, Span dwell, Optional<Wet> staysWet, Optional<Span> window, Optional<Double> pressureBar,
                       String tool, String technique, List<String> parts, Tries tries, String level, List<String> stopSigns,
                       List<Risk> risks, List<Ppe> ppe, List<GateState> gates, String waste,
                       List<Bridge> bridgeBefore, List<Around> ifCleared, List<Around> ifMarked,
                       List<Because> because) {
        public boolean isMissing(String gate) {
            return gates.stream().anyMatch(g -> g.id().equals(gate) && g.state().equals(GateState.MISSING));
        }
    }

    /** A gate with its state: missing, met or refused. */
    public record GateState(String id, String name, String state, String obtain, List<Because> because) {
        public static final String MISSING = "missing";
        public static final String MET = "met";
        public static final String REFUSED = "refused";
    }

    /**
     * What must happen between an earlier chemistry and this one: a step of its own.
     *
     * @param minutes of rinsing and waiting together
     * @param rinse   how much rinsing takes the earlier one off
     */
    public record Bridge(String after, List<String> steps, double waitMinutes, double minutes, String text, Optional<Rinse> rinse,
                         List<Because> because) {
    }

    /** Gentler but slow. */
    public record Alternative(String method, String name, String why, Rung rung) {
    }

    /**
     * Permitted, and not offered.
     *
     * @param step id of the decision or rule by which it fell
     */
    public record PassedOver(String method, String name, String step, String why, double chance, List<Because> because) {
    }

    /**
     * Barred: never here, not now, or used up on this spot.
     *
     * @param madeForOther it would do no harm here: it is merely made for another material
     * @param opensWith what would lift it; empty where nothing does
     * @param staysWet  where only the weather bars it: how short it would stay wet if it were used now
     */
    public record Barred(String method, String name, boolean madeForOther, Optional<String> opensWith, Optional<Wet> staysWet, List<Because> because) {
    }

    /** Who takes over when the ladder ends. */
    public record WayOut(String method, String text, List<Because> because) {
    }

    /**
     * The next step: one action, and the method or condition it needs.
     *
     * @param steps what is done before the method, in order: preparation, what goes between two chemistries, work that a gate asks for
     * @param ppe   what first aid asks for; a rung says its own
     */
    public record Next(String action, Optional<String> method, Optional<String> until, String text, List<Due> steps, List<Ppe> ppe,
                       List<Because> because) {
    }

    /**
     * A step that is due before the next method.
     *
     * @param step    id of a step, a bridge (between) or a gate
     * @param minutes of its own; 0 = goes with the work
     */
    public record Due(String step, String text, double minutes, List<Because> because) {
    }

    /** What stands behind a reference in {@code because}. */
    public record Explained(String says, String cause, Basis basis, List<String> sources) {
    }

    String revision();

    Question question();

    /** Which facts of the question could count here, and why the others could not. */
    FactUse facts();

    List<Assumed> assumed();

    Next next();

    /** Every reason that is referred to, once, by id. */
    Map<String, Explained> reasons();

    default Optional<Held> hold() {
        return Optional.empty();
    }

    /** Present while minutes count. */
    default Optional<FirstAid> firstAid() {
        return Optional.empty();
    }

    /** Whether all work ends here, so that nothing else is named. */
    default boolean isStopped() {
        return this instanceof StoppedAnswer;
    }

    /** Who takes over when nothing is left, or now. */
    default Optional<WayOut> whoTakesOver() {
        return this instanceof StoppedAnswer stopped ? stopped.call() : ladder().map(LadderAnswer::wayOut);
    }

    /** The ladder, where work goes on. */
    default Optional<LadderAnswer> ladder() {
        return this instanceof LadderAnswer answer ? Optional.of(answer) : Optional.empty();
    }

    /** What shows where the deposit came off. */
    default Optional<Mark> mark() {
        return Optional.empty();
    }

    default List<Around> before() {
        return List.of();
    }

    default List<Rung> rungs() {
        return List.of();
    }

    default List<Alternative> alternatives() {
        return List.of();
    }

    default List<PassedOver> passedOver() {
        return List.of();
    }

    default List<Barred> never() {
        return List.of();
    }

    default List<Barred> notNow() {
        return List.of();
    }

    default List<Barred> usedUp() {
        return List.of();
    }

    /** All that is barred, for whatever time. */
    default List<Barred> barred() {
        return Stream.of(never(), notNow(), usedUp()).flatMap(List::stream).toList();
    }

    default List<Neighbour> neighbours() {
        return List.of();
    }

    default List<Around> after() {
        return List.of();
    }

    default List<Advice> advice() {
        return List.of();
    }

    /** A fact that was not given and how it was taken. */
    public record Assumed(String fact, String value, List<Because> because) {
    }

    /**
     * The deposit is off, and this is the ladder of the mark beneath it.
     *
     * @param deposit id of what came off
     * @param mark    id of what shows
     * @param text    that it is off, and how to look at what shows
     */
    public record Mark(String deposit, String mark, String name, String text, List<Because> because) {
    }

    /** What is believed of the deposit. */
    public record State(double fresh, double hardened, double marked) {
    }

    /**
     * A step around the rungs.
     *
     * @param forRungs methods that need it; empty = the whole job does
     * @param dilution how its agent is mixed, where it has one
     * @param onDry    it goes onto a dry panel, before any water
     * @param watch    what to read while it works
     * @param rinse    where it rinses chemistry off: how much is enough
     * @param wear     what agent, tool and technique demand
     */
    public record Around(String step, String text, List<String> forRungs, Optional<String> dilution, boolean onDry, Optional<String> watch,
                         Optional<Rinse> rinse, List<String> wear, List<Because> because) {
        public Around(String step, String text, List<Because> because) {
            this(step, text, List.of(), Optional.empty(), false, Optional.empty(), Optional.empty(), List.of(), because);
        }

        /** The same step, said otherwise. */
        Around saying(String otherwise, Optional<Rinse> enough, List<Because> reasons) {
            return new Around(step, otherwise, forRungs, dilution, onDry, watch, enough, wear, reasons);
        }
    }

    /** A word of the trade that belongs to no single rung. */
    public record Advice(String about, String text, List<Because> because) {
    }

    /** How harsh it is on this surface. */
    public record Grades(int mechanical, int chemical, int thermal, double filmMicrons, List<Object> key) {
    }

    /**
     * Chance that one correct attempt clears it now, after what was tried on the spot.
     *
     * @param low     lower end of 80 %, a prior being worth as few tries as decisions say
     * @param word    how often, in one of five words
     * @param bars    the same as 1 to 5
     * @param tries   made here on that deposit and family of surfaces
     * @param cleared of these
     * @param text    as it is told: an estimate, then a count, then a number
     */
    public record Odds(double mean, double low, double high, String basis, String word, int bars, int tries, int cleared, String text) {
    }

    /** The agent as mixed. */
    public record Brought(String id, String name, String dilution, String mix) {
    }

    public record Span(double from, double to) {
    }

    /** Attempts made and left. */
    public record Tries(int done, int allowed, Optional<Double> contactMinutesLeft) {
    }

    /**
     * What to mind.
     *
     * @param toPeople it harms people, not the vehicle; these stand first
     */
    public record Risk(String text, boolean toPeople, List<Because> because) {
        /** The same, said by another as well. */
        Risk also(Risk other) {
            return new Risk(text, toPeople || other.toPeople, Stream.concat(because.stream(), other.because.stream()).toList());
        }
    }

    /**
     * What to wear or arrange.
     *
     * @param where the place that was not told and for which alone it is needed; empty = everywhere
     */
    public record Ppe(String item, Optional<String> where, List<Because> because) {
        /** Of two demands for one item the one that holds everywhere counts. */
        Ppe orEverywhere(Ppe other) {
            return where.isEmpty() ? this : other;
        }
    }

    /** What a rung would do next door. */
    public record Neighbour(String surface, String method, String action, List<Because> because) {
    }

    /** What to expect of the whole ladder. */
    public record Expected(double chanceCleared, double alreadyMarked, double markByWork, Took minutes) {
    }

    /**
     * Minutes: all well at once, on average, everything tried.
     *
     * @param tenth      one spot in ten takes no longer, to whole minutes
     * @param nineTenths nine in ten take no longer
     */
    public record Took(double best, double likely, double worst, double tenth, double nineTenths) {
    }
}
