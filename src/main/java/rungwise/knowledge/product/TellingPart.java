package rungwise.knowledge.product;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungwise.knowledge.chemistry.Reactive;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.common.Sorted;
import rungwise.knowledge.method.Agent;

/**
 * What makes a product what it is, whatever its label says.
 *
 * @param says     what it holds, within a sentence
 * @param reactive any of these reactive groups
 * @param parts    any of these, dissolved in it
 * @param above    a pH in use above this
 * @param below    a pH in use below this
 * @param method   what it then is
 */
public record TellingPart(String id, String says, Set<Reactive> reactive, Set<String> parts, Optional<Double> above,
                          Optional<Double> below, String method, Basis basis, List<String> sources) {
    public TellingPart {
        reactive = Sorted.set(reactive);
        parts = Sorted.set(parts);
        above = above == null ? Optional.empty() : above;
        below = below == null ? Optional.empty() : below;
        sources = sources == null ? List.of() : List.copyOf(sources);
    }

    public boolean tells(Agent agent) {
        return reactive.stream().anyMatch(agent::holds) || parts.stream().anyMatch(agent.dissolved()::containsKey)
                || agent.acidity().filter(r -> above.filter(a -> r.to() > a).isPresent()
                || below.filter(b -> r.from() < b).isPresent()).isPresent();
    }
}
