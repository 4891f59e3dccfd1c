package rungwise.ladder;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rungwise.rules.said.Because;
import rungwise.rules.said.Step;

/** A step around the rungs, with every rule that asks for it. */
public record Asked(Step step, List<Because> because) {
    public String name() {
        return step.name();
    }

    /** For the rungs of both; a rule that asks for several of them is one reason, with all that it found. */
    Asked with(Asked other) {
        Map<String, Because> reasons = new LinkedHashMap<>();
        Stream.concat(because.stream(), other.because.stream()).forEach(b -> reasons.merge(b.id(), b, (one, more) ->
                new Because(one.reason(), distinct(one.figures(), more.figures()), distinct(one.sources(), more.sources()))));
        return new Asked(step.with(other.step), List.copyOf(reasons.values()));
    }

    private static <T> List<T> distinct(List<T> one, List<T> more) {
        return Stream.concat(one.stream(), more.stream()).distinct().toList();
    }
}
