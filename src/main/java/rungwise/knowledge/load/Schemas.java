package rungwise.knowledge.load;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.draft.Kind;
import rungwise.text.Near;
import rungwise.text.Texts;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Holds files against the JSON Schemas that the program carries; a folder of knowledge cannot loosen them. */
final class Schemas {
    /** They never change while the program runs, and are slow to make. */
    static final Schemas OF_THE_PROGRAM = new Schemas();

    private final ObjectMapper mapper = Mappers.json();
    private final SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private final Map<Kind, JsonNode> texts = new ConcurrentHashMap<>();
    private final Map<Kind, Schema> schemas = new ConcurrentHashMap<>();

    /**
     * Where a file does not fit.
     *
     * @param path fields and places in lists, from the root of the file inwards
     */
    record Misfit(List<String> path, String wrong, String remedy) {
    }

    List<Misfit> misfits(Kind kind, JsonNode file) {
        Schema schema = schemas.computeIfAbsent(kind, k -> registry.getSchema(text(k)));
        return schema.validate(file).stream().map(e -> misfit(text(kind), e)).toList();
    }

    JsonNode text(Kind kind) {
        return texts.computeIfAbsent(kind, k -> {
            try (InputStream in = Schemas.class.getResourceAsStream("/knowledge/schemas/" + k.schema + ".json")) {
                return mapper.readTree(in);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    private static Misfit misfit(JsonNode root, Error error) {
        String at = error.getInstanceLocation().toString();
        List<String> path = at.isEmpty() ? List.of() : List.of(at.substring(1).split("/"));
        JsonNode field = root.at(parent(error.getSchemaLocation().getFragment().toString()));
        String means = field.path("description").asString("");
        String found = error.getInstanceNode() == null ? "" : error.getInstanceNode().toString();
        return switch (error.getKeyword()) {
            case "additionalProperties" -> new Misfit(path, Texts.said("fault.no-field", "field", error.getProperty()),
                    Near.to(error.getProperty(), field.path("properties").propertyNames()));
            case "required" -> new Misfit(path, Texts.said("fault.field-missing", "field", error.getProperty()),
                    add(error.getProperty(), meaning(root, field.path("properties").path(error.getProperty()))));
            case "enum" -> new Misfit(path, Texts.said("fault.no-such-word", "found", found),
                    nearest(found.replace("\"", ""), field.path("enum")));
            case "minimum", "maximum" -> new Misfit(path, Texts.said("fault.out-of-range", "found", found, "bounds", bounds(field)),
                    Texts.said("fault.out-of-range.do"));
            case "pattern" -> new Misfit(path, Texts.said("fault.other-spelling", "found", found), spelling(field));
            case "type" -> new Misfit(path, Texts.said("fault.other-type", "type", field.path("type").asString(""), "found",
                    shortened(found)), means.isEmpty() ? Texts.said("fault.compare") : means);
            case "minLength", "minItems" -> new Misfit(path, Texts.said("fault.empty"),
                    means.isEmpty() ? Texts.said("fault.empty.do") : means);
            case "uniqueItems" -> new Misfit(path, Texts.said("fault.twice"), Texts.said("fault.twice.do"));
            default -> new Misfit(path, error.getMessage(),
                    means.isEmpty() ? Texts.said("fault.compare") : means);
        };
    }

    private static String parent(String pointer) {
        return pointer.substring(0, Math.max(0, pointer.lastIndexOf('/')));
    }

    private static String meaning(JsonNode root, JsonNode field) {
        String reference = field.path("$ref").asString("");
        return (reference.startsWith("#") ? root.at(reference.substring(1)) : field).path("description").asString("");
    }

    private static String add(String field, String meaning) {
        return Texts.said(meaning.isEmpty() ? "fault.add" : "fault.add-meaning", "field", field, "meaning", meaning);
    }

    private static String nearest(String found, JsonNode words) {
        Collection<String> known = new TreeSet<>();
        words.forEach(w -> known.add(w.asString("")));
        return Near.orElse(found, known, Texts.said("fault.use-one-of", "known", String.join(", ", known)));
    }

    private static String bounds(JsonNode field) {
        String low = field.has("minimum") ? Figures.text(field.get("minimum").asDouble()) : "";
        String high = field.has("maximum") ? Figures.text(field.get("maximum").asDouble()) : "";
        return high.isEmpty() ? Texts.said("fault.and-more", "low", low) : Texts.said("fault.from-to", "low", low, "high", high);
    }

    private static String spelling(JsonNode field) {
        String pattern = field.path("pattern").asString("");
        return pattern.equals("^[a-z][a-z0-9_]*$") ? Texts.said("fault.fit-id")
                : Texts.said("fault.fit-pattern", "pattern", pattern);
    }

    private static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 40) + "…";
    }
}
