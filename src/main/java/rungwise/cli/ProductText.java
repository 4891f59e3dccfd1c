package rungwise.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rungwise.answer.Advisor;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Figures;
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
        out.println(agent.name() + " (" + taken.product() + "), " + agent.dilution() + ":");
        out.println("  " + Texts.ENGLISH.say("product.label", "function", taken.function().map(known.productWords().functions()::get)
                .map(ProductFunction::name).orElseGet(() -> Texts.ENGLISH.say("product.label-untold"))));
        out.println("  taken for " + taken.nearest() + " of the family " + known.methods().get(taken.product()).family()
                + (taken.technique().equals(taken.nearest()) ? "" : ", worked like " + taken.technique()));
        out.println("  solvents: " + (agent.solvents().isEmpty() ? "none" : agent.solvents().entrySet().stream()
                .map(e -> word(e.getKey()) + " " + Figures.text(e.getValue()) + " % by volume").collect(Collectors.joining(", ")))
                + "; pH " + agent.acidity().map(range -> range + " " + Texts.ENGLISH.say(FROM.get(taken.from())))
                .orElse("not said"));
        out.println("  reactive groups: " + (agent.reactive().isEmpty() ? "none" : agent.reactive().stream()
                .map(ProductText::word).collect(Collectors.joining(", "))));
        out.println("  protection: " + (agent.ppe().isEmpty() ? "none" : String.join(", ", agent.ppe())));
        taken.asks().forEach(doubt -> out.println("  " + Texts.ENGLISH.say("product.asks", "doubt", doubt.asks())));
        Map<String, List<Because>> barred = new TreeMap<>();
        known.surfaces().keySet().forEach(s -> barred.put(s, advisor.barsOn(s, taken.product())));
        barred.values().removeIf(List::isEmpty);
        out.println("  barred on " + barred.size() + " of " + known.surfaces().size() + " surfaces:");
        barred.forEach((surface, why) -> out.println("    " + surface + ": " + why.stream()
                .map(b -> "rule " + b.name() + ", " + b.says()).distinct().collect(Collectors.joining(" "))));
    }

    private static String word(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
