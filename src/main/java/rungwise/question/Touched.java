package rungwise.question;

import java.util.Set;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.surface.Surface;

/**
 * What an answer came by: enough to say which facts of its question could count in it.
 *
 * @param stopped     a hazard, first aid or harm came before any rung
 * @param surface     as it is treated: it may be all that it was named, and what signs and facts make of it
 * @param contaminant as named, or what stands for an unknown one
 * @param gates       gates before what is not barred, and those by whose refusal anything is
 * @param methods     methods in it: rungs, alternatives, passed over or barred, and the steps around the rungs
 * @param signs       signs that a rule found by their id
 * @param done        words by which the steps around its rungs may be said to be done, those left out for that reason included
 * @param figures     names of what the reasons for the steps around its rungs found
 */
public record Touched(boolean stopped, Surface surface, Contaminant contaminant, Set<String> gates, Set<String> methods,
                      Set<String> signs, Set<String> done, Set<String> figures) {
    public Touched {
        gates = Set.copyOf(gates);
        methods = Set.copyOf(methods);
        signs = Set.copyOf(signs);
        done = Set.copyOf(done);
        figures = Set.copyOf(figures);
    }
}
