package rungwise.knowledge.method;

import java.util.List;
import rungwise.knowledge.common.Basis;

/**
 * What touches the surface.
 *
 * @param hardness 0 air or water, 1 cloth and soft foam, 2 soft bristle or soft polymer, 3 clay, nylon and rigid
 *                 plastic, 4 mineral abrasive and melamine resin, 5 steel
 * @param ignites  makes heat or sparks that light solvent vapour: motors, friction, nozzles
 */
public record Tool(String id, String name, ToolKind kind, int hardness, boolean ignites, List<String> ppe,
                   List<String> risks, boolean alwaysAtHand, Basis basis, List<String> sources) {
    public static final Tool NONE = new Tool("none", "nothing", ToolKind.NONE, 0, false, List.of(), List.of(), true,
            Basis.COMMON_PRACTICE, List.of());

    public Tool {
        ppe = ppe == null ? List.of() : List.copyOf(ppe);
        risks = risks == null ? List.of() : List.copyOf(risks);
        sources = sources == null ? List.of() : List.copyOf(sources);
    }
}
