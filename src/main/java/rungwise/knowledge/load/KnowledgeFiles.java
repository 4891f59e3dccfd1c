package rungwise.knowledge.load;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import rungwise.text.Texts;

/** Reads every file below a folder, or below a folder that the program carries inside, as text by relative path. */
public final class KnowledgeFiles {
    private KnowledgeFiles() {
    }

    public static Map<String, String> inFolder(Path folder) {
        return inFolder(folder, file -> true);
    }

    /** Only YAML: beside it a shop may keep the sheets themselves, which are no text. */
    public static Map<String, String> yamlIn(Path folder) {
        return inFolder(folder, file -> file.toString().endsWith(".yaml") || file.toString().endsWith(".yml"));
    }

    private static Map<String, String> inFolder(Path folder, Predicate<Path> which) {
        try (Stream<Path> files = Files.walk(folder)) {
            Map<String, String> texts = new TreeMap<>();
            for (Path file : files.filter(Files::isRegularFile).filter(which).toList()) {
                texts.put(folder.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
            return texts;
        } catch (IOException e) {
            throw new UncheckedIOException(Texts.said("fault.folder-unreadable", "folder", folder), e);
        }
    }

    /** A folder on the class path, whether that is a directory or the program's own jar. */
    public static Map<String, String> builtIn(String folder) {
        Path program = program();
        if (Files.isDirectory(program)) {
            return inFolder(program.resolve(folder));
        }
        try (FileSystem jar = FileSystems.newFileSystem(program)) {
            return inFolder(jar.getPath(folder));
        } catch (IOException e) {
            throw new IllegalStateException("the program cannot read its own " + folder, e);
        }
    }

    /** Where the program itself lies: its jar, or a directory of classes. */
    public static Path program() {
        try {
            return Path.of(KnowledgeFiles.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException("the program cannot find its own place", e);
        }
    }

    /** One content hash over all texts: twelve hexadecimal digits of SHA-256. */
    public static String revision(Map<String, String> knowledge, Map<String, String> rules) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (Map<String, String> texts : java.util.List.of(knowledge, rules)) {
                new TreeMap<>(texts).forEach((name, text) -> {
                    digest.update(name.getBytes(StandardCharsets.UTF_8));
                    digest.update((byte) 0);
                    digest.update(text.getBytes(StandardCharsets.UTF_8));
                    digest.update((byte) 0);
                });
            }
            return HexFormat.of().formatHex(digest.digest()).substring(0, 12);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
