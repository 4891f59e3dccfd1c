package rungwise.knowledge.matter;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What deposits are made of and what takes it: one table for all of them. */
public record Matter(Map<String, Component> components, Map<String, ComponentClass> classes, Map<String, Way> ways,
                     Map<String, Reach> reaches, Shares shares) {
    /** What is known of a deposit; nothing where a component cannot be read. */
    public Optional<Makeup> of(MadeOf.Lying form, MadeOf madeOf) {
        boolean known = Stream.concat(madeOf.fresh().stream(), madeOf.old().stream()).allMatch(p -> components.containsKey(p.component())
                && classes.containsKey(components.get(p.component()).kind()));
        return known ? Optional.of(Makeup.of(form, madeOf, components, classes, reaches, shares)) : Optional.empty();
    }
}
