package rungwise.knowledge.deposit;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.surface.SurfaceKind;

/**
 * How some surfaces take some deposits, beside sound clear coat, for which the hours of the deposits are stated.
 *
 * @param kinds    of surface that it is about; empty = any
 * @param surfaces ids that it is about; empty = any
 * @param by       attacks that it is about; empty = any
 * @param times    how many times as long a mark takes
 * @param most     how many of such deposits ever leave one, 0 to 1
 */
public record Susceptibility(String id, String says, String cause, List<SurfaceKind> kinds, List<String> surfaces, List<Attack> by,
                             double times, double most, Basis basis, List<String> sources) {
    public Susceptibility {
        kinds = kinds == null ? List.of() : List.copyOf(kinds);
        surfaces = surfaces == null ? List.of() : List.copyOf(surfaces);
        by = by == null ? List.of() : List.copyOf(by);
        sources = sources == null ? List.of() : List.copyOf(sources);
    }

    private boolean isAbout(Surface surface, Optional<Attack> attack) {
        return (kinds.isEmpty() || kinds.contains(surface.kind())) && (surfaces.isEmpty() || surfaces.contains(surface.id()))
                && (by.isEmpty() || attack.filter(by::contains).isPresent());
    }

    /** What comes of all that is said of one surface: times multiply, and the least of most counts. */
    public static double of(Surface surface, Optional<Attack> attack, Collection<Susceptibility> all, ToDoubleBiFunction<Double, Double> belief) {
        List<Susceptibility> here = all.stream().filter(s -> s.isAbout(surface, attack)).toList();
        return belief.applyAsDouble(here.stream().mapToDouble(Susceptibility::times).reduce(1, (one, other) -> one * other),
                here.stream().mapToDouble(Susceptibility::most).min().orElse(1));
    }
}
