package rungwise.knowledge.load;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.common.Near;
import rungwise.knowledge.draft.Kind;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Holds files against the JSON Schemas that the program carries; a folder of knowledge cannot loosen them. */
final class Schemas {
    private final ObjectMapper mapper = Mappers.json();
    private final SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private final Map<Kind, JsonNode> texts = new EnumMap<>(Kind.class);
    private final Map<Kind, Schema> schemas = new EnumMap<>(Kind.class);

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
            case "additionalProperties" -> new Misfit(path, "the field \"" + error.getProperty() + "\" is not known",
                    Near.to(error.getProperty(), field.path("properties").propertyNames()));
            case "required" -> new Misfit(path, "it says nothing of " + error.getProperty(),
                    add(error.getProperty(), meaning(root, field.path("properties").path(error.getProperty()))));
            case "enum" -> new Misfit(path, found + " is not one of the words allowed here",
                    nearest(found.replace("\"", ""), field.path("enum")));
            case "minimum", "maximum" -> new Misfit(path, found + " lies outside " + bounds(field),
                    "give a figure within; mind the unit");
            case "pattern" -> new Misfit(path, found + " is not written as it must be", spelling(field));
            case "type" -> new Misfit(path, "it must be of type " + field.path("type").asString("") + ", not "
                    + shortened(found), means.isEmpty() ? "compare it with an entry of the same kind" : means);
            case "minLength", "minItems" -> new Misfit(path, "it is empty",
                    means.isEmpty() ? "say it or leave the field out" : means);
            case "uniqueItems" -> new Misfit(path, "it names something twice", "keep one of the two");
            default -> new Misfit(path, error.getMessage(),
                    means.isEmpty() ? "compare it with an entry of the same kind" : means);
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
        return "add " + field + (meaning.isEmpty() ? "" : ": " + meaning);
    }

    private static String nearest(String found, JsonNode words) {
        Collection<String> known = new TreeSet<>();
        words.forEach(w -> known.add(w.asString("")));
        String near = Near.to(found, known);
        return near.startsWith("did") ? near : "use one of " + String.join(", ", known);
    }

    private static String bounds(JsonNode field) {
        String low = field.has("minimum") ? Figures.text(field.get("minimum").asDouble()) : "";
        String high = field.has("maximum") ? Figures.text(field.get("maximum").asDouble()) : "";
        return high.isEmpty() ? low + " and more" : low + " to " + high;
    }

    private static String spelling(JsonNode field) {
        String pattern = field.path("pattern").asString("");
        return pattern.equals("^[a-z][a-z0-9_]*$") ? "use small letters, digits and _, a letter first"
                : "make it fit " + pattern;
    }

    private static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 40) + "…";
    }
}
