package rungwise.practice;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rungwise.knowledge.load.Mappers;
import tools.jackson.databind.JsonNode;

/** Reads what the trade expects: files that are lists hold cases, files that are maps help to read them. */
final class Trade {
    private static final JsonNode GROUPS = map(Path.of("src/test/resources/first-steps"), "groups.yaml");

    private Trade() {
    }

    static JsonNode map(Path folder, String file) {
        return read(folder.resolve(file));
    }

    /** The entries of all lists in a folder, file by file. */
    static List<JsonNode> entries(Path folder) {
        List<JsonNode> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            files.filter(f -> f.toString().endsWith(".yaml")).sorted().map(Trade::read).filter(JsonNode::isArray)
                    .forEach(list -> list.forEach(all::add));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return all;
    }

    /** Group names that stand for several methods. */
    static JsonNode groups() {
        return GROUPS;
    }

    /** The methods of a list, with those for which a group name stands. */
    static List<String> expanded(JsonNode list) {
        return names(list).stream().flatMap(n -> GROUPS.has(n) ? names(GROUPS.path(n)).stream() : Stream.of(n))
                .distinct().toList();
    }

    static List<String> names(JsonNode list) {
        List<String> names = new ArrayList<>();
        list.forEach(n -> names.add(n.asString()));
        return names;
    }

    /** Writes what was missed where whoever mends it finds it. */
    static void report(String file, List<String> lines) {
        try {
            Files.createDirectories(Path.of("target"));
            Files.write(Path.of("target", file), lines);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JsonNode read(Path file) {
        try {
            return Mappers.yaml().readTree(Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
