package rungwise.knowledge.method;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwise.knowledge.chemistry.Reactive;
import rungwise.knowledge.chemistry.Solvent;
import rungwise.knowledge.chemistry.SolventColumn;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.common.Range;
import rungwise.knowledge.common.Sorted;

/**
 * A chemical as used on the panel.
 *
 * @param family       agents of one family share a contact cap and are rivals in a ladder
 * @param acidity      pH as used; empty where the agent holds no water to speak of
 * @param solvents     percent by volume of each organic kind, as used (water, thickener and surfactant left out)
 * @param residueRinse minutes of rinsing that clear it; 0 where it leaves nothing behind
 * @param composition  substances by percent of volume as used, typical of the trade and recalled; what is left out is
 *                     thickener, surfactant, salt. Empty where nobody knows
 * @param layer        how thick it sits; empty for a thin liquid
 * @param dissolved   acids, bases, salts and peroxide by entry of exposure, in percent by weight as used, each at the strongest
 *                    of what the trade uses; recalled. Empty where nobody knows
 * @param sensitisers  what a sensitised worker may react to
 */
public record Agent(String id, String name, String family, Form form, Optional<Range> acidity,
                    Map<Solvent, Double> solvents, Set<Reactive> reactive, String dilution, String mix,
                    double residueRinse, Set<String> sensitisers, List<String> ppe, List<String> risks,
                    boolean alwaysAtHand, Map<String, Double> composition, Optional<Layer> layer,
                    Map<String, Double> dissolved, Basis basis, List<String> sources) {
    public static final Agent NONE = new Agent("none", "nothing", "none", Form.LIQUID, Optional.empty(), Map.of(),
            Set.of(), "", "", 0, Set.of(), List.of(), List.of(), true, Map.of(), Optional.empty(), Basis.COMMON_PRACTICE,
            List.of());

    /** One of which nobody knows what is dissolved in it. */
    public Agent(String id, String name, String family, Form form, Optional<Range> acidity, Map<Solvent, Double> solvents,
                 Set<Reactive> reactive, String dilution, String mix, double residueRinse, Set<String> sensitisers,
                 List<String> ppe, List<String> risks, boolean alwaysAtHand, Map<String, Double> composition,
                 Optional<Layer> layer, Basis basis, List<String> sources) {
        this(id, name, family, form, acidity, solvents, reactive, dilution, mix, residueRinse, sensitisers, ppe, risks,
                alwaysAtHand, composition, layer, Map.of(), basis, sources);
    }

    public Agent {
        acidity = acidity == null ? Optional.empty() : acidity;
        solvents = Sorted.map(solvents);
        reactive = Sorted.set(reactive);
        dilution = dilution == null ? "" : dilution;
        mix = mix == null ? "" : mix;
        sensitisers = Sorted.set(sensitisers);
        ppe = ppe == null ? List.of() : List.copyOf(ppe);
        risks = risks == null ? List.of() : List.copyOf(risks);
        composition = Sorted.map(composition);
        dissolved = Sorted.map(dissolved);
        layer = layer == null ? Optional.empty() : layer;
        sources = sources == null ? List.of() : List.copyOf(sources);
    }

    /** The strongest single component judged in a column, in percent. */
    public double percentIn(SolventColumn column) {
        return solvents.entrySet().stream().filter(e -> e.getKey().column() == column)
                .mapToDouble(Map.Entry::getValue).max().orElse(0);
    }

    /** The strongest single organic component, in percent. */
    public double strongestSolvent() {
        return solvents.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
    }

    public boolean holds(Reactive group) {
        return reactive.contains(group);
    }

    /** Wet chemistry: anything other than plain water, air or nothing. */
    public boolean isChemistry() {
        return !family.equals("none") && !family.equals("water") && !family.equals("air");
    }

    /** Brings water or chemistry as liquid, foam, gel, paste or steam; powder, air and other gas are dry. */
    public boolean isWet() {
        return !family.equals("none") && form != Form.POWDER && (form != Form.GAS || family.equals("water"));
    }
}
