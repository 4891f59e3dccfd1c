package rungwise.rules.use;

/**
 * A method in its place in the ladder as it stood before the first try.
 *
 * @param place    from 0, gentlest first; what was tried and could never have been a rung comes last
 * @param offered  a rung of it: only such a one teaches by failing
 * @param wasTried with whatever outcome
 * @param gained   by how much its chance rose since, where what failed makes it likelier to be something else; else 0
 */
public record Placed(Use use, int place, boolean offered, boolean wasTried, double gained) {
    public String name() {
        return use.method().id();
    }

    public boolean shears() {
        return use.method().mechanism() == rungwise.knowledge.method.Mechanism.SHEAR;
    }
}
