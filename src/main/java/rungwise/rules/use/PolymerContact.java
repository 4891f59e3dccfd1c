package rungwise.rules.use;

import java.util.List;
import rungwise.knowledge.chemistry.Solute;
import rungwise.knowledge.chemistry.Substance;
import rungwise.text.Figure;

/**
 * The one organic component of a method that is worst for what a surface is made of, judged undiluted.
 *
 * @param percent share of that component in the agent
 * @param red     the lowest over the published spheres of the material: the cautious one
 * @param proxy   the material only stands in for the surface
 */
public record PolymerContact(Use use, Substance component, double percent, Solute material, double red,
                             boolean proxy) {
    public List<Figure> figures() {
        return List.of(Figure.of("substance", component.name()), Figure.of("share", percent, "%"), Figure.of("red", red),
                Figure.of(proxy ? "standIn" : "material", material.name()), Figure.of("surface", use.surface().name()));
    }
}
