package rungwise.knowledge.overlay;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.draft.Entry;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.draft.OverlayFile;
import rungwise.knowledge.load.KnowledgeLoader;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.product.ProductFunction;
import rungwise.text.Texts;

/**
 * What a shop lays over the knowledge: own products, and narrower limits. It only adds agents, methods and bars. What a
 * product is, its label says as far as its sheet bears that out; its bars and cautions follow from what it is made of, by the same
 * rules as everything else.
 */
public final class Overlay {
    private Overlay() {
    }

    /**
     * A product and the known method that it was taken for.
     *
     * @param product   id of its agent and of its method
     * @param nearest   method whose chemistry is nearest
     * @param technique method whose technique it uses
     * @param function  what its label says it is for
     * @param from      where its pH in use comes from
     * @param asks      what its label and sheet leave open
     */
    public record Taken(String product, String nearest, String technique, Optional<String> function, AcidityFrom from, List<Doubt> asks) {
    }

    /** The knowledge with the overlay on it, or the faults that kept it from being laid. */
    public record Laid(Optional<KnowledgeBase> base, List<Taken> products, List<Fault> faults) {
    }

    /**
     * Lays files over knowledge.
     *
     * @param folder how faults name the folder of the files
     * @param texts  files by name within it
     */
    public static Laid lay(KnowledgeBase base, String folder, Map<String, String> texts) {
        Map<String, String> files = new TreeMap<>();
        texts.forEach((name, text) -> files.put(folder + "/" + name, text));
        KnowledgeLoader.Read read = KnowledgeLoader.read(Kind.OVERLAY, files);
        List<Fault> faults = new ArrayList<>(read.faults());
        if (files.isEmpty()) {
            faults.add(new Fault(folder, "", Texts.said("overlay.no-file"), Texts.said("overlay.no-file.do")));
        }
        Narrowing narrowing = new Narrowing(base);
        each(read, (entry, file) -> file.tighten().forEach(t -> faults.addAll(narrowing.narrow(entry.file(), t))));
        // products are taken for methods as the shop has narrowed them
        KnowledgeBase narrowed = narrowing.narrowed();
        Map<String, Method> methods = new TreeMap<>(narrowed.methods());
        Map<String, Agent> agents = new TreeMap<>(narrowed.agents());
        List<Taken> taken = new ArrayList<>();
        each(read, (entry, file) -> file.products().forEach(product -> {
            List<Fault> wrong = new ProductCheck(base, entry.file()).faults(product, methods, agents);
            faults.addAll(wrong);
            if (wrong.isEmpty()) {
                Strength strength = Strength.of(product, narrowed);
                Agent agent = new Worst(narrowed).agent(product, strength);
                Label label = Label.of(product, agent, strength, narrowed);
                List<Doubt> asks = Stream.concat(strength.doubts().stream(), label.doubts().stream()).toList();
                Likeness likeness = Likeness.of(product, agent, label, asks.stream().anyMatch(d -> !d.isOnlyUntold()), narrowed);
                Agent whole = likeness.completed(agent, asks);
                agents.put(product.id(), whole);
                methods.put(product.id(), likeness.method(product, whole));
                taken.add(new Taken(product.id(), likeness.nearest().id(), likeness.technique().id(),
                        label.function().map(ProductFunction::id), strength.from(), asks));
            }
        }));
        return faults.isEmpty() ? new Laid(Optional.of(narrowed.overlaid(narrowed.surfaces(), methods, agents)),
                List.copyOf(taken), List.of()) : new Laid(Optional.empty(), List.of(), List.copyOf(faults));
    }

    private static void each(KnowledgeLoader.Read read, BiConsumer<Entry, OverlayFile> look) {
        read.entries().forEach(entry -> Stream.ofNullable(entry.item().orElse(null))
                .forEach(item -> look.accept(entry, (OverlayFile) item)));
    }
}
