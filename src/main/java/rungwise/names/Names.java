package rungwise.names;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import rungwise.knowledge.words.Spoken;
import rungwise.knowledge.words.WideWord;

/** What the entries of one kind are called. */
public final class Names {
    private static final int NEAREST = 3;
    /** Further off than this nothing is near. */
    private static final double NEAR = 0.35;

    private final Spoken spoken;
    private final Set<String> idle;
    private final Map<String, Called> byId = new LinkedHashMap<>();
    private final Map<String, String> idByForm = new HashMap<>();
    private final Map<String, List<String>> wide = new HashMap<>();
    private final Set<String> vague = new HashSet<>();
    private final Set<String> together = new HashSet<>();
    /** By its words in the order of letters: "headlight yellow" is a yellow headlight; empty where that is two things. */
    private final Map<String, Optional<String>> idByWords = new HashMap<>();

    Names(Spoken spoken, Collection<Called> things, Collection<WideWord> wideWords) {
        this(spoken, things, wideWords, Set.of());
    }

    /** @param idle words without which a thing is found, where nothing is called by all that was said */
    Names(Spoken spoken, Collection<Called> things, Collection<WideWord> wideWords, Set<String> idle) {
        this.spoken = spoken;
        this.idle = idle;
        things.forEach(t -> byId.put(t.id(), t));
        things.forEach(t -> idByForm.put(spoken.form(t.id()), t.id()));
        // a shop may call its product by a word that means something else here; the name goes first
        things.forEach(t -> idByForm.putIfAbsent(spoken.form(t.name()), t.id()));
        things.forEach(t -> t.alsoCalled().forEach(other -> idByForm.putIfAbsent(spoken.form(other), t.id())));
        things.forEach(t -> t.said().forEach(said -> idByWords.merge(turned(said), Optional.of(t.id()),
                (one, other) -> one.equals(other) ? one : Optional.empty())));
        wideWords.forEach(w -> w.said().forEach(said -> wide.put(spoken.form(said), w.mayBe())));
        wideWords.stream().filter(WideWord::vague).flatMap(WideWord::said).forEach(said -> vague.add(spoken.form(said)));
        wideWords.stream().filter(WideWord::together).flatMap(WideWord::said).forEach(said -> together.add(spoken.form(said)));
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
        return byId.containsKey(word) ? Optional.of(word) : form(word).isPresent() && !isTurned(word) ? form(word).map(idByForm::get)
                : idByWords.getOrDefault(turned(word), Optional.empty());
    }

    /** Whether all that was said names a thing, though in another order, and is known only in part as it stands. */
    private boolean isTurned(String said) {
        String whole = spoken.form(said);
        return !idByForm.containsKey(whole) && !wide.containsKey(whole) && idByWords.getOrDefault(turned(said), Optional.empty()).isPresent();
    }

    private String turned(String said) {
        return String.join(" ", spoken.words(said).stream().sorted().toList());
    }

    /** What a word may mean that is too wide to mean one thing; else nothing. */
    public List<Called> mayBe(String word) {
        return id(word).isPresent() ? List.of()
                : form(word).map(wide::get).orElse(List.of()).stream().map(byId::get).filter(Objects::nonNull).toList();
    }

    /**
     * Of what a wide word may mean, what may be meant here; one alone is what is meant, save of a word that says only what
     * something is like.
     */
    public List<Called> mayBe(String word, UnaryOperator<List<Called>> here) {
        List<Called> all = mayBe(word);
        List<Called> some = all.size() < 2 ? all : here.apply(all);
        return some.size() == 1 && form(word).filter(vague::contains).isPresent() ? all : some;
    }

    /** Whether a wide word means all that it may mean, where nobody can be asked. */
    public boolean isTogether(String word) {
        return id(word).isEmpty() && form(word).filter(together::contains).isPresent();
    }

    /** The form of what was said that is known here: of all of it, else of what is left without idle words. */
    private Optional<String> form(String said) {
        return Stream.of(spoken.form(said), String.join("", spoken.words(said).stream().filter(w -> !idle.contains(w)).toList()))
                .filter(form -> idByForm.containsKey(form) || wide.containsKey(form)).findFirst();
    }

    /** What is called by each of the words, among others. */
    public List<Called> partly(String words) {
        Closeness closeness = new Closeness(spoken, words, idle);
        return sorted(closeness).stream().filter(closeness::isPartOf).toList();
    }

    /**
     * What it is a slip of; else the three nearest by spelling and by what else is said of them, fewer where nothing else is near.
     * Where it is a wide word that is misspelt, they are what that may mean.
     */
    public List<Called> nearest(String word) {
        Closeness closeness = new Closeness(spoken, word, idle);
        List<Called> near = sorted(closeness).stream().limit(NEAREST).filter(t -> closeness.to(t) >= NEAR).toList();
        List<Called> misspelt = near.stream().filter(closeness::isMisspeltFrom).toList();
        if (!misspelt.isEmpty()) {
            return misspelt;
        }
        return wide.keySet().stream().filter(closeness::isMisspelt).min(Comparator.comparingInt(closeness::distance)
                .thenComparing(Comparator.naturalOrder())).map(form -> wide.get(form).stream().map(byId::get)
                        .filter(Objects::nonNull).toList()).orElse(near);
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
