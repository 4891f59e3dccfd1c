package rungwise.knowledge.decision;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rungwise.knowledge.common.Basis;

/**
 * What counts where nobody told, or where a thing is hardly ever measured.
 *
 * @param says  the sentence a person reads where it counted
 * @param cause why this value and no other
 * @param stage where in working out an answer it counts
 * @param value a number
 * @param word  or a word
 * @param unit  of the number
 */
public record Assumption(String id, String says, String cause, Stage stage, OptionalDouble value, Optional<String> word,
                         Optional<String> unit, Basis basis, List<String> sources) {
    public Assumption {
        value = value == null ? OptionalDouble.empty() : value;
        word = word == null ? Optional.empty() : word;
        unit = unit == null ? Optional.empty() : unit;
        sources = sources == null ? List.of() : List.copyOf(sources);
    }
}
