package rungwise.knowledge.matter;

import java.util.List;

/**
 * What a deposit is made of.
 *
 * @param old once it has hardened; where nobody said, as fresh
 */
public record MadeOf(List<Part> fresh, List<Part> old) {
    public MadeOf {
        fresh = fresh == null ? List.of() : List.copyOf(fresh);
        old = old == null ? fresh : List.copyOf(old);
    }

    /** What a component does in the deposit. */
    public enum Does {
        /** Holds the rest together. */
        BINDS,
        /** Lies beside the others. */
        APART,
        /** Dissolves in nothing, and leaves with what binds it. */
        CARRIED,
        /** Goes into a surface that takes it. */
        STAINS
    }

    /** A component and how much of the deposit it is. */
    public record Part(String component, double share, Does role) {
        public Part {
            role = role == null ? Does.APART : role;
        }
    }

    /** How a deposit lies: on a sealed surface, fresh and old, and where the surface takes it in. */
    public record Lying(DepositForm fresh, DepositForm old, DepositForm porous) {
        public static final Lying UNTOLD = new Lying(DepositForm.UNKNOWN, null, null);

        public Lying {
            old = old == null ? fresh : old;
        }

        DepositForm form(boolean hardened, boolean takenIn) {
            return takenIn && porous != null ? porous : hardened ? old : fresh;
        }
    }
}
