package rungwise.knowledge.surface;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import rungwise.knowledge.chemistry.Polymer;
import rungwise.knowledge.chemistry.SolventColumn;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.common.Range;
import rungwise.knowledge.common.Sorted;
import rungwise.text.Texts;

/**
 * Material, finish and condition, told by what it tolerates.
 *
 * @param acidity        pH window for short, cool, rinsed contact
 * @param solvents       a limit for each of the five columns
 * @param maxC           highest surface temperature for any process
 * @param hardness       the hardest tool, by the scale of tools, that does not scratch it by itself
 * @param maxPressureBar water pressure at the nozzle that it bears
 * @param never          what is never done and why, for the reader
 * @param polymers       what it is made of, as solvents see it; several count together
 * @param wayOut         method id of who takes over when the ladder ends
 * @param kinds          every kind that it may be; more than one where that is not known, or surfaces are treated as one
 * @param alsoCalled     other ways to say it; a question may use any of them
 * @param tell           how to tell it from what it is taken for; empty where nobody confuses it
 */
public record Surface(String id, String name, String description, SurfaceKind kind, Range acidity,
                      Map<SolventColumn, Limit> solvents, double maxC, Mechanical mechanical, int hardness,
                      double maxPressureBar, Set<Trait> traits, String film, List<String> never,
                      List<String> cautions, List<Polymer> polymers, String wayOut, Basis basis, List<String> sources,
                      Set<SurfaceKind> kinds, List<String> alsoCalled, String tell) {
    /** Where two windows do not meet nothing fits but what is never used on a vehicle. */
    private static final Range NO_PH = new Range(0, 0);

    public Surface {
        solvents = Sorted.map(solvents);
        kinds = kinds == null || kinds.isEmpty() ? Set.of(kind) : Sorted.set(kinds);
        traits = withFilm(traits);
        film = film == null ? "" : film;
        never = never == null ? List.of() : List.copyOf(never);
        cautions = cautions == null ? List.of() : List.copyOf(cautions);
        polymers = polymers == null ? List.of() : List.copyOf(polymers);
        sources = sources == null ? List.of() : List.copyOf(sources);
        alsoCalled = alsoCalled == null ? List.of() : List.copyOf(alsoCalled);
        tell = tell == null ? "" : tell;
    }

    /** What can be refined loses film to whatever refines it. */
    private static Set<Trait> withFilm(Set<Trait> traits) {
        if (traits == null || !traits.contains(Trait.REFINABLE)) {
            return Sorted.set(traits);
        }
        Set<Trait> more = EnumSet.of(Trait.LOSES_FILM);
        more.addAll(traits);
        return Sorted.set(more);
    }

    public boolean is(Trait trait) {
        return traits.contains(trait);
    }

    /** Whether what lies on it goes in: cloth, leather, wood, grain. Nobody knows it of what may be several surfaces. */
    public boolean takesIn() {
        return kinds.size() == 1 && (is(Trait.SOAKS) || is(Trait.NAP) || is(Trait.POROUS_TEXTURE));
    }

    /** Whether it is, or may be, of a kind. */
    public boolean mayBe(SurfaceKind one) {
        return kinds.contains(one);
    }

    public Limit limit(SolventColumn column) {
        return solvents.get(column);
    }

    /** Where a limit comes from: its own basis, else that of the surface. */
    public Basis basisOf(SolventColumn column) {
        return limit(column).basis().orElse(basis);
    }

    /**
     * The surface that is as delicate as both: each tolerance the narrower, all weaknesses together. Surfaces of two kinds
     * together count as paint and may be each of the two: what is made for one of them only is barred.
     */
    public Surface stricter(Surface other) {
        if (equals(other)) {
            return this;
        }
        Map<SolventColumn, Limit> both = new EnumMap<>(SolventColumn.class);
        for (SolventColumn column : SolventColumn.values()) {
            both.put(column, limit(column).stricter(other.limit(column)));
        }
        Set<Trait> all = EnumSet.noneOf(Trait.class);
        all.addAll(traits);
        all.addAll(other.traits);
        if (!(is(Trait.REFINABLE) && other.is(Trait.REFINABLE))) {
            all.remove(Trait.REFINABLE);
        }
        Set<SurfaceKind> allKinds = EnumSet.copyOf(kinds);
        allKinds.addAll(other.kinds);
        double low = Math.max(acidity.from(), other.acidity.from());
        double high = Math.min(acidity.to(), other.acidity.to());
        return new Surface(id.equals(other.id) ? id : id + "+" + other.id, Texts.said("surface.treated-as", "surface", name, "other",
                other.name),
                description, kind == other.kind ? kind : SurfaceKind.PAINT, low <= high ? new Range(low, high) : NO_PH, both,
                Math.min(maxC, other.maxC), mechanical.stricter(other.mechanical),
                Math.min(hardness, other.hardness), Math.min(maxPressureBar, other.maxPressureBar), all, film,
                union(never, other.never), union(cautions, other.cautions),
                union(polymers, other.polymers), wayOut, basis,
                union(sources, other.sources), allKinds, alsoCalled, tell);
    }

    /** The same surface where it is on the vehicle: a place only adds weaknesses. */
    public Surface at(Place place) {
        if (traits.containsAll(place.traits())) {
            return this;
        }
        Set<Trait> more = EnumSet.copyOf(place.traits());
        more.removeAll(traits);
        Set<Trait> all = EnumSet.copyOf(place.traits());
        all.addAll(traits);
        String added = more.stream().map(t -> "+" + t.name().toLowerCase(Locale.ROOT)).collect(Collectors.joining());
        return new Surface(id + added, name + " (" + place.name() + ")", description, kind, acidity, solvents, maxC, mechanical, hardness,
                maxPressureBar, all, film, never, cautions, polymers, wayOut, basis, sources, kinds, alsoCalled, tell);
    }

    private static <T> List<T> union(List<T> one, List<T> two) {
        Set<T> all = new LinkedHashSet<>(one);
        all.addAll(two);
        return List.copyOf(all);
    }
}
