package rungwise.knowledge.load;

import com.fasterxml.jackson.annotation.JsonInclude;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.cfg.EnumFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** The mappers of the program: strict, so that a typo is an error and not a silence. */
public final class Mappers {
    /** A question is shallow and short; deeper or longer input is a mistake or an attack. */
    private static final StreamReadConstraints TIGHT = StreamReadConstraints.builder().maxNestingDepth(20)
            .maxStringLength(4_000).maxNumberLength(30).maxDocumentLength(1_000_000).build();

    /** A mapper learns each type that it meets, which takes longer than what it then writes or reads: one for all. */
    private static final JsonMapper JSON = JsonMapper.builder(JsonFactory.builder().streamReadConstraints(TIGHT).build())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
            .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
            .disable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .disable(EnumFeature.WRITE_ENUMS_USING_TO_STRING)
            .enable(EnumFeature.WRITE_ENUMS_TO_LOWERCASE)
            .changeDefaultPropertyInclusion(i -> i.withValueInclusion(JsonInclude.Include.NON_ABSENT))
            .enable(SerializationFeature.INDENT_OUTPUT).build();

    private static final YAMLMapper QUESTION = new PlainYaml(YAMLMapper.builder(YAMLFactory.builder().streamReadConstraints(TIGHT).build())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS));

    private Mappers() {
    }

    /** Questions and answers: words of enums are read in either case and written in lower case. */
    public static JsonMapper json() {
        return JSON;
    }

    /** Questions in files: YAML without aliases, of which JSON is a part, within the same tight limits. */
    public static YAMLMapper question() {
        return QUESTION;
    }

    /** Knowledge files, which may be longer than a question. A second document in a file is an error, not ignored. */
    public static YAMLMapper yaml() {
        return Knowledge.YAML;
    }

    /** Opened by those who read knowledge from files, and by nobody else. */
    private static final class Knowledge {
        private static final YAMLMapper YAML = YAMLMapper.builder(YAMLFactory.builder().build())
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
                .disable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES).build();
    }
}
