package rungwise.knowledge.words;

import java.util.List;

/** One word that is spelt or said in several ways; each is read as the id. */
public record Spelling(String id, List<String> alsoCalled) {
    public Spelling {
        alsoCalled = alsoCalled == null ? List.of() : List.copyOf(alsoCalled);
    }
}
