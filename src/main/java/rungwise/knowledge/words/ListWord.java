package rungwise.knowledge.words;

import java.util.List;
import rungwise.knowledge.common.Listed;

/** A word of a closed list that says no more than itself. */
public record ListWord(String id, String name, String meaning, List<String> alsoCalled) implements Listed {
    public ListWord {
        alsoCalled = alsoCalled == null ? List.of() : List.copyOf(alsoCalled);
    }
}
