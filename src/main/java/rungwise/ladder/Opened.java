package rungwise.ladder;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwise.knowledge.Fault;
import rungwise.knowledge.KnowledgeFiles;
import rungwise.knowledge.KnowledgeLoader;
import rungwise.rules.BadRules;
import rungwise.rules.RuleBook;
import rungwise.rules.RuleBooks;

/** Opens knowledge and rules together: an advisor, or every fault that keeps them from use. */
public record Opened(Optional<Advisor> advisor, List<Fault> faults) {

    /**
     * Reads what the program carries inside, or folders instead.
     *
     * @param knowledge folder instead of the built-in knowledge
     * @param rules     folder instead of the built-in rules; it is compiled now
     */
    public static Opened from(Optional<Path> knowledge, Optional<Path> rules) {
        Map<String, String> known = knowledge.map(KnowledgeFiles::inFolder)
                .orElseGet(() -> KnowledgeFiles.builtIn("knowledge"));
        Map<String, String> texts = rules.map(RuleBooks::texts).orElseGet(() -> KnowledgeFiles.builtIn("rules"));
        String revision = KnowledgeFiles.revision(known, texts);
        // what the program carries was held against the schemas when it was built
        KnowledgeLoader.Loaded loaded = knowledge.isEmpty() ? KnowledgeLoader.loadProven(known, revision)
                : KnowledgeLoader.load(known, revision);
        List<Fault> faults = new ArrayList<>(loaded.faults());
        RuleBook book = null;
        try {
            book = rules.map(RuleBooks::fromFolder).orElseGet(RuleBooks::builtIn);
            RuleBook opened = book;
            loaded.base().ifPresent(base -> opened.rules().values().forEach(rule -> rule.sources().stream()
                    .filter(s -> !base.sources().containsKey(s)).forEach(s -> faults.add(new Fault("rules",
                            rule.id(), "source \"" + s + "\" does not exist", "add it to sources.yaml")))));
        } catch (BadRules e) {
            e.faults().forEach(f -> faults.add(new Fault("rules", "", f, "mend the rule")));
        }
        return faults.isEmpty() ? new Opened(Optional.of(new Advisor(loaded.base().orElseThrow(), book)), List.of())
                : new Opened(Optional.empty(), List.copyOf(faults));
    }

    /** The advisor, where faults are not expected. */
    public Advisor orElseThrow() {
        return advisor.orElseThrow(() -> new IllegalStateException(
                String.join("\n", faults.stream().map(Fault::toString).toList())));
    }
}
