package rungwise.knowledge;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** Reads knowledge files into a knowledge base, all or nothing, and names every fault at once. */
public final class KnowledgeLoader {
    private final YAMLMapper yaml = Mappers.yaml();
    private final List<Fault> faults = new ArrayList<>();
    private final Map<String, String> fileOf = new TreeMap<>();

    private KnowledgeLoader() {
    }

    /** A base, or the faults that kept it from being one. */
    public record Loaded(Optional<KnowledgeBase> base, List<Fault> faults) {
    }

    /** Files by relative path; the revision is whatever the caller made of knowledge and rules together. */
    public static Loaded load(Map<String, String> files, String revision) {
        return new KnowledgeLoader().read(files, revision);
    }

    private Loaded read(Map<String, String> files, String revision) {
        Map<String, Contaminant> contaminants = items(files, "contaminants/", Contaminant.class, Contaminant::id);
        Map<String, Surface> surfaces = items(files, "surfaces/", Surface.class, Surface::id);
        Map<String, Method> methods = items(files, "methods/", Method.class, Method::id);
        Map<String, Agent> agents = items(files, "agents/", Agent.class, Agent::id);
        Map<String, Tool> tools = items(files, "tools/", Tool.class, Tool::id);
        Map<String, Family> families = items(files, "families.yaml", Family.class, Family::id);
        Map<String, Gate> gates = items(files, "gates.yaml", Gate.class, Gate::id);
        Map<String, Circumstance> circumstances = items(files, "circumstances.yaml", Circumstance.class,
                Circumstance::id);
        Map<String, Observation> observations = items(files, "observations.yaml", Observation.class, Observation::id);
        Map<String, Source> sources = items(files, "sources.yaml", Source.class, Source::id);
        Map<String, Word> bonds = items(files, "words/bond-classes.yaml", Word.class, Word::id);
        Map<String, Word> wastes = items(files, "words/waste.yaml", Word.class, Word::id);
        Map<String, Word> levels = items(files, "words/levels.yaml", Word.class, Word::id);
        Map<String, Word> ppe = items(files, "words/ppe.yaml", Word.class, Word::id);
        Map<String, Weights> weights = items(files, "weights.yaml", Weights.class, w -> "weights");
        if (weights.isEmpty()) {
            faults.add(new Fault("weights.yaml", "", "it is missing or unreadable",
                    "state what work, waiting, film, a mark and a referral cost"));
        }
        if (!faults.isEmpty()) {
            return new Loaded(Optional.empty(), List.copyOf(faults));
        }
        KnowledgeBase base = new KnowledgeBase(revision, contaminants, surfaces, methods, agents, tools, families,
                gates, circumstances, observations, sources, bonds, wastes, levels, ppe, weights.get("weights"));
        faults.addAll(new Consistency(base, fileOf).faults());
        return faults.isEmpty() ? new Loaded(Optional.of(base), List.of())
                : new Loaded(Optional.empty(), List.copyOf(faults));
    }

    private <T> Map<String, T> items(Map<String, String> files, String place, Class<T> type, Function<T, String> id) {
        Map<String, T> items = new TreeMap<>();
        files.forEach((file, text) -> {
            if (file.startsWith(place) && file.endsWith(".yaml")) {
                for (JsonNode node : nodes(file, text)) {
                    bind(file, node, type).ifPresent(item -> {
                        String kindAndId = type.getSimpleName() + " " + id.apply(item);
                        if (items.put(id.apply(item), item) != null) {
                            faults.add(new Fault(file, id.apply(item), "this id is already in "
                                    + fileOf.get(kindAndId), "give one of the two another id"));
                        }
                        fileOf.put(kindAndId, file);
                    });
                }
            }
        });
        return java.util.Collections.unmodifiableMap(items);
    }

    private List<JsonNode> nodes(String file, String text) {
        try {
            JsonNode tree = yaml.readTree(text);
            List<JsonNode> nodes = new ArrayList<>();
            if (tree.isArray()) {
                tree.forEach(nodes::add);
            } else {
                nodes.add(tree);
            }
            return nodes;
        } catch (JacksonException e) {
            faults.add(new Fault(file, e.getLocation() == null ? "" : "line " + e.getLocation().getLineNr(), "it is not readable YAML ("
                    + e.getOriginalMessage().lines().findFirst().orElse("") + ")", "mend the line or the one above it"));
            return List.of();
        }
    }

    private <T> Optional<T> bind(String file, JsonNode node, Class<T> type) {
        try {
            return Optional.of(yaml.treeToValue(node, type));
        } catch (JacksonException e) {
            String path = e.getPath().stream().map(p -> p.getPropertyName() == null ? "" + p.getIndex()
                    : p.getPropertyName()).reduce((a, b) -> a + "/" + b).orElse("");
            faults.add(new Fault(file, node.path("id").asString("?") + (path.isEmpty() ? "" : " " + path),
                    e.getOriginalMessage().lines().findFirst().orElse("it does not fit"),
                    "compare it with an entry of the same kind"));
            return Optional.empty();
        } catch (RuntimeException e) {
            faults.add(new Fault(file, node.path("id").asString("?"), String.valueOf(e.getMessage()),
                    "compare it with an entry of the same kind"));
            return Optional.empty();
        }
    }
}
