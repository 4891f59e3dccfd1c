package rungwise.knowledge.chemistry;

/**
 * What a surface is made of, as solvents see it.
 *
 * @param sphere id of a material
 * @param proxy  no sphere of the surface itself is published, and this one stands in
 */
public record Polymer(String sphere, boolean proxy) {
}
