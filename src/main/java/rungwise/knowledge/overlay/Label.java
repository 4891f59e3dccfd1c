package rungwise.knowledge.overlay;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.Reactive;
import rungwise.knowledge.chemistry.Solvent;
import rungwise.knowledge.common.Range;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.draft.OverlayFile;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.product.LabelReading;
import rungwise.knowledge.product.ProductFunction;
import rungwise.knowledge.product.TellingPart;
import rungwise.knowledge.safety.HazardStatement;
import rungwise.text.Texts;

/**
 * What a label says a product is for, held against its sheet.
 *
 * @param reading the first thing sold under the word that the sheet bears out; empty where none is, or no word was told
 * @param is      what it is whatever the label says
 * @param doubts  what is missing or contradicts
 */
record Label(Optional<ProductFunction> function, Optional<LabelReading> reading, Optional<TellingPart> is, List<Doubt> doubts) {
    static final String FUNCTION_UNTOLD = "function-untold";
    /** Groups that change what a product does; the others stand in many of them. */
    private static final Set<Reactive> CHANGE_IT = EnumSet.of(Reactive.ACID, Reactive.ALKALI, Reactive.THIOL, Reactive.HYPOCHLORITE,
            Reactive.PEROXIDE, Reactive.OXALATE);
    /** A corrosive product of such a pH burns by something else than its pH. */
    private static final Range BURNS_NOBODY = new Range(4, 10);

    static Label of(OverlayFile.Product product, Agent agent, Strength strength, KnowledgeBase base) {
        Optional<ProductFunction> function = product.function().flatMap(base.productWords()::function)
                .filter(f -> !f.readings().isEmpty());
        Optional<TellingPart> is = base.productWords().telling().values().stream().filter(t -> t.tells(agent))
                .min(Comparator.comparingInt((TellingPart t) -> -base.methods().get(t.method()).severity().worst())
                        .thenComparing(TellingPart::id));
        if (is.isPresent()) {
            return new Label(function, Optional.empty(), is, List.of(new Doubt("whatever-the-label",
                    Texts.said("product.doubt.whatever-the-label", "holds", is.get().says()))));
        }
        List<Doubt> doubts = new ArrayList<>(burning(product, strength, base));
        if (function.isEmpty()) {
            doubts.add(new Doubt(FUNCTION_UNTOLD, Texts.said("product.doubt.function-untold", "functions",
                    names(base.productWords().functions().values()))));
            return new Label(function, Optional.empty(), is, doubts);
        }
        List<Doubt> fewest = List.of();
        for (LabelReading reading : function.get().readings()) {
            List<Doubt> against = against(function.get(), reading, agent, base);
            if (against.isEmpty()) {
                return new Label(function, Optional.of(reading), is, doubts);
            }
            fewest = fewest.isEmpty() || against.size() < fewest.size() ? against : fewest;
        }
        doubts.addAll(fewest);
        return new Label(function, Optional.empty(), is, doubts);
    }

    private static String names(Collection<ProductFunction> all) {
        return all.stream().filter(f -> !f.readings().isEmpty()).map(ProductFunction::name).sorted().collect(Collectors.joining(", "));
    }

    private static List<Doubt> burning(OverlayFile.Product product, Strength strength, KnowledgeBase base) {
        List<String> corrosive = product.hazards().stream().map(base.hazards()::get).filter(HazardStatement::corrosive)
                .map(HazardStatement::id).sorted().toList();
        return corrosive.isEmpty() || strength.from() != AcidityFrom.NEAT || strength.acidity().filter(BURNS_NOBODY::contains).isEmpty()
                ? List.of() : List.of(new Doubt("hazard-beside", Texts.said("product.doubt.hazard-beside", "hazards",
                String.join(", ", corrosive), "acidity", strength.acidity().get())));
    }

    /** What the sheet says against one reading. */
    private static List<Doubt> against(ProductFunction function, LabelReading reading, Agent agent, KnowledgeBase base) {
        List<Doubt> against = new ArrayList<>();
        reading.form().filter(form -> form != agent.form()).ifPresent(form -> against.add(new Doubt("form-outside",
                Texts.said("product.doubt.form-outside", "function", function.name(), "form", word(agent.form())))));
        reading.acidity().ifPresent(window -> {
            if (agent.acidity().isEmpty()) {
                against.add(new Doubt("acidity-missing", Texts.said("product.doubt.acidity-missing", "function", function.name())));
            } else if (!window.contains(agent.acidity().get())) {
                against.add(new Doubt("acidity-outside", Texts.said("product.doubt.acidity-outside", "function", function.name(),
                        "acidity", agent.acidity().get(), "speaksOf", Likeness.closest(agent, base).name())));
            }
        });
        reading.holds().stream().filter(group -> !agent.holds(group)).forEach(group -> against.add(new Doubt("part-missing",
                Texts.said("product.doubt.part-missing", "function", function.name(), "group", word(group)))));
        for (Solvent kind : Solvent.values()) {
            double from = base.decisions().value(DecisionId.SOLVENT_COUNTS);
            Range wanted = reading.solvents().getOrDefault(kind, new Range(0, reading.beside().orElse(from)));
            double holds = agent.solvents().getOrDefault(kind, 0.0);
            boolean counts = !reading.solvents().containsKey(kind) && reading.beside().isEmpty() && holds == from;
            if (!wanted.contains(holds) || counts) {
                against.add(new Doubt("solvent-outside", Texts.said("product.doubt.solvent-outside", "function", function.name(),
                        "percent", holds, "solvent", word(kind), "expected", wanted)));
            }
        }
        Set<Reactive> expected = new TreeSet<>(reading.holds());
        Stream.concat(Stream.of(reading.method()), reading.asStrictAs().stream()).map(base.methods()::get).map(base::agentOf)
                .forEach(known -> expected.addAll(known.reactive()));
        Set<Reactive> strange = new TreeSet<>(agent.reactive());
        strange.retainAll(CHANGE_IT);
        strange.removeAll(expected);
        if (!strange.isEmpty()) {
            against.add(new Doubt("group-beside", Texts.said("product.doubt.group-beside", "function", function.name(), "groups",
                    strange.stream().map(Label::word).collect(Collectors.joining(", ")))));
        }
        return against;
    }

    private static String word(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    Optional<Method> method(KnowledgeBase base) {
        return is.map(TellingPart::method).or(() -> reading.map(LabelReading::method)).map(base.methods()::get);
    }

    Optional<Method> technique(KnowledgeBase base) {
        return reading.map(r -> base.methods().get(r.technique().orElse(r.method())));
    }

    List<Method> asStrictAs(KnowledgeBase base) {
        return reading.map(LabelReading::asStrictAs).orElse(List.of()).stream().map(base.methods()::get).toList();
    }
}
