package rungwise.names;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rungwise.knowledge.KnowledgeBase;
import rungwise.names.Found.How;
import rungwise.names.Found.One;

/** Looks words up in everything that a person may name. */
public final class Finder {
    private static final int MOST_OF_A_SORT = 12;

    private final String revision;
    private final Vocabulary vocabulary;

    public Finder(KnowledgeBase base) {
        this.revision = base.revision();
        this.vocabulary = new Vocabulary(base);
    }

    /** What is called so, or partly so; what is near only where nothing is. */
    public Found find(String words) {
        List<One> found = new ArrayList<>();
        for (Sort sort : Sort.values()) {
            matching(sort, words).limit(MOST_OF_A_SORT).forEach(found::add);
        }
        if (found.isEmpty()) {
            for (Sort sort : Sort.values()) {
                vocabulary.of(sort).nearest(words).forEach(t -> found.add(one(sort, t, How.NEAR)));
            }
        }
        return new Found(revision, words, found);
    }

    private Stream<One> matching(Sort sort, String words) {
        Names names = vocabulary.of(sort);
        List<Called> exact = names.id(words).map(names::called).stream().toList();
        List<Called> wide = names.mayBe(words);
        // what a wide word may mean is a list made by hand; anything that merely holds the word would blur it
        List<Called> partly = wide.isEmpty() ? names.partly(words).stream().filter(t -> !exact.contains(t)).toList() : List.of();
        return Stream.of(exact.stream().map(t -> one(sort, t, How.CALLED)), wide.stream().map(t -> one(sort, t, How.MAY_BE)),
                partly.stream().map(t -> one(sort, t, How.PARTLY))).flatMap(s -> s);
    }

    private static One one(Sort sort, Called thing, How how) {
        return new One(sort.id(), thing.id(), thing.name(), how.id(), thing.tell());
    }
}
