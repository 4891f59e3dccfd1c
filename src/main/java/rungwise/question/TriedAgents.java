package rungwise.question;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.Reactive;
import rungwise.knowledge.chemistry.Solvent;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.words.EverydayProduct;
import rungwise.text.Texts;

/**
 * What each try brought to the spot. A method and a substance both count; free words are read as the everyday products that
 * they name, and where they name none, as something that may hold anything.
 */
public final class TriedAgents {
    private final KnowledgeBase base;
    /** Everyday words in plain form, the longest first, so that "nail varnish remover" is not a remover of something else. */
    private final Map<String, EverydayProduct> byWords = new LinkedHashMap<>();

    /**
     * One thing that a try brought.
     *
     * @param name   method id, agent id, or the words that were said
     * @param family family with which it shares its contact
     * @param told   false where nobody knows what it was
     */
    public record Brought(String name, String family, Agent agent, boolean told) {
    }

    public TriedAgents(KnowledgeBase base) {
        this.base = base;
    }

    /** Most questions name no try in free words, and need no words. */
    private Map<String, EverydayProduct> byWords() {
        if (byWords.isEmpty()) {
            fill();
        }
        return byWords;
    }

    private void fill() {
        Map<String, EverydayProduct> all = new LinkedHashMap<>();
        base.questionWords().everydayProducts().values().forEach(product -> {
            all.put(WordList.plain(product.name()), product);
            product.alsoCalled().forEach(words -> all.put(WordList.plain(words), product));
        });
        all.entrySet().stream().sorted(Map.Entry.comparingByKey(Comparator.comparingInt(String::length).reversed()
                .thenComparing(Comparator.naturalOrder()))).forEach(e -> byWords.put(e.getKey(), e.getValue()));
    }

    /** Every everyday product as an agent, for what must not follow it. */
    public static List<Agent> everyday(KnowledgeBase base) {
        List<Agent> all = new ArrayList<>();
        base.questionWords().everydayProducts().values().forEach(product -> all.add(product.agent()));
        if (!base.questionWords().everydayProducts().containsKey(EverydayProduct.UNTOLD)) {
            all.add(anything(base));
        }
        return List.copyOf(all);
    }

    /** Everything that a try brought, the method's own first. */
    public List<Brought> of(Question.Tried tried) {
        List<Brought> all = new ArrayList<>();
        tried.method().map(base.methods()::get).ifPresent(m -> all.add(of(m)));
        tried.substance().map(base.agents()::get).filter(a -> all.stream().noneMatch(b -> b.agent().equals(a)))
                .ifPresent(a -> all.add(new Brought(a.id(), a.family(), a, true)));
        tried.text().ifPresent(text -> {
            List<EverydayProduct> named = named(text);
            named.forEach(p -> all.add(new Brought(p.name(), p.agent().family(), p.agent(), isTold(p))));
            // beside a method or a substance words only add what they name
            if (all.isEmpty()) {
                all.add(new Brought(text, Agent.NONE.family(), anything(base), false));
            }
        });
        return List.copyOf(all);
    }

    private Brought of(Method method) {
        return new Brought(method.id(), method.family(), base.agentOf(method), true);
    }

    /** The everyday products that free words name. */
    List<EverydayProduct> named(String text) {
        String rest = " " + WordList.plain(text) + " ";
        List<EverydayProduct> named = new ArrayList<>();
        for (Map.Entry<String, EverydayProduct> one : byWords().entrySet()) {
            String words = " " + one.getKey() + " ";
            if (rest.contains(words)) {
                named.add(one.getValue());
                rest = rest.replace(words, " | ");
            }
        }
        return named.stream().distinct().toList();
    }

    private static boolean isTold(EverydayProduct product) {
        return !product.id().equals(EverydayProduct.UNTOLD);
    }

    /** What nobody told counts as holding everything that could react. */
    private static Agent anything(KnowledgeBase base) {
        return Optional.ofNullable(base.questionWords().everydayProducts().get(EverydayProduct.UNTOLD))
                .map(EverydayProduct::agent).orElseGet(() -> new EverydayProduct(EverydayProduct.UNTOLD,
                        Texts.said("tried.unnamed"), "", List.of(), Set.copyOf(EnumSet.allOf(Reactive.class)),
                        Optional.of(Solvent.ALIPHATIC), Optional.empty(), Basis.COMMON_PRACTICE, List.of()).agent());
    }
}
