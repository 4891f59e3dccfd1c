package rungwise.knowledge.matter;

import java.util.List;
import java.util.stream.Stream;
import rungwise.knowledge.common.Basis;

/**
 * What deposits are made of.
 *
 * @param name  as words within a sentence
 * @param kind  id of its {@link ComponentClass}
 * @param takes the ways that take it, by how well
 */
public record Component(String id, String name, String kind, String says, Takes takes, Basis basis,
                        List<String> sources) {
    public Component {
        sources = sources == null ? List.of() : List.copyOf(sources);
    }

    /** Ways by how well they take it; a way that is not named takes nothing. */
    public record Takes(List<String> well, List<String> partly, List<String> slightly) {
        public Takes {
            well = well == null ? List.of() : List.copyOf(well);
            partly = partly == null ? List.of() : List.copyOf(partly);
            slightly = slightly == null ? List.of() : List.copyOf(slightly);
        }

        public Stream<String> ways() {
            return Stream.of(well, partly, slightly).flatMap(List::stream);
        }
    }

    public Grade takenBy(String way) {
        return takes.well.contains(way) ? Grade.WELL : takes.partly.contains(way) ? Grade.PARTLY
                : takes.slightly.contains(way) ? Grade.SLIGHTLY : Grade.NOT;
    }
}
