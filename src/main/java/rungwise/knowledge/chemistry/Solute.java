package rungwise.knowledge.chemistry;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import rungwise.knowledge.common.Basis;
import rungwise.science.Hansen;
import rungwise.science.Sphere;

/**
 * A material as solvents see it: what of a deposit dissolves, or what a surface is made of.
 *
 * @param spheres published fits of one material; they differ, and the spread is shown
 */
public record Solute(String id, String name, Role role, List<Fit> spheres, @JsonProperty(access = JsonProperty.Access.WRITE_ONLY) String note) {
    public Solute {
        spheres = List.copyOf(spheres);
        note = note == null ? "" : note;
    }

    /** What it stands for. */
    public enum Role { SOIL, SURFACE, BOTH }

    /** How the sphere was found: only attack on the finished material judges a surface well. */
    public enum Measure { CHEMICAL_RESISTANCE, SOLUBILITY, SOLVENT_RANGE, SWELLING, ESTIMATE }

    /**
     * One published sphere.
     *
     * @param what   the sample, in a few words
     * @param radius in MPa^0.5
     * @param entry  number in the handbook's table
     */
    public record Fit(String what, Hansen centre, double radius, Measure measure, String entry, Basis basis,
                      List<String> sources) {
        public Fit {
            entry = entry == null ? "" : entry;
            sources = sources == null ? List.of() : List.copyOf(sources);
        }

        public Sphere sphere() {
            return new Sphere(centre, radius);
        }
    }

    public boolean isSoil() {
        return role != Role.SURFACE;
    }

    public boolean isSurface() {
        return role != Role.SOIL;
    }
}
