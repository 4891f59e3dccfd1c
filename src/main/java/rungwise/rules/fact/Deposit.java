package rungwise.rules.fact;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.deposit.Nature;
import rungwise.knowledge.matter.DepositForm;
import rungwise.knowledge.matter.Grade;
import rungwise.knowledge.matter.Makeup;
import rungwise.knowledge.method.Method;
import rungwise.text.Figure;

/**
 * The contaminant with what is believed of it; the beliefs are those of an unknown age where none was given.
 *
 * @param stateCounts from which belief on a state, fresh or hardened, counts
 */
public record Deposit(Contaminant contaminant, boolean ageKnown, double ageHours, double hardened, double marked,
                      double stateCounts) {
    public boolean is(Nature nature) {
        return contaminant.is(nature);
    }

    /** Whether some of it is of a class of components; true also where nobody knows what it is made of. */
    public boolean isOf(String kind) {
        return share(kind) > 0;
    }

    /** How much of what has to be taken is of a class; all of it where nobody knows. */
    public double share(String kind) {
        return most(held -> held.component().kind().equals(kind));
    }

    /** Whether a component has to be taken; true also where nobody knows what it is made of. */
    public boolean has(String component) {
        return most(held -> held.component().id().equals(component)) > 0;
    }

    /** How much of what has to be taken is this component; none of it where nothing lies there. */
    public double part(String component) {
        return contaminant.isMark() ? 0 : most(held -> held.component().id().equals(component));
    }

    /** Whether it lies so, in a state that is believed. */
    public boolean lies(DepositForm form) {
        return states().anyMatch(old -> contaminant.makeup().filter(m -> m.lies(old) == form).isPresent());
    }

    /** Whether a method lets it soften, so that an edge can follow. */
    public boolean isSoftenedBy(Method method) {
        return contaminant.makeupFor(method).map(m -> states().anyMatch(old -> method.severity().filmMicrons() == 0
                && m.reaches(method, old) && m.parts(old).stream().anyMatch(p -> m.grade(p, method).compareTo(Grade.PARTLY) >= 0)))
                .orElseGet(() -> method.softens().contains(contaminant.bond().fresh()) || method.softens().contains(contaminant.bond().hardened()));
    }

    /** Whether it lets go of the surface whole, so that an edge or a line lifts it as it is. */
    public boolean isLiftedBy(Method method) {
        return contaminant.makeup().filter(m -> states().allMatch(old -> m.parts(old).stream()
                .allMatch(p -> m.grade(p, method) == Grade.WELL))).isPresent();
    }

    private double most(Predicate<Makeup.Held> which) {
        return contaminant.makeup().map(m -> states().mapToDouble(old -> m.parts(old).stream().filter(which)
                .mapToDouble(Makeup.Held::share).sum()).max().orElse(0)).orElse(1.0);
    }

    /** The states that are believed at all: hardened or not. */
    private Stream<Boolean> states() {
        return Stream.of(false, true).filter(old -> (old ? hardened : 1 - hardened) > stateCounts);
    }

    /** Whether whoever touches it meets germs: of food only once it has turned. */
    public boolean hasGerms() {
        return hasHazard("pathogen") && !(is(Nature.FOOD) && ageKnown && hardened < 0.5);
    }

    public boolean hasHazard(String hazard) {
        return contaminant.hazards().contains(hazard);
    }

    /** Hours within which first aid for the surface still helps; below 0 where there is none. */
    public double emergencyHours() {
        return contaminant.emergency().map(Contaminant.Emergency::untilHours).orElse(-1.0);
    }

    public List<Figure> figures() {
        return List.of(Figure.of("deposit", contaminant.name()),
                ageKnown ? Figure.of("age", ageHours / 24, "days") : Figure.of("untold", "age"));
    }
}
