package rungwise.knowledge.words;

import java.util.Map;

/** How people say what has no closed list: spellings, ages, and words too wide to be read as one thing. Each keyed by id. */
public record SpokenWords(Map<String, Spelling> spellings, Map<String, TimeWord> times, Map<String, WideWord> wideDeposits,
                          Map<String, WideWord> wideSurfaces, Map<String, WideWord> wideMethods) {
    public Spoken spoken() {
        return new Spoken(spellings.values());
    }
}
