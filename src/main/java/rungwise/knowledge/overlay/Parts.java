package rungwise.knowledge.overlay;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.Solvent;
import rungwise.knowledge.chemistry.Substance;
import rungwise.knowledge.draft.OverlayFile;
import rungwise.knowledge.product.SheetPart;

/** What the parts of a sheet are: substances, what is dissolved, surfactants and the like, or kinds of solvent. */
record Parts(KnowledgeBase base) {
    boolean isKnown(String part) {
        return base.substances().containsKey(part) || isDissolved(part) || solvent(part).isPresent() || sheetPart(part).isPresent();
    }

    /** Every id of a part, to suggest one. */
    Set<String> all() {
        Set<String> all = new TreeSet<>(base.substances().keySet());
        base.exposures().keySet().stream().filter(this::isDissolved).forEach(all::add);
        Arrays.stream(Solvent.values()).forEach(s -> all.add(s.name().toLowerCase(Locale.ROOT)));
        all.addAll(base.productWords().parts().keySet());
        return all;
    }

    /** Whether it is listed as breathed and neither as a solvent nor as one of their stand-ins. */
    boolean isDissolved(String part) {
        return base.exposures().containsKey(part) && !base.substances().containsKey(part)
                && base.exposures().get(part).vapour().isEmpty();
    }

    Optional<Solvent> solvent(String part) {
        Substance substance = base.substances().get(part);
        return substance != null ? substance.solvent()
                : Stream.of(Solvent.values()).filter(s -> s.name().toLowerCase(Locale.ROOT).equals(part)).findFirst();
    }

    /** Empty where it is known as something else. */
    Optional<SheetPart> sheetPart(String part) {
        return base.substances().containsKey(part) || isDissolved(part) || solvent(part).isPresent() ? Optional.empty()
                : base.productWords().part(part);
    }

    /** By weight a light solvent takes more room than its share; the rest is taken to weigh as much as water. */
    double volume(String part, Solvent kind, double percent, OverlayFile.Share by) {
        if (by == OverlayFile.Share.VOLUME) {
            return percent;
        }
        double density = Optional.ofNullable(base.substances().get(part)).map(Substance::densityGramsPerCm3)
                .orElseGet(() -> base.substances().values().stream().filter(s -> s.solvent().filter(kind::equals).isPresent())
                        .min(Comparator.comparingDouble(Substance::densityGramsPerCm3))
                        .map(Substance::densityGramsPerCm3).orElse(1.0));
        double room = percent / Math.min(1, density);
        return 100 * room / (room + 100 - percent);
    }
}
