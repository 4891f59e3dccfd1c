package rungwise.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungwise.knowledge.load.Mappers;
import rungwise.spot.SpotTried;
import rungwise.text.Texts;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Keeps what was tried on a spot. */
@Command(name = "try", mixinStandardHelpOptions = true)
final class SpotTryCommand implements Callable<Integer> {
    @Mixin
    private SpotPlace place;

    @Parameters(index = "0", paramLabel = "ID", descriptionKey = "ID")
    private String id;

    @Parameters(index = "1", paramLabel = "METHOD", descriptionKey = "METHOD")
    private String method;

    @Parameters(index = "2", paramLabel = "OUTCOME", descriptionKey = "OUTCOME")
    private String outcome;

    @Option(names = "--minutes")
    private Double minutes;

    @Option(names = "--dwell", paramLabel = "MINUTES")
    private Double dwell;

    @Option(names = "--done", split = ",", paramLabel = "STEP")
    private List<String> done = List.of();

    @Option(names = "--sign", split = ",", paramLabel = "SIGN")
    private List<String> signs = List.of();

    @Option(names = "--unprepared")
    private boolean unprepared;

    @Option(names = "--advised", paramLabel = "METHOD")
    private String advised;

    @Option(names = "--because", split = ",", paramLabel = "CODE")
    private List<String> because = List.of();

    @Option(names = "--at", paramLabel = "TIME")
    private String at;

    @Option(names = "--shop")
    private String shop;

    @Option(names = "--bay")
    private String bay;

    @Option(names = "--note")
    private String note;

    @Option(names = "--photo")
    private String photo;

    @Override
    public Integer call() {
        return place.at(id, "cli.spot-unkept", open -> {
            SpotTried tried = open.memory().attempt(id, attempt(), Optional.empty());
            return place.said(open, tried, tried.answer(), tried.spot(), Texts.said("cli.spot-tried", "id", tried.spot(), "method",
                    tried.attempt().method(), "outcome", tried.attempt().outcome().word()));
        });
    }

    private JsonNode attempt() {
        ObjectNode attempt = Mappers.json().createObjectNode().put("method", method).put("outcome", outcome);
        Map<String, String> texts = new TreeMap<>();
        put(texts, "advised", advised);
        put(texts, "at", at);
        put(texts, "shop", shop);
        put(texts, "bay", bay);
        put(texts, "note", note);
        put(texts, "photo", photo);
        texts.forEach(attempt::put);
        Optional.ofNullable(minutes).ifPresent(m -> attempt.put("minutes", m));
        Optional.ofNullable(dwell).ifPresent(m -> attempt.put("dwellMinutes", m));
        Map.of("done", done, "signs", signs, "notFollowedBecause", because).forEach((field, words) -> words.forEach(word ->
                attempt.withArrayProperty(field).add(word.strip())));
        return unprepared ? attempt.put("prepared", false) : attempt;
    }

    private static void put(Map<String, String> texts, String field, String given) {
        if (given != null) {
            texts.put(field, given);
        }
    }
}
