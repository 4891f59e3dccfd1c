package rungwise.knowledge;

import java.util.Map;

/** What deposits are made of and what takes it: one table for all of them. */
public record Matter(Map<String, Component> components, Map<String, ComponentClass> classes, Map<String, Way> ways,
                     Map<String, Reach> reaches) {
    /** A contaminant that knows what it is made of; as it is where nobody said, or not all of it can be read. */
    Contaminant of(Contaminant contaminant) {
        boolean known = contaminant.madeOf().isPresent() && java.util.stream.Stream.of(contaminant.madeOf().get().fresh(), contaminant.madeOf().get().old())
                .flatMap(java.util.List::stream).allMatch(p -> components.containsKey(p.component())
                        && classes.containsKey(components.get(p.component()).kind()));
        return known ? contaminant.madeUp(Makeup.of(contaminant.form(), contaminant.madeOf().get(), components, classes, reaches))
                : contaminant;
    }
}
