package rungwise.question;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.words.Sensitiser;

/**
 * What somebody reacts to, spread out to every name under which an agent may bear it: the sensitiser, its substances, the
 * families that hold it and the agents of which it is a part.
 */
public final class Sensitisation {
    private final KnowledgeBase base;
    private WordList words;

    public Sensitisation(KnowledgeBase base) {
        this.base = base;
    }

    /** Most questions name nobody who reacts to anything, and need no list. */
    private WordList words() {
        if (words == null) {
            words = list();
        }
        return words;
    }

    private WordList list() {
        WordList all = WordList.of(base.questionWords().sensitisers().values());
        all = all.and(WordList.ofIds(base.families().keySet())).and(WordList.ofIds(base.substances().keySet()))
                .and(WordList.ofIds(base.exposures().keySet())).and(WordList.ofIds(base.agents().keySet()))
                .and(WordList.ofIds(base.agents().values().stream().flatMap(a -> a.sensitisers().stream()).distinct().sorted()
                        .toList()));
        List<Map.Entry<String, String>> more = new ArrayList<>();
        base.substances().values().forEach(s -> more.addAll(List.of(Map.entry(s.name(), s.id()), Map.entry(s.cas(), s.id()))));
        base.agents().values().forEach(a -> more.add(Map.entry(a.name(), a.id())));
        return all.alsoSaid(more);
    }

    /** What is wrong with a word, if anything. */
    Optional<Problem> problem(String pointer, String word) {
        return words().id(word).isPresent() ? Optional.empty() : Optional.of(Problem.said(pointer, "no-sensitiser",
                "word", word, "near", String.join(", ", words().nearest(word))));
    }

    /** Every id and name that stands for what these words mean. */
    public Set<String> of(Collection<String> said) {
        Set<String> all = new TreeSet<>();
        said.forEach(word -> all.addAll(of(words().id(word).orElse(word))));
        return all;
    }

    private Set<String> of(String id) {
        Set<String> all = new TreeSet<>(Set.of(id));
        Optional.ofNullable(base.agents().get(id)).ifPresent(a -> all.addAll(a.sensitisers()));
        for (Sensitiser one : base.questionWords().sensitisers().values()) {
            if (named(one).anyMatch(all::contains)) {
                all.add(one.id());
                all.addAll(one.families());
                // a family or a single substance of a group stands for itself, the group for all its substances
                if (one.id().equals(id)) {
                    all.addAll(one.substances());
                }
            }
        }
        Set<String> holders = new TreeSet<>();
        base.agents().values().stream().filter(a -> holds(a, all)).forEach(a -> holders.add(a.id()));
        all.addAll(holders);
        return all;
    }

    private static Stream<String> named(Sensitiser one) {
        return Stream.of(Stream.of(one.id()), one.substances().stream(), one.families().stream()).flatMap(s -> s);
    }

    /** Whether any of it is in the agent; one of which nobody says what is in it counts as the others of its family do. */
    private boolean holds(Agent agent, Set<String> any) {
        return says(agent, any) || !isTold(agent) && base.agents().values().stream()
                .filter(other -> other.family().equals(agent.family())).anyMatch(other -> says(other, any));
    }

    private static boolean isTold(Agent agent) {
        return !agent.composition().isEmpty() || !agent.dissolved().isEmpty();
    }

    private static boolean says(Agent agent, Set<String> any) {
        return Stream.of(agent.composition().keySet(), agent.dissolved().keySet(), agent.sensitisers())
                .flatMap(Set::stream).anyMatch(any::contains);
    }
}
