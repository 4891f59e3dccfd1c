package rungwise.names;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.deposit.Observation;
import rungwise.knowledge.surface.Place;
import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.knowledge.surface.Trait;

/** Where a spot is, as far as that was told: what a wide word may mean there, and what makes no sense there. */
public final class Whereabouts {
    private static final String INSIDE = "side_inside";
    private static final String OUTSIDE = "side_outside";
    private static final Set<SurfaceKind> OUTER = EnumSet.of(SurfaceKind.PAINT, SurfaceKind.FILM, SurfaceKind.LENS, SurfaceKind.METAL,
            SurfaceKind.WHEEL, SurfaceKind.RUBBER, SurfaceKind.SENSOR, SurfaceKind.GEL_COAT);

    private final KnowledgeBase base;
    private final List<Surface> surfaces;
    private final Optional<String> side;

    /**
     * What was told.
     *
     * @param surfaces ids of what it may be on; none where nobody knows
     * @param place    id of the place on the vehicle
     */
    public Whereabouts(List<String> surfaces, Optional<String> place, KnowledgeBase base) {
        this.base = base;
        this.surfaces = surfaces.stream().map(base.surfaces()::get).filter(s -> s != null).toList();
        this.side = place.map(base.questionWords().places()::get).filter(p -> p != null).flatMap(this::side).or(this::sideOfSurfaces);
    }

    /** Id of the sign that says on which side of the vehicle it is. */
    public Optional<String> side() {
        return side;
    }

    private Optional<String> side(Place place) {
        return place.sign().filter(base.observations()::containsKey).map(base.observations()::get)
                .flatMap(sign -> sign.id().equals(INSIDE) || sign.implies().contains(INSIDE) ? Optional.of(INSIDE)
                        : sign.id().equals(OUTSIDE) || sign.implies().contains(OUTSIDE) ? Optional.of(OUTSIDE) : Optional.empty());
    }

    /** What a surface is made as tells it: a cabin bears no running water. */
    private Optional<String> sideOfSurfaces() {
        if (surfaces.isEmpty()) {
            return Optional.empty();
        }
        if (surfaces.stream().allMatch(Whereabouts::isInner)) {
            return Optional.of(INSIDE).filter(base.observations()::containsKey);
        }
        return surfaces.stream().allMatch(s -> OUTER.contains(s.kind()) && !isInner(s))
                ? Optional.of(OUTSIDE).filter(base.observations()::containsKey) : Optional.empty();
    }

    private static boolean isInner(Surface surface) {
        return surface.traits().contains(Trait.NO_RUNNING_WATER) && !surface.traits().contains(Trait.HIGH_VOLTAGE);
    }

    /** Whether a sign speaks only for what is not met on this side of the vehicle, so that nobody need be asked for it. */
    public boolean isPointless(Observation sign) {
        return !sign.pointsTo().isEmpty() && sign.pointsTo().stream().noneMatch(this::mayLieHere);
    }

    private boolean mayLieHere(String deposit) {
        return side.map(base.observations()::get).filter(sign -> sign.against().contains(deposit)).isEmpty();
    }

    /**
     * Of the deposits that a word may mean, those met here; all of them where that leaves none. What work must not touch is never
     * left out.
     */
    public List<Called> deposits(List<Called> mayBe) {
        List<Called> here = some(mayBe.stream().filter(c -> isHeld(c) || mayLieHere(c.id())).toList(), mayBe);
        Set<String> ids = surfaces.stream().map(Surface::id).collect(Collectors.toSet());
        Set<SurfaceKind> kinds = surfaces.stream().flatMap(s -> s.kinds().stream()).collect(Collectors.toSet());
        List<Called> ofKind = here.stream().filter(c -> isHeld(c) || usual(c).stream().anyMatch(s -> base.surfaces().get(s).kinds().stream()
                .anyMatch(kinds::contains))).toList();
        // one of them is meant only where it is known on this very surface, and not merely on one of its kind
        return ofKind.isEmpty() || ofKind.size() == 1 && usual(ofKind.get(0)).stream().noneMatch(ids::contains) ? here : ofKind;
    }

    /** Of the surfaces that a word may mean, those on this side; all of them where that leaves none. */
    public List<Called> surfaces(List<Called> mayBe) {
        return side.map(s -> some(mayBe.stream().filter(c -> sideOf(c).filter(of -> !of.equals(s)).isEmpty()).toList(), mayBe)).orElse(mayBe);
    }

    private Optional<String> sideOf(Called surface) {
        return new Whereabouts(List.of(surface.id()), Optional.empty(), base).side();
    }

    private static List<Called> some(List<Called> found, List<Called> all) {
        return found.isEmpty() ? all : found;
    }

    private List<String> usual(Called deposit) {
        return base.contaminants().get(deposit.id()).usualSurfaces();
    }

    private boolean isHeld(Called deposit) {
        Contaminant one = base.contaminants().get(deposit.id());
        return one.holds().isPresent();
    }
}
