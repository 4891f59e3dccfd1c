package rungwise.knowledge.deposit;

import java.util.Optional;

/**
 * How a deposit holds.
 *
 * @param holds what holds it, as words within a sentence
 * @param dissolvesLike the material whose spheres stand for deposits that hold so; empty where no solvent decides it
 */
public record BondClass(String id, String meaning, String holds, Optional<String> dissolvesLike) {
    public BondClass {
        dissolvesLike = dissolvesLike == null ? Optional.empty() : dissolvesLike;
    }
}
