package rungwise.knowledge.words;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import rungwise.knowledge.common.Sorted;

/**
 * Words that say nothing of what a thing is: what is called "bonnet" is found by "my left bonnet" as well.
 *
 * @param beside beside what they say nothing
 */
public record IdleWord(String id, Set<Beside> beside, List<String> alsoCalled) {
    public IdleWord {
        beside = Sorted.set(beside);
        alsoCalled = List.copyOf(alsoCalled);
    }

    /** What words may be said of. */
    public enum Beside {
        DEPOSITS, SURFACES
    }

    /** All of them. */
    public Stream<String> said() {
        return Stream.concat(Stream.of(id), alsoCalled.stream());
    }
}
