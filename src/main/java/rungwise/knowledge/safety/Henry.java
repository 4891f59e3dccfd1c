package rungwise.knowledge.safety;

import java.util.List;
import rungwise.knowledge.common.Basis;
import rungwise.science.HenrysLaw;

/**
 * How readily a gas leaves water.
 *
 * @param molPerM3Pa solubility at 25 °C, mol in a m³ of water for each Pa above it
 * @param kelvin     how steeply the solubility falls with warmth
 */
public record Henry(double molPerM3Pa, double kelvin, Basis basis, List<String> sources) {
    public Henry {
        sources = sources == null ? List.of() : List.copyOf(sources);
    }

    public HenrysLaw law() {
        return new HenrysLaw(molPerM3Pa, kelvin);
    }
}
