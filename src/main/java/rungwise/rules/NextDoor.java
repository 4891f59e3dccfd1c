package rungwise.rules;

import rungwise.knowledge.Form;
import rungwise.knowledge.Surface;
import rungwise.knowledge.ToolKind;

/**
 * A candidate that would be barred on the surface next to the spot, and why.
 *
 * @param use the method as it would be on that neighbour
 */
public record NextDoor(Use use, String why) {
    public String method() {
        return use.name();
    }

    public Surface neighbour() {
        return use.surface();
    }

    /** It is the chemistry that harms there, not the touch or the jet, and it goes where the water goes. */
    public boolean floodsWithHarm() {
        return use.method().floods() && harmsByChemistry();
    }

    /** A liquid that nothing holds in its place: sprayed, not laid on with a cloth, gel or paste. */
    public boolean spraysWithHarm() {
        return !use.method().floods() && harmsByChemistry() && use.toolIs(ToolKind.NONE)
                && (use.agent().form() == Form.LIQUID || use.agent().form() == Form.FOAM);
    }

    private boolean harmsByChemistry() {
        return use.isWetChemistry() && !use.isWashOnly();
    }

    public String figures() {
        return neighbour().name() + ": " + why;
    }
}
