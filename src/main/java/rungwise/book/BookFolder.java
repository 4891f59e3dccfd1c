package rungwise.book;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rungwise.text.Texts;

/** A folder that holds a book and nothing else. */
public final class BookFolder {
    /** Lists what the book wrote; by it a later book knows an earlier one and takes away what is no longer in it. */
    static final String CONTENTS = "contents.txt";
    private static final String FIRST_LINE = "Rungwise rule book";

    private final Path folder;

    public BookFolder(Path folder) {
        this.folder = folder.toAbsolutePath().normalize();
    }

    /**
     * Refuses a folder that a book must not be written into.
     *
     * @throws FolderTaken where it is no folder, or holds something that is no earlier book
     */
    public void check() throws IOException {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new FolderTaken(Texts.said("book.folder-is-a-file", "folder", folder));
        }
        if (Files.isDirectory(folder) && !isEmpty() && earlier().isEmpty()) {
            throw new FolderTaken(Texts.said("book.folder-taken", "folder", folder));
        }
    }

    /** Writes the pages and takes away those of an earlier book that are no more. */
    public void write(Map<String, String> texts) throws IOException {
        check();
        List<String> earlier = earlier();
        for (Map.Entry<String, String> one : texts.entrySet()) {
            Path file = folder.resolve(one.getKey());
            Files.createDirectories(file.getParent());
            Files.writeString(file, one.getValue());
        }
        List<String> contents = new ArrayList<>(List.of(FIRST_LINE));
        contents.addAll(texts.keySet());
        Files.writeString(folder.resolve(CONTENTS), String.join("\n", contents) + "\n");
        for (String path : earlier) {
            Path file = folder.resolve(path).normalize();
            if (!texts.containsKey(path) && file.startsWith(folder) && file.toString().endsWith(".html")) {
                Files.deleteIfExists(file);
            }
        }
    }

    private boolean isEmpty() throws IOException {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.findAny().isEmpty();
        }
    }

    /** What an earlier book wrote; empty where there is none. */
    private List<String> earlier() throws IOException {
        Path contents = folder.resolve(CONTENTS);
        if (!Files.isRegularFile(contents)) {
            return List.of();
        }
        List<String> lines = Files.readAllLines(contents);
        return lines.isEmpty() || !lines.get(0).equals(FIRST_LINE) ? List.of() : lines.subList(1, lines.size());
    }
}
