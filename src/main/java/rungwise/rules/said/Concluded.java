package rungwise.rules.said;

import java.util.Optional;

/**
 * A conclusion with its because.
 *
 * @param suspect the contaminant it was concluded from; empty where it holds whatever the deposit is
 */
public record Concluded<C extends Conclusion>(C conclusion, Because because, Optional<String> suspect) {
    public Concluded(C conclusion, Because because) {
        this(conclusion, because, Optional.empty());
    }
}
