package rungwise.book;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import rungwise.knowledge.KnowledgeBase;

/** Items of protection as sentences; a set is said item by item. */
final class Protection {
    private final KnowledgeBase base;

    Protection(KnowledgeBase base) {
        this.base = base;
    }

    List<String> of(Collection<String> items) {
        return items.stream().flatMap(this::said).distinct().toList();
    }

    private Stream<String> said(String item) {
        String meaning = Words.meaning(base.ppe(), item);
        List<String> parts = Arrays.asList(meaning.split(", *"));
        boolean set = parts.stream().allMatch(base.ppe()::containsKey) && !parts.contains(item);
        return set ? parts.stream().flatMap(this::said) : Stream.of(meaning);
    }
}
