package rungwise.rules;

/**
 * The whole body around the spot, as far as it was told.
 *
 * @param soiling    light, heavy or unknown
 * @param protection none, wax, coating or unknown
 */
public record Body(String soiling, String protection) {
    public boolean isHeavilySoiled() {
        return soiling.equals("heavy");
    }

    /** Heavily soiled with nothing on the paint that an alkaline foam could spoil. */
    public boolean isBareAndHeavilySoiled() {
        return isHeavilySoiled() && protection.equals("none");
    }

    public String figures() {
        return "soiling " + soiling + ", protection " + protection;
    }
}
