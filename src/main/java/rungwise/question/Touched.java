package rungwise.question;

import java.util.Set;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.surface.Surface;

/**
 * What an answer came by: enough to say which facts of its question could count in it.
 *
 * @param stopped     a hazard, first aid or harm came before any rung
 * @param surface     as named, with its place
 * @param contaminant as named, or what stands for an unknown one
 * @param gates       gates that stand before anything in it: met, open or refused
 * @param methods     methods in it: rungs, alternatives, passed over or barred
 * @param signs       signs that a rule names by their id
 * @param done        words by which the steps around its rungs may be said to be done, those left out for that reason included
 */
public record Touched(boolean stopped, Surface surface, Contaminant contaminant, Set<String> gates, Set<String> methods,
                      Set<String> signs, Set<String> done) {
    public Touched {
        gates = Set.copyOf(gates);
        methods = Set.copyOf(methods);
        signs = Set.copyOf(signs);
        done = Set.copyOf(done);
    }
}
