package rungwise.rules;

import rungwise.knowledge.Figures;
import rungwise.knowledge.Solute;
import rungwise.knowledge.Substance;

/**
 * The one organic component of a method that is worst for what a surface is made of, judged undiluted.
 *
 * @param percent share of that component in the agent
 * @param red     the lowest over the published spheres of the material: the cautious one
 * @param proxy   the material only stands in for the surface
 */
public record PolymerContact(Use use, Substance component, double percent, Solute material, double red,
                             boolean proxy) {
    public boolean dissolves() {
        return red < 0.7;
    }

    public boolean swells() {
        return red < 1;
    }

    /** Outside the sphere, but near enough that time or stress may do it. */
    public boolean isSlow() {
        return red >= 1 && red < 1.3;
    }

    public String figures() {
        return component.name() + ", " + Figures.text(percent) + " %, RED " + Figures.text(red) + " against "
                + material.name()
                + (proxy ? ", which stands in for " + use.surface().name() : "");
    }
}
