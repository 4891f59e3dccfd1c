package rungwise.names;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rungwise.knowledge.words.Spoken;
import rungwise.knowledge.words.WideWord;

/** What the entries of one kind are called. */
public final class Names {
    private static final int NEAREST = 3;
    /** Further off than this nothing is near. */
    private static final double NEAR = 0.35;

    private final Spoken spoken;
    private final Map<String, Called> byId = new LinkedHashMap<>();
    private final Map<String, String> idByForm = new HashMap<>();
    private final Map<String, List<String>> wide = new HashMap<>();

    Names(Spoken spoken, Collection<Called> things, Collection<WideWord> wideWords) {
        this.spoken = spoken;
        things.forEach(t -> byId.put(t.id(), t));
        things.forEach(t -> idByForm.put(spoken.form(t.id()), t.id()));
        // a shop may call its product by a word that means something else here; the name goes first
        things.forEach(t -> idByForm.putIfAbsent(spoken.form(t.name()), t.id()));
        things.forEach(t -> t.alsoCalled().forEach(other -> idByForm.putIfAbsent(spoken.form(other), t.id())));
        wideWords.forEach(w -> w.said().forEach(said -> wide.put(spoken.form(said), w.mayBe())));
    }

    /** These, and those of another kind where nothing of this one is called so. */
    Names and(Names other) {
        Names both = new Names(spoken, Stream.concat(byId.values().stream(), other.byId.values().stream()
                .filter(t -> !byId.containsKey(t.id()))).toList(), List.of());
        both.idByForm.putAll(other.idByForm);
        both.idByForm.putAll(idByForm);
        both.wide.putAll(other.wide);
        both.wide.putAll(wide);
        return both;
    }

    /** What is meant, where that is one thing. */
    public Optional<String> id(String word) {
        return byId.containsKey(word) ? Optional.of(word) : Optional.ofNullable(idByForm.get(spoken.form(word)));
    }

    /** What a word may mean that is too wide to mean one thing; else nothing. */
    public List<Called> mayBe(String word) {
        return id(word).isPresent() ? List.of()
                : wide.getOrDefault(spoken.form(word), List.of()).stream().map(byId::get).filter(t -> t != null).toList();
    }

    /** What is called by each of the words, among others. */
    public List<Called> partly(String words) {
        Closeness closeness = new Closeness(spoken, words);
        return sorted(closeness).stream().filter(closeness::isPartOf).toList();
    }

    /** The three nearest by spelling and by what else is said of them; fewer where nothing else is near. */
    public List<Called> nearest(String word) {
        Closeness closeness = new Closeness(spoken, word);
        return sorted(closeness).stream().limit(NEAREST).filter(t -> closeness.to(t) >= NEAR).toList();
    }

    private List<Called> sorted(Closeness closeness) {
        Map<String, Double> near = new HashMap<>();
        byId.values().forEach(t -> near.put(t.id(), closeness.to(t)));
        List<Called> all = new ArrayList<>(byId.values());
        all.sort(Comparator.comparingDouble((Called t) -> -near.get(t.id())).thenComparing(Called::id));
        return all;
    }

    public Called called(String id) {
        return byId.get(id);
    }

    public Collection<Called> all() {
        return byId.values();
    }
}
