package rungwise.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwise.answer.Advisor;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.overlay.AcidityFrom;
import rungwise.knowledge.overlay.Overlay;
import rungwise.knowledge.product.ProductFunction;
import rungwise.rules.said.Because;
import rungwise.text.Texts;

/** What a product of the shop was taken for, as text. */
final class ProductText {
    private static final Map<AcidityFrom, String> FROM = Map.of(AcidityFrom.NEAT, "product.acidity-neat", AcidityFrom.TOLD,
            "product.acidity-told", AcidityFrom.COMPUTED, "product.acidity-computed", AcidityFrom.SOLD, "product.acidity-sold");

    private ProductText() {
    }

    static void print(Overlay.Taken taken, Advisor advisor, PrintWriter out) {
        KnowledgeBase known = advisor.knowledge();
        Agent agent = known.agents().get(taken.product());
        out.println();
        out.println(say("named", "name", agent.name(), "id", taken.product(), "dilution", agent.dilution()));
        out.println("  " + say("label", "function", taken.function().map(known.productWords().functions()::get)
                .map(ProductFunction::name).orElseGet(() -> say("label-untold"))));
        out.println("  " + say(taken.technique().equals(taken.nearest()) ? "taken-for" : "taken-for-worked-like", "nearest",
                taken.nearest(), "family", known.methods().get(taken.product()).family(), "technique", taken.technique()));
        out.println("  " + say("solvents", "solvents", listed(agent.solvents().entrySet().stream().map(e -> say("solvent", "solvent",
                word(e.getKey()), "percent", e.getValue()))), "acidity", agent.acidity().map(range -> range + " " + Texts.said(FROM.get(taken.from())))
                .orElseGet(() -> say("not-said"))));
        out.println("  " + say("reactive", "groups", listed(agent.reactive().stream().map(ProductText::word))));
        out.println("  " + say("protection", "items", listed(agent.ppe().stream())));
        taken.asks().forEach(doubt -> out.println("  " + say("asks", "doubt", doubt.asks())));
        Map<String, List<Because>> barred = new TreeMap<>();
        known.surfaces().keySet().forEach(s -> barred.put(s, advisor.barsOn(s, taken.product())));
        barred.values().removeIf(List::isEmpty);
        out.println("  " + say("barred", "many", barred.size(), "all", known.surfaces().size()));
        barred.forEach((surface, why) -> out.println("    " + surface + ": " + why.stream()
                .map(b -> say("rule", "rule", b.name(), "says", b.says())).distinct().collect(Collectors.joining(" "))));
    }

    private static String listed(Stream<String> words) {
        return words.reduce((a, b) -> a + ", " + b).orElseGet(() -> say("none"));
    }

    private static String say(String id, Object... named) {
        return Texts.said("product." + id, named);
    }

    private static String word(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
