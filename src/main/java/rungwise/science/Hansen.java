package rungwise.science;

/**
 * Hansen solubility parameters of a substance or of the middle of a sphere, each in MPa^0.5 (C. M. Hansen, Hansen
 * Solubility Parameters: A User's Handbook, 2nd ed. 2007). A fitted middle may lie a little below zero.
 *
 * @param dispersion from dispersion forces, usually 13 to 25
 * @param polar      from permanent dipoles, usually 0 to 27
 * @param hydrogen   from hydrogen bonds, usually 0 to 43
 */
public record Hansen(double dispersion, double polar, double hydrogen) {
}
