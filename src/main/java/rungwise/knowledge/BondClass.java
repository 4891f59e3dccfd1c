package rungwise.knowledge;

import java.util.Optional;

/**
 * How a deposit holds.
 *
 * @param dissolvesLike the material whose spheres stand for deposits that hold so; empty where no solvent decides it
 */
public record BondClass(String id, String meaning, Optional<String> dissolvesLike) {
    public BondClass {
        dissolvesLike = dissolvesLike == null ? Optional.empty() : dissolvesLike;
    }
}
