package rungwise.knowledge.chemistry;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.common.Sorted;
import rungwise.science.Antoine;
import rungwise.science.Hansen;
import rungwise.science.VanLaar;

/**
 * A pure chemical, or a narrow cut of them, with handbook figures at 20 °C unless they say otherwise.
 *
 * @param solvent            in which column of a surface it is judged; empty where it is not an organic solvent
 * @param besideWater        activity coefficients in water; left out where nobody tabulated them
 * @param evaporatesAs       substances that stand for a cut, by mole fraction
 * @param evaporationRate    n-butyl acetate = 1
 * @param exposureLimitPpm   eight-hour limit, the lowest that is published
 * @param exposureLimitBy    whose limit that is
 * @param recalled           fields whose figure is recalled and was not looked up: basis memory for them
 */
public record Substance(String id, String name, String cas, String formula, Optional<Solvent> solvent, Hansen hansen,
                        double molarMassGrams, double molarVolumeCm3, double densityGramsPerCm3,
                        Optional<Antoine> antoine, Optional<VanLaar> besideWater, Map<String, Double> evaporatesAs, Optional<Double> vapourKpa20C,
                        Optional<Double> boilingC, Optional<Double> flashC, Optional<Double> lowerFlammablePercent,
                        Optional<Double> upperFlammablePercent, Optional<Double> evaporationRate,
                        Optional<Double> exposureLimitPpm, String exposureLimitBy, Optional<Double> idlhPpm,
                        boolean throughSkin, @JsonProperty(access = JsonProperty.Access.WRITE_ONLY) String note, Set<String> recalled, Basis basis, List<String> sources) {
    public Substance {
        formula = formula == null ? "" : formula;
        solvent = solvent == null ? Optional.empty() : solvent;
        antoine = antoine == null ? Optional.empty() : antoine;
        besideWater = besideWater == null ? Optional.empty() : besideWater;
        evaporatesAs = Sorted.map(evaporatesAs);
        vapourKpa20C = vapourKpa20C == null ? Optional.empty() : vapourKpa20C;
        boilingC = boilingC == null ? Optional.empty() : boilingC;
        flashC = flashC == null ? Optional.empty() : flashC;
        lowerFlammablePercent = lowerFlammablePercent == null ? Optional.empty() : lowerFlammablePercent;
        upperFlammablePercent = upperFlammablePercent == null ? Optional.empty() : upperFlammablePercent;
        evaporationRate = evaporationRate == null ? Optional.empty() : evaporationRate;
        exposureLimitPpm = exposureLimitPpm == null ? Optional.empty() : exposureLimitPpm;
        exposureLimitBy = exposureLimitBy == null ? "" : exposureLimitBy;
        idlhPpm = idlhPpm == null ? Optional.empty() : idlhPpm;
        note = note == null ? "" : note;
        recalled = Sorted.set(recalled);
        sources = sources == null ? List.of() : List.copyOf(sources);
    }

    /** Where the figure of one field comes from. */
    public Basis basisOf(String field) {
        return recalled.contains(field) ? Basis.MEMORY : basis;
    }

    public boolean isOrganic() {
        return solvent.isPresent();
    }
}
