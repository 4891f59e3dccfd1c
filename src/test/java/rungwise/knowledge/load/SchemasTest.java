package rungwise.knowledge.load;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.method.Chance;
import tools.jackson.databind.JsonNode;

/** The schemas say what the records say, so that neither can drift from the other. */
class SchemasTest {
    private final Schemas schemas = new Schemas();

    @ParameterizedTest
    @EnumSource(Kind.class)
    void a_schema_has_the_fields_and_words_of_its_record(Kind kind) {
        JsonNode root = schemas.text(kind);
        JsonNode item = root.path("type").asString().equals("array") ? root.at("/$defs/item") : root;
        agree(kind.schema, root, item, kind.type);
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void every_field_is_described_and_no_object_takes_unknown_ones(Kind kind) {
        JsonNode root = schemas.text(kind);
        List<JsonNode> objects = new ArrayList<>(root.findParents("properties"));
        assertThat(objects).isNotEmpty().allSatisfy(object -> {
            assertThat(object.path("additionalProperties").isBoolean()).isTrue();
            assertThat(object.path("additionalProperties").asBoolean()).isFalse();
            object.path("properties").forEach(field ->
                    assertThat(resolved(root, field).path("description").asString("")).isNotBlank());
        });
    }

    private static void agree(String where, JsonNode root, JsonNode schema, Type type) {
        JsonNode found = resolved(root, schema);
        if (type instanceof ParameterizedType generic) {
            Type last = generic.getActualTypeArguments()[generic.getActualTypeArguments().length - 1];
            if (generic.getRawType() == java.util.Map.class) {
                if (generic.getActualTypeArguments()[0] instanceof Class<?> key && key.isEnum()) {
                    assertThat(new TreeSet<>(found.path("properties").propertyNames())).as(where)
                            .isEqualTo(words(key));
                    found.path("properties").forEach(value -> agree(where, root, value, last));
                } else {
                    agree(where, root, found.path("additionalProperties"), last);
                }
            } else {
                boolean list = generic.getRawType() == List.class || generic.getRawType() == Set.class;
                agree(where, root, list ? found.path("items") : found, last);
            }
        } else if (type instanceof Class<?> record && record.isRecord()) {
            Set<String> names = new TreeSet<>();
            for (RecordComponent component : record.getRecordComponents()) {
                if (component.getAccessor().isAnnotationPresent(JsonIgnore.class)) {
                    continue; // worked out, not written
                }
                names.add(component.getName());
                agree(where + "/" + component.getName(), root, found.path("properties").path(component.getName()),
                        component.getGenericType());
            }
            assertThat(new TreeSet<>(found.path("properties").propertyNames())).as(where).isEqualTo(names);
        } else if (type instanceof Class<?> words && words.isEnum()) {
            Set<String> named = new TreeSet<>();
            found.path("enum").forEach(word -> named.add(word.asString()));
            assertThat(named).as(where).isEqualTo(words(words));
        }
    }

    private static Set<String> words(Class<?> type) {
        Set<String> words = new TreeSet<>();
        Arrays.stream(type.getEnumConstants()).map(c -> ((Enum<?>) c).name())
                .forEach(name -> words.add(type == Chance.class ? name : name.toLowerCase(java.util.Locale.ROOT)));
        return words;
    }

    private static JsonNode resolved(JsonNode root, JsonNode schema) {
        String reference = schema.path("$ref").asString("");
        return reference.isEmpty() ? schema : root.at(reference.substring(1));
    }
}
