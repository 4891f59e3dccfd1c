package rungwise.knowledge.method;

import java.util.List;
import rungwise.knowledge.common.Basis;

/**
 * What a way of working does to a deposit: the reason beneath a rung.
 *
 * @param id    of the {@link Mechanism}
 * @param says  the sentence, with {agent}, {tool} and {deposit} where their names go
 * @param cause what lies beneath it
 * @param see   what is seen where it works
 * @param ownSign whether that tells more than how the deposit lies: a reagent, heat and cold show themselves
 */
public record MechanismWord(String id, String says, String cause, String see, boolean ownSign, Basis basis, List<String> sources) {
    public MechanismWord {
        sources = sources == null ? List.of() : List.copyOf(sources);
    }

    public boolean namesAgent() {
        return says.contains("{agent}");
    }

    public boolean namesTool() {
        return says.contains("{tool}");
    }
}
