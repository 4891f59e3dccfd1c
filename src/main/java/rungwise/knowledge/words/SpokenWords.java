package rungwise.knowledge.words;

import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** How people say what has no closed list: spellings, ages, words too wide to be read as one thing, and idle ones. Each keyed by id. */
public record SpokenWords(Map<String, Spelling> spellings, Map<String, TimeWord> times, Map<String, WideWord> wideDeposits,
                          Map<String, WideWord> wideSurfaces, Map<String, WideWord> wideMethods, Map<String, IdleWord> idle) {
    /** Words that say nothing beside such things. */
    public Set<String> idle(IdleWord.Beside beside) {
        return idle.values().stream().filter(w -> w.beside().contains(beside)).flatMap(IdleWord::said)
                .flatMap(said -> spoken().words(said).stream()).collect(Collectors.toSet());
    }

    public Spoken spoken() {
        return new Spoken(spellings.values());
    }
}
