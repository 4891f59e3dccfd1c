package rungwise.book;

import java.util.Collection;
import java.util.List;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.safety.Protective;

/** Items of protection as sentences; a set is said item by item, and what another item covers is left out. */
final class Protection {
    private final KnowledgeBase base;

    Protection(KnowledgeBase base) {
        this.base = base;
    }

    List<String> of(Collection<String> items) {
        return Protective.spelledOut(items, base.ppe()).stream().map(i -> base.ppe().containsKey(i) ? base.ppe().get(i).meaning() : Words.of(i)).toList();
    }
}
