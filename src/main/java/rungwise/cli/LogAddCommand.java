package rungwise.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungwise.knowledge.load.Mappers;
import rungwise.shoplog.Attempt;
import rungwise.shoplog.AttemptReader;
import rungwise.shoplog.BadAttempt;
import rungwise.shoplog.Exchange;
import rungwise.shoplog.Shoplog;
import rungwise.text.Texts;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;

/** Keeps attempts. */
@Command(name = "add", mixinStandardHelpOptions = true)
final class LogAddCommand implements Callable<Integer> {
    private static final int LARGEST_YAML = 1_000_000;

    enum Form { YAML, JSONL, CSV }

    @Mixin
    private DataOption data;

    @Parameters(paramLabel = "FILE", descriptionKey = "FILE")
    private String file;

    @Option(names = "--format")
    private Form form;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        Main main = spec.commandLine().getParent().getParent().getCommand();
        AttemptReader reader = new AttemptReader(main.ready().knowledge(), InstantSource.system());
        try (InputStream in = opened(); Reader text = new InputStreamReader(in, StandardCharsets.UTF_8);
             Shoplog log = data.openOrMake()) {
            long before = log.size();
            long added = log.addAll(switch (formOfFile()) {
                case CSV -> Exchange.fromCsv(text, reader);
                case JSONL -> Exchange.fromLines(text, reader);
                case YAML -> yaml(in, reader);
            });
            spec.commandLine().getOut().println(Texts.said("cli.kept", "many", added, "place", log.place(), "all",
                    before + added));
            spec.commandLine().getOut().flush();
            return 0;
        } catch (BadAttempt bad) {
            throw new InputProblem(Texts.said("cli.nothing-kept", "file", file) + "\n  " + bad.getMessage().replace("\n", "\n  "));
        } catch (IOException | java.io.UncheckedIOException e) {
            throw InputProblem.said("attempts-unreadable", "file", file);
        }
    }

    private InputStream opened() throws IOException {
        return file.equals("-") ? System.in : Files.newInputStream(Path.of(file));
    }

    private Form formOfFile() {
        String name = file.toLowerCase(Locale.ROOT);
        return Optional.ofNullable(form).orElse(name.endsWith(".csv") ? Form.CSV
                : name.endsWith(".jsonl") || name.endsWith(".ndjson") ? Form.JSONL : Form.YAML);
    }

    /** One attempt, or a list of them. */
    private Iterator<Attempt> yaml(InputStream in, AttemptReader reader) throws IOException {
        byte[] bytes = in.readNBytes(LARGEST_YAML + 1);
        if (bytes.length > LARGEST_YAML) {
            throw InputProblem.said("attempts-too-large");
        }
        JsonNode tree;
        try {
            tree = Mappers.question().readTree(new String(bytes, StandardCharsets.UTF_8));
        } catch (JacksonException e) {
            throw InputProblem.unreadable(file, e);
        }
        List<Attempt> attempts = new ArrayList<>();
        for (JsonNode one : tree.isArray() ? List.copyOf(tree.values()) : List.of(tree)) {
            attempts.add(reader.read(one));
        }
        return attempts.iterator();
    }
}
