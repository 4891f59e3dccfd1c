package rungwise.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import rungwise.knowledge.load.Mappers;
import rungwise.spot.SpotNow;
import rungwise.spot.ToldFacts;
import rungwise.text.Texts;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Adds what became known of a spot. */
@Command(name = "tell", mixinStandardHelpOptions = true)
final class SpotTellCommand implements Callable<Integer> {
    @Mixin
    private SpotPlace place;

    @Parameters(index = "0", paramLabel = "ID", descriptionKey = "ID")
    private String id;

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "FIELD=VALUE", descriptionKey = "fact")
    private List<String> facts;

    @Override
    public Integer call() {
        ObjectNode told = Mappers.json().createObjectNode();
        facts.forEach(fact -> ToldFacts.gather(told, fact(fact)));
        return place.at(id, "cli.spot-unkept", open -> {
            SpotNow spot = open.memory().tell(id, told, Optional.empty());
            return place.said(open, spot, spot.answer(), spot.id(), Texts.said("cli.spot-told", "id", spot.id()));
        });
    }

    private static ObjectNode fact(String said) {
        int equals = said.indexOf('=');
        if (equals < 1 || said.substring(equals + 1).isBlank()) {
            throw InputProblem.said("no-fact", "said", said);
        }
        String[] path = said.substring(0, equals).split("\\.");
        String pointer = "/" + String.join("/", path);
        ObjectNode whole = Mappers.json().createObjectNode();
        ObjectNode at = whole;
        for (int i = 0; i < path.length - 1; i++) {
            at = at.putObject(path[i]);
        }
        JsonNode value = value(said, said.substring(equals + 1));
        if (value.isString() && ToldFacts.isAdded(pointer)) {
            ArrayNode words = at.putArray(path[path.length - 1]);
            List.of(value.stringValue().split(",")).forEach(word -> words.add(word.strip()));
        } else {
            at.set(path[path.length - 1], value);
        }
        return whole;
    }

    private static JsonNode value(String said, String text) {
        try {
            return Mappers.question().readTree(text);
        } catch (JacksonException e) {
            throw InputProblem.said("no-fact", "said", said);
        }
    }
}
