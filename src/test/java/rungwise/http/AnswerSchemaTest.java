package rungwise.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.answer.Answer;
import rungwise.answer.LadderAnswer;
import rungwise.answer.StoppedAnswer;
import rungwise.diagnosis.SpotAnswer;
import rungwise.knowledge.load.Mappers;
import rungwise.question.FactUse;
import rungwise.question.QuestionReader;
import rungwise.rules.said.Because;
import rungwise.text.Figure;
import rungwise.workup.AtOnce;
import rungwise.workup.Rinse;
import rungwise.workup.Wet;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the description says of an answer is what its records hold, both ways, and what comes out is as described. */
class AnswerSchemaTest {
    private static final JsonMapper JSON = new JsonMapper();
    private static final JsonNode SCHEMAS = schemas();

    private static JsonNode schemas() {
        try {
            return JSON.readTree(Files.readString(Path.of("src/main/resources/openapi.json"))).at("/components/schemas");
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Stream<Class<?>> records() {
        return Stream.concat(Arrays.stream(Answer.class.getDeclaredClasses()).filter(Class::isRecord), Stream.of(FactUse.class, FactUse.Unused.class, Because.class, Figure.class, Wet.class, AtOnce.class, Rinse.class));
    }

    private static Set<String> fields(Class<?> record) {
        return Arrays.stream(record.getRecordComponents()).map(RecordComponent::getName).collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void every_field_of_every_record_is_described_and_every_described_field_exists() {
        for (Class<?> kind : List.of(LadderAnswer.class, StoppedAnswer.class)) {
            Set<String> answer = fields(kind);
            // laid beside it where only signs were given, or where it was asked what if
            Arrays.stream(SpotAnswer.class.getRecordComponents()).map(RecordComponent::getName).filter(n -> !n.equals("answer"))
                    .forEach(answer::add);
            assertThat(new TreeSet<>(SCHEMAS.at("/" + kind.getSimpleName() + "/properties").propertyNames())).isEqualTo(answer);
        }
        assertThat(records().count()).isGreaterThan(20);
        records().forEach(record -> assertThat(new TreeSet<>(SCHEMAS.path(record.getSimpleName()).path("properties")
                .propertyNames())).as(record.getSimpleName()).isEqualTo(fields(record)));
    }

    @Test
    void a_field_is_required_unless_it_may_be_empty_and_has_the_right_kind() {
        records().forEach(record -> {
            Set<String> required = new TreeSet<>();
            SCHEMAS.path(record.getSimpleName()).path("required").forEach(r -> required.add(r.asString()));
            for (RecordComponent c : record.getRecordComponents()) {
                String as = record.getSimpleName() + "." + c.getName();
                boolean mayBeLeftOut = c.getType() == Optional.class || c.getAccessor().isAnnotationPresent(JsonInclude.class);
                assertThat(required.contains(c.getName())).as(as).isEqualTo(!mayBeLeftOut);
                kind(as, SCHEMAS.path(record.getSimpleName()).path("properties").path(c.getName()), c.getGenericType());
            }
        });
    }

    private static void kind(String as, JsonNode schema, Type type) {
        if (type instanceof ParameterizedType p && p.getRawType() == Optional.class) {
            kind(as, schema, p.getActualTypeArguments()[0]);
        } else if (type instanceof ParameterizedType p && p.getRawType() == List.class) {
            assertThat(schema.path("type").asString()).as(as).isEqualTo("array");
            if (p.getActualTypeArguments()[0] != Object.class) {
                kind(as + "[]", schema.path("items"), p.getActualTypeArguments()[0]);
            }
        } else if (type == Object.class) {
            assertThat(schema.path("type").isArray()).as(as).isTrue();
        } else if (type instanceof Class<?> c && c.isRecord()) {
            assertThat(schema.path("$ref").asString()).as(as).endsWith("/" + c.getSimpleName());
        } else {
            assertThat(schema.path("type").asString()).as(as).isEqualTo(type == int.class || type == Integer.class ? "integer"
                    : type == double.class || type == Double.class ? "number" : type == boolean.class ? "boolean" : "string");
        }
    }

    @Test
    void answers_to_the_demo_spots_are_as_described() throws Exception {
        var root = JSON.createObjectNode().put("$schema", "https://json-schema.org/draft/2020-12/schema")
                .put("$ref", "#/components/schemas/Answer");
        root.putObject("components").set("schemas", SCHEMAS);
        var schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaLocation.of("urn:rungwise:answer"), root);
        boolean wet = false;
        try (Stream<Path> spots = Files.list(Path.of("demo-data/spots"))) {
            for (Path spot : spots.toList()) {
                Answer answer = Base.advisor().answer(QuestionReader.read(Mappers.question().readTree(Files.readString(spot)),
                        Base.advisor().knowledge()), true);
                JsonNode json = JSON.readTree(Mappers.json().writeValueAsString(answer));
                assertThat(schema.validate(json)).as(spot.toString()).isEmpty();
                wet |= json.toString().contains("\"staysWet\"");
            }
        }
        assertThat(wet).isTrue();
    }
}
