package rungwise.knowledge.words;

import java.util.List;
import java.util.stream.Stream;

/**
 * A word that may mean several entries of one kind: it is asked back with them, as a guess could do damage.
 *
 * @param mayBe ids of what it may mean
 * @param vague whether it says only what something is like: then it may be more than these, and is never read as the one that is left
 * @param together whether a question that says no more is answered for all of them at once
 */
public record WideWord(String id, List<String> alsoCalled, List<String> mayBe, boolean vague, boolean together) {
    public WideWord {
        alsoCalled = alsoCalled == null ? List.of() : List.copyOf(alsoCalled);
        mayBe = List.copyOf(mayBe);
    }

    /** Every way to say it. */
    public Stream<String> said() {
        return Stream.concat(Stream.of(id), alsoCalled.stream());
    }
}
