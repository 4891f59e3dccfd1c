package rungwise.knowledge.safety;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Something to wear or arrange, or a set of such things.
 *
 * @param meaning what it is, in a sentence; empty for a set
 * @param items   what a set is made of; empty for a single thing
 * @param covers  what need not be worn beside it, as it does all that those do
 */
public record Protective(String id, String meaning, List<String> items, List<String> covers) {
    public Protective {
        meaning = meaning == null ? "" : meaning;
        items = items == null ? List.of() : List.copyOf(items);
        covers = covers == null ? List.of() : List.copyOf(covers);
    }

    /** These with sets spelled out, each thing once, and without what another of them covers. */
    public static List<String> spelledOut(Collection<String> ids, Map<String, Protective> known) {
        Set<String> all = new LinkedHashSet<>();
        ids.forEach(id -> all.addAll(known.containsKey(id) && !known.get(id).items().isEmpty() ? known.get(id).items() : List.of(id)));
        return all.stream().filter(id -> all.stream().filter(known::containsKey).noneMatch(o -> known.get(o).covers().contains(id))).toList();
    }
}
