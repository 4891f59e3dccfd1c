package rungwise.science;

import java.util.List;

/**
 * Whether a solvent suits a material, by Hansen's distance (Hansen Solubility Parameters: A User's Handbook, 2nd ed.
 * 2007). It says nothing of acids, alkali, abrasion, speed or stress.
 */
public final class Solubility {
    /** A molecule larger than this, in cm³/mol, is slow to enter a polymer. */
    public static final double SLOW_FROM_CM3_PER_MOL = 200;

    private Solubility() {
    }

    /**
     * How a solvent stands to a sphere. The boundary at 1 is published; those at 0.7 and 1.3 are our own, as published
     * spheres of one material differ by about that much.
     */
    public enum Band {
        /** RED below 0.7. */
        DISSOLVES,
        /** 0.7 to below 1. */
        SWELLS,
        /** 1 to below 1.3: with time or stress. */
        SLOW,
        /** 1.3 and more. */
        PASSES
    }

    /** A component of a blend; only the ratio of the volumes counts. */
    public record Part(Hansen hansen, double volume) {
    }

    /** Lowest and highest RED over several published spheres of one material. */
    public record Interval(double low, double high) {
    }

    /**
     * Ra = √(4ΔδD² + ΔδP² + ΔδH²) in MPa^0.5.
     */
    public static double distance(Hansen one, Hansen other) {
        double dispersion = one.dispersion() - other.dispersion();
        double polar = one.polar() - other.polar();
        double hydrogen = one.hydrogen() - other.hydrogen();
        return Math.sqrt(4 * dispersion * dispersion + polar * polar + hydrogen * hydrogen);
    }

    /** RED = Ra / R0, without unit: 0 in the middle of the sphere, 1 on its skin. */
    public static double red(Hansen solvent, Sphere material) {
        return distance(solvent, material.centre()) / material.radius();
    }

    public static Band band(double red) {
        if (!(red >= 0)) {
            throw new IllegalArgumentException("a RED is 0 or more, not " + red);
        }
        return red < 0.7 ? Band.DISSOLVES : red < 1 ? Band.SWELLS : red < 1.3 ? Band.SLOW : Band.PASSES;
    }

    /**
     * The parameters of a blend: the mean weighted by volume. Only for organic parts on a deposit: water leaves it out
     * (blended in, it would make strong alcohol look harmless), and a surface is judged by its worst single component.
     *
     * @param parts at least one, volumes 0 or more, together above 0
     */
    public static Hansen blend(List<Part> parts) {
        double whole = parts.stream().mapToDouble(Part::volume).sum();
        if (!(whole > 0) || parts.stream().anyMatch(p -> p.volume() < 0)) {
            throw new IllegalArgumentException("a blend needs volumes of 0 or more that add up to more than 0");
        }
        return new Hansen(parts.stream().mapToDouble(p -> p.hansen().dispersion() * p.volume()).sum() / whole,
                parts.stream().mapToDouble(p -> p.hansen().polar() * p.volume()).sum() / whole,
                parts.stream().mapToDouble(p -> p.hansen().hydrogen() * p.volume()).sum() / whole);
    }

    /**
     * RED against every published sphere of one material. For a surface the low end is the cautious one.
     *
     * @param spheres at least one
     */
    public static Interval interval(Hansen solvent, List<Sphere> spheres) {
        var reds = spheres.stream().mapToDouble(s -> red(solvent, s)).summaryStatistics();
        if (reds.getCount() == 0) {
            throw new IllegalArgumentException("no sphere to compare with");
        }
        return new Interval(reds.getMin(), reds.getMax());
    }
}
