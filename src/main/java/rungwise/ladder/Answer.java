package rungwise.ladder;

import java.util.List;
import java.util.Optional;
import rungwise.knowledge.Figures;
import rungwise.question.Question;
import rungwise.rules.Because;
import rungwise.workup.Rinse;
import rungwise.workup.Wet;

/** What comes out: the ladder, what surrounds it, what was left out and why, and the next step. */
public record Answer(String revision, Question question, List<Assumed> assumed, Optional<Held> hold, State belief,
                     List<Around> before, List<Rung> rungs, List<Alternative> alternatives,
                     List<PassedOver> passedOver, List<Barred> barred, List<Neighbour> neighbours,
                     List<Around> after, WayOut wayOut, Next next, Expected expected, List<Advice> advice) {

    /** A fact that was not given and how it was taken. */
    public record Assumed(String fact, String value, List<Because> because) {
    }

    /** Why no work starts. */
    public record Held(String what, String doFirst, String until, List<Because> because) {
    }

    /** What is believed of the deposit. */
    public record State(double fresh, double hardened, double marked) {
    }

    /**
     * A step around the rungs.
     *
     * @param dilution how its agent is mixed, where it has one
     * @param onDry    it goes onto a dry panel, before any water
     * @param watch    what to read while it works
     * @param rinse    where it rinses chemistry off: how much is enough
     * @param wear     what agent, tool and technique demand
     */
    public record Around(String step, String text, Optional<String> dilution, boolean onDry, Optional<String> watch,
                         Optional<Rinse> rinse, List<String> wear, List<Because> because) {
        public Around(String step, String text, List<Because> because) {
            this(step, text, Optional.empty(), false, Optional.empty(), Optional.empty(), List.of(), because);
        }

        /** The same step, said otherwise. */
        Around saying(String otherwise, Optional<Rinse> enough, List<Because> reasons) {
            return new Around(step, otherwise, dilution, onDry, watch, enough, wear, reasons);
        }
    }

    /** A word of the trade that belongs to no single rung. */
    public record Advice(String about, String text, List<Because> because) {
    }

    /** One method worth trying. */
    public record Rung(int rank, String method, String name, Grades severity, Odds chance, double minutes,
                       Optional<Brought> agent, Span dwell, Optional<Wet> staysWet, Optional<Span> window, Optional<Double> pressureBar,
                       String tool, String technique, Tries tries, String level, List<String> stopSigns,
                       List<Risk> risks, List<Ppe> ppe, List<GateState> gates, String waste,
                       List<Bridge> bridgeBefore, List<Around> ifCleared, List<Around> ifMarked,
                       List<Because> because) {
        public boolean hasOpen(String gate) {
            return gates.stream().anyMatch(g -> g.id().equals(gate) && g.state().equals("open"));
        }
    }

    /** How harsh it is on this surface. */
    public record Grades(int mechanical, int chemical, int thermal, double filmMicrons, List<Object> key) {
    }

    /** Chance that one correct attempt clears it. */
    public record Odds(double mean, double low, double high, String basis) {
    }

    /** The agent as mixed. */
    public record Brought(String id, String name, String dilution, String mix) {
    }

    public record Span(double from, double to) {
    }

    /** Attempts made and left. */
    public record Tries(int done, int allowed, Optional<Double> contactMinutesLeft) {
    }

    public record Risk(String text, List<Because> because) {
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

    /** A gate with its state: open (still to be met), met, refused. */
    public record GateState(String id, String name, String state, String obtain, List<Because> because) {
    }

    /**
     * What must happen between an earlier chemistry and this one.
     *
     * @param rinse how much rinsing takes the earlier one off
     */
    public record Bridge(String after, List<String> steps, double waitMinutes, String text, Optional<Rinse> rinse,
                         List<Because> because) {
    }

    /** Gentler but slow, or open once something is had. */
    public record Alternative(String method, String name, String why, Rung rung) {
    }

    /** Not worth it, by which of the seven steps, with its figures. */
    public record PassedOver(String method, String name, String step, String why, double chance,
                             List<Because> because) {
    }

    /**
     * Never, here.
     *
     * @param staysWet where only the weather bars it: how short it would stay wet if it were used now
     */
    public record Barred(String method, String name, Optional<String> opensWith, Optional<Wet> staysWet,
                         List<Because> because) {
    }

    /** What a rung would do next door. */
    public record Neighbour(String surface, String method, String action, List<Because> because) {
    }

    /** Who takes over when the ladder ends. */
    public record WayOut(String method, String text, List<Because> because) {
    }

    /**
     * The next step: one action, and the method or condition it needs.
     *
     * @param ppe what first aid asks for; a rung says its own
     */
    public record Next(String action, Optional<String> method, Optional<String> until, String text, List<Ppe> ppe,
                       List<Because> because) {
        Next(String action, Optional<String> method, Optional<String> until, String text, List<Because> because) {
            this(action, method, until, text, List.of(), because);
        }
    }

    /** What to expect of the whole ladder. */
    public record Expected(double chanceCleared, double alreadyMarked, double markByWork, Took minutes) {
    }

    /** Minutes: all well at once, likely, everything tried. */
    public record Took(double best, double likely, double worst) {
    }
}
