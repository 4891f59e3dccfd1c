package rungwise.knowledge.load;

import rungwise.text.Texts;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.core.util.JsonParserDelegate;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.deser.DeserializationContextExt;
import tools.jackson.dataformat.yaml.YAMLMapper;
import tools.jackson.dataformat.yaml.YAMLParser;

/**
 * Reads YAML in which every value stands where it belongs. An alias would be read as the mere name of what it stands for, and
 * so as a word that nobody wrote; it is refused, and with it the anchor.
 */
final class PlainYaml extends YAMLMapper {
    private static final long serialVersionUID = 1L;

    PlainYaml(Builder settings) {
        super(settings);
    }

    @Override
    protected JsonNode _readTreeAndClose(DeserializationContextExt context, JsonParser parser) {
        return super._readTreeAndClose(context, new WithoutAliases(parser));
    }

    private static final class WithoutAliases extends JsonParserDelegate {
        private WithoutAliases(JsonParser parser) {
            super(parser);
        }

        @Override
        public JsonToken nextToken() {
            JsonToken token = super.nextToken();
            if (delegate instanceof YAMLParser yaml && (yaml.isCurrentAlias() || yaml.getObjectId() != null)) {
                throw new StreamReadException(delegate, Texts.said("fault.anchor"),
                        delegate.currentTokenLocation());
            }
            return token;
        }
    }
}
