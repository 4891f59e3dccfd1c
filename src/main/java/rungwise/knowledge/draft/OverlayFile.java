package rungwise.knowledge.draft;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwise.knowledge.chemistry.Reactive;
import rungwise.knowledge.chemistry.SolventColumn;
import rungwise.knowledge.common.Range;
import rungwise.knowledge.common.Sorted;
import rungwise.knowledge.method.Form;

/** One file of a shop's own: what stands on its shelf, and where it is stricter than the knowledge. */
public record OverlayFile(List<Product> products, List<Tightening> tighten) {
    public OverlayFile {
        products = products == null ? List.of() : List.copyOf(products);
        tighten = tighten == null ? List.of() : List.copyOf(tighten);
    }

    /** What the percentages of a sheet count. */
    public enum Share { VOLUME, WEIGHT }

    /**
     * A product as its safety data sheet describes it.
     *
     * @param function     what its label says it is for
     * @param composition  percent as sold, by substance or part of a sheet, or by kind of solvent where the substance is not known
     * @param acidity      pH as sold
     * @param waterParts   parts of water to one part; 0 = neat
     * @param inUse        what the label says of it once it is thinned
     * @param reactive     reactive groups that no hazard statement gives away, such as thiol or hypochlorite
     * @param hazards      hazard statements of the sheet
     * @param like         method whose technique is used
     */
    public record Product(String id, String name, Optional<String> function, Share percentBy, Map<String, Range> composition,
                   Optional<Range> acidity, Form form, double waterParts, Optional<InUse> inUse, Set<Reactive> reactive,
                   List<String> hazards, Optional<String> like) {
        public Product {
            function = function == null ? Optional.empty() : function;
            inUse = inUse == null ? Optional.empty() : inUse;
            composition = Sorted.map(composition);
            acidity = acidity == null ? Optional.empty() : acidity;
            reactive = Sorted.set(reactive);
            hazards = hazards == null ? List.of() : List.copyOf(hazards);
            like = like == null ? Optional.empty() : like;
        }
    }

    /**
     * A product as it is used.
     *
     * @param acidity     pH in use
     * @param composition percent in use, of parts named as sold
     */
    public record InUse(Optional<Range> acidity, Map<String, Range> composition) {
        public InUse {
            acidity = acidity == null ? Optional.empty() : acidity;
            composition = Sorted.map(composition);
        }
    }

    /**
     * A narrower limit for one known method or surface.
     *
     * @param window       panel temperature in C at which the method may start
     * @param tries        correct attempts
     * @param dwellMinutes longest stay
     * @param gates        gates that the method carries in addition
     * @param acidity      pH window of the surface
     * @param maxC         highest temperature of the surface
     * @param maxPercent   strongest solvent that the surface takes, by column
     */
    public record Tightening(Optional<String> method, Optional<String> surface, Optional<Range> window,
                      Optional<Integer> tries, Optional<Double> dwellMinutes, List<String> gates,
                      Optional<Range> acidity, Optional<Double> maxC, Map<SolventColumn, Double> maxPercent) {
        public Tightening {
            method = method == null ? Optional.empty() : method;
            surface = surface == null ? Optional.empty() : surface;
            window = window == null ? Optional.empty() : window;
            tries = tries == null ? Optional.empty() : tries;
            dwellMinutes = dwellMinutes == null ? Optional.empty() : dwellMinutes;
            gates = gates == null ? List.of() : List.copyOf(gates);
            acidity = acidity == null ? Optional.empty() : acidity;
            maxC = maxC == null ? Optional.empty() : maxC;
            maxPercent = Sorted.map(maxPercent);
        }

        public String target() {
            return method.or(() -> surface).orElse("");
        }
    }
}
