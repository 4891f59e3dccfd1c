package rungwise.knowledge.safety;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rungwise.knowledge.chemistry.Reactive;
import rungwise.knowledge.chemistry.Solvent;
import rungwise.knowledge.common.Sentence;
import rungwise.knowledge.common.Sorted;

/**
 * Something breathed at work, with the limits set for it.
 *
 * @param solvents     kinds of agent component that count as this one: the strictest of their kind
 * @param reactive     reactive groups of agents that count as this one
 * @param molarMass    g/mol
 * @param vapour       where it evaporates
 * @param dissociation where it is an acid or base
 * @param henry        where it leaves water as a gas and a published figure says how readily
 */
public record Exposure(String id, String name, AirHazard hazard, Set<Solvent> solvents, Set<Reactive> reactive,
                       Optional<Double> molarMass, Optional<Vapour> vapour, Optional<Dissociation> dissociation,
                       Optional<Henry> henry, List<AirLimit> limits, @JsonProperty(access = JsonProperty.Access.WRITE_ONLY) String note) {
    public Exposure {
        solvents = Sorted.set(solvents);
        reactive = Sorted.set(reactive);
        molarMass = molarMass == null ? Optional.empty() : molarMass;
        vapour = vapour == null ? Optional.empty() : vapour;
        dissociation = dissociation == null ? Optional.empty() : dissociation;
        henry = henry == null ? Optional.empty() : henry;
        limits = limits == null ? List.of() : List.copyOf(limits);
        note = note == null ? "" : note;
    }

    /** The name as it stands within a sentence. */
    public String inSentence() {
        return Sentence.within(name);
    }

    /**
     * The lowest limit of a kind in ppm: where authorities differ the strictest counts.
     *
     * @return empty where none is set, or none in ppm
     */
    public OptionalDouble lowestPpm(AirLimit.Over over) {
        return limits.stream().filter(l -> l.over() == over && l.unit() == AirLimit.Unit.PPM)
                .mapToDouble(AirLimit::value).min();
    }
}
