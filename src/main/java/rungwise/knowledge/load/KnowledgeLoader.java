package rungwise.knowledge.load;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.check.Check;
import rungwise.knowledge.check.LoadingChecks;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Entry;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.text.Texts;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * Reads knowledge files into a knowledge base, all or nothing, and names every fault at once: what is no YAML, what
 * does not fit its schema, and what the {@link Check}s find. Bad content raises nothing.
 */
public final class KnowledgeLoader {
    private static final int WHOLE_FILE = -1;

    private final YAMLMapper yaml = Mappers.yaml();
    private final Optional<Schemas> schemas;
    private final List<Fault> faults = new ArrayList<>();
    private final List<Entry> entries = new ArrayList<>();
    private final Set<Kind> unreadable = EnumSet.noneOf(Kind.class);

    private KnowledgeLoader(Optional<Schemas> schemas) {
        this.schemas = schemas;
    }

    /** A base, or the faults that kept it from being one. */
    public record Loaded(Optional<KnowledgeBase> base, List<Fault> faults) {
    }

    /** Files by relative path; the revision is whatever the caller made of knowledge and rules together. */
    public static Loaded load(Map<String, String> files, String revision) {
        return new KnowledgeLoader(Optional.of(Schemas.OF_THE_PROGRAM)).loaded(files, revision, Optional.empty());
    }

    /**
     * Also finds gates, sources, protection, waste and levels that nothing uses.
     *
     * @param usedElsewhere ids that rules name
     */
    public static Loaded load(Map<String, String> files, String revision, Set<String> usedElsewhere) {
        return new KnowledgeLoader(Optional.of(Schemas.OF_THE_PROGRAM)).loaded(files, revision, Optional.of(usedElsewhere));
    }

    /**
     * For the knowledge inside the program, which its tests held against the schemas: leaves these out, as making them
     * ready takes longer than all the rest.
     */
    public static Loaded loadProven(Map<String, String> files, String revision) {
        return new KnowledgeLoader(Optional.empty()).loaded(files, revision, Optional.empty());
    }

    /** What can be read of the files, faults or not. */
    public static Draft draft(Map<String, String> files, Set<String> usedElsewhere) {
        return new KnowledgeLoader(Optional.of(Schemas.OF_THE_PROGRAM)).read(files, Optional.of(usedElsewhere));
    }

    /** Entries of one kind wherever they lie, with what keeps the others from being read. */
    public record Read(List<Entry> entries, List<Fault> faults) {
    }

    public static Read read(Kind kind, Map<String, String> files) {
        KnowledgeLoader loader = new KnowledgeLoader(Optional.of(Schemas.OF_THE_PROGRAM));
        new TreeMap<>(files).forEach((file, text) -> loader.parse(file, text)
                .ifPresent(tree -> loader.read(kind, file, tree)));
        return new Read(List.copyOf(loader.entries), List.copyOf(loader.faults));
    }

    private Loaded loaded(Map<String, String> files, String revision, Optional<Set<String>> usedElsewhere) {
        Draft draft = read(files, usedElsewhere);
        Check.ALL.forEach(check -> check.faults(draft).forEach(f -> faults.add(f.by(check.id()))));
        return faults.isEmpty() ? new Loaded(Optional.of(draft.base(revision)), List.of())
                : new Loaded(Optional.empty(), List.copyOf(faults));
    }

    private Draft read(Map<String, String> files, Optional<Set<String>> usedElsewhere) {
        new TreeMap<>(files).forEach((file, text) -> Kind.all().filter(k -> k.holds(file)).findFirst()
                .ifPresentOrElse(kind -> parse(file, text).ifPresentOrElse(tree -> read(kind, file, tree),
                        () -> unreadable.add(kind)), () -> strange(file)));
        Kind.all().filter(k -> k.isAskedFor() && !files.containsKey(k.place)).forEach(this::missing);
        return new Draft(List.copyOf(entries), usedElsewhere, Set.copyOf(unreadable));
    }

    private void missing(Kind kind) {
        unreadable.add(kind);
        faults.add(new Fault(kind.place, "", Texts.said("fault.file-missing"),
                Texts.said("fault.file-missing.do")).by(LoadingChecks.PLACE.id()));
    }

    private void strange(String file) {
        if (file.endsWith(".yaml") || file.endsWith(".yml")) {
            faults.add(new Fault(file, "", Texts.said("fault.not-read"),
                    Texts.said("fault.not-read.do")).by(LoadingChecks.PLACE.id()));
        }
    }

    private void read(Kind kind, String file, JsonNode tree) {
        List<JsonNode> nodes = tree.isArray() ? List.copyOf(tree.values()) : List.of(tree);
        Set<Integer> unfit = new HashSet<>();
        for (Schemas.Misfit misfit : schemas.map(s -> s.misfits(kind, tree)).orElse(List.of())) {
            boolean inList = tree.isArray() && !misfit.path().isEmpty();
            int index = inList ? Integer.parseInt(misfit.path().get(0)) : tree.isArray() ? WHOLE_FILE : 0;
            String field = String.join("/", misfit.path().subList(inList ? 1 : 0, misfit.path().size()));
            unfit.add(index);
            faults.add(new Fault(file, (index == WHOLE_FILE ? "" : id(nodes, index) + " " + field).strip(),
                    misfit.wrong(), misfit.remedy()).by(LoadingChecks.SCHEMA.id()));
        }
        for (int i = 0; i < nodes.size(); i++) {
            if (nodes.get(i).isObject()) {
                String id = id(nodes, i);
                boolean fits = !unfit.contains(i) && !unfit.contains(WHOLE_FILE);
                entries.add(new Entry(kind, id, file, nodes.get(i), fits ? bind(kind, file, id, nodes.get(i))
                        : Optional.empty()));
            }
        }
    }

    private static String id(List<JsonNode> nodes, int index) {
        return nodes.get(index).path("id").asString(nodes.size() == 1 ? "" : "#" + (index + 1));
    }

    private Optional<JsonNode> parse(String file, String text) {
        try {
            return Optional.of(yaml.readTree(text));
        } catch (JacksonException e) {
            String line = e.getLocation() == null ? "" : Texts.said("place.line", "number", e.getLocation().getLineNr());
            String why = firstLine(e.getOriginalMessage());
            faults.add((why.startsWith("Trailing token")
                    ? new Fault(file, line, Texts.said("fault.second-document"),
                    Texts.said("fault.second-document.do"))
                    : new Fault(file, line, Texts.said("fault.unreadable", "why", why),
                    Texts.said("fault.unreadable.do"))).by(LoadingChecks.READABLE.id()));
            return Optional.empty();
        }
    }

    private Optional<Object> bind(Kind kind, String file, String id, JsonNode node) {
        try {
            return Optional.of(yaml.treeToValue(node, kind.type));
        } catch (JacksonException e) {
            String path = String.join("/", e.getPath().stream()
                    .map(p -> p.getPropertyName() == null ? "" + p.getIndex() : p.getPropertyName()).toList());
            String wrong = e.getCause() instanceof IllegalArgumentException told ? told.getMessage()
                    : firstLine(e.getOriginalMessage());
            faults.add(new Fault(file, (id + " " + path).strip(), wrong, Texts.said("fault.compare"))
                    .by(LoadingChecks.SCHEMA.id()));
            return Optional.empty();
        }
    }

    private static String firstLine(String message) {
        return message == null ? Texts.said("fault.misfit") : message.lines().findFirst().orElse(Texts.said("fault.misfit"));
    }
}
