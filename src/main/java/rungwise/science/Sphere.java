package rungwise.science;

/**
 * What dissolves or attacks a material: the solvents whose Hansen parameters lie within a radius of its middle.
 *
 * @param radius MPa^0.5, above 0
 */
public record Sphere(Hansen centre, double radius) {
    public Sphere {
        if (!(radius > 0)) {
            throw new IllegalArgumentException("a sphere needs a radius above 0, not " + radius);
        }
    }
}
