package rungwise.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import rungwise.spot.SpotNow;
import rungwise.text.Texts;
import tools.jackson.databind.JsonNode;

/** Keeps a new spot. */
@Command(name = "new", mixinStandardHelpOptions = true)
final class SpotNewCommand implements Callable<Integer> {
    @Mixin
    private SpotPlace place;

    @Parameters(paramLabel = "FILE", descriptionKey = "FILE")
    private String file;

    @Override
    public Integer call() {
        JsonNode question = QuestionFile.read(file);
        return place.orMake(open -> {
            SpotNow spot = QuestionFile.asked(file, () -> open.memory().begin(question, Optional.empty()));
            return place.said(open, spot, spot.answer(), spot.id(), Texts.said("cli.spot-kept", "id", spot.id(), "place", open.place()));
        });
    }
}
