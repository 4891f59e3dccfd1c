package rungwise;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rungwise.knowledge.load.KnowledgeFiles;

/** A base of a few entries, whole and without fault, which tests break in one way at a time. */
public final class Tiny {
    public static final Path BROKEN = Path.of("src/test/resources/broken");

    private Tiny() {
    }

    /**
     * With the real figures by which everything is decided and the real mechanisms, as the program asks for every one of them; without what was
     * read for them, as the tiny base has other sources.
     */
    public static Map<String, String> files() {
        Map<String, String> files = new TreeMap<>(KnowledgeFiles.inFolder(BROKEN.resolve("_valid")));
        Map<String, String> known = KnowledgeFiles.builtIn("knowledge");
        List.of("decisions.yaml", "assumptions.yaml", "mechanisms.yaml").forEach(name -> files.put(name, known.get(name)
                .replaceAll("\n  sources: .*", "").replace("basis: published", "basis: memory")));
        return files;
    }
}
