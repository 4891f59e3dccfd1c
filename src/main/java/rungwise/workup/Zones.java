package rungwise.workup;

import java.util.Objects;
import java.util.Optional;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.knowledge.surface.Trait;
import rungwise.knowledge.surface.Zone;

/** In what kind of place a spot is: told, or else known by its surface. */
public final class Zones {
    private static final String INSIDE = "inside";

    private Zones() {
    }

    /**
     * The zone; of a surface met on both sides, with a deposit met inside, the inside where nobody told: what runs off
     * outside could run into a cabin.
     *
     * @param place word for where on the vehicle it is
     */
    public static Zone of(Surface surface, Contaminant contaminant, Optional<String> place, KnowledgeBase base) {
        Zone known = of(surface);
        if (known != Zone.OUTSIDE) {
            return known;
        }
        boolean inside = place.map(INSIDE::equals).orElseGet(() -> isOnBothSides(surface) && isMetInside(contaminant, base));
        return inside ? Zone.INSIDE : known;
    }

    private static Zone of(Surface surface) {
        if (surface.is(Trait.HIGH_VOLTAGE)) {
            return Zone.HIGH_VOLTAGE;
        }
        if (surface.is(Trait.NO_RUNNING_WATER)) {
            return Zone.INSIDE;
        }
        if (surface.is(Trait.WIRING)) {
            return Zone.ENGINE_BAY;
        }
        if (surface.kind() == SurfaceKind.SENSOR) {
            return Zone.SENSOR;
        }
        return surface.kind() == SurfaceKind.WHEEL || surface.is(Trait.MUST_GRIP) ? Zone.WHEELS : Zone.OUTSIDE;
    }

    /** Glass and plastic; whatever else is met inside has a surface of its own. */
    private static boolean isOnBothSides(Surface surface) {
        return surface.kind() == SurfaceKind.GLASS || surface.kind() == SurfaceKind.PLASTIC;
    }

    private static boolean isMetInside(Contaminant contaminant, KnowledgeBase base) {
        return contaminant.usualSurfaces().stream().map(base.surfaces()::get).filter(Objects::nonNull)
                .anyMatch(s -> s.is(Trait.NO_RUNNING_WATER));
    }
}
