package rungwise.start;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rungwise.answer.Advisor;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.check.LoadingChecks;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.load.KnowledgeFiles;
import rungwise.knowledge.load.KnowledgeLoader;
import rungwise.knowledge.overlay.Overlay;
import rungwise.rules.BadRules;
import rungwise.rules.RuleBook;
import rungwise.rules.RuleBooks;
import rungwise.rules.RuleWords;
import rungwise.text.Texts;

/** Opens knowledge and rules together: an advisor, or every fault that keeps them from use. */
public record Opened(Optional<Advisor> advisor, List<Overlay.Taken> products, List<Fault> faults) {

    /**
     * Reads what the program carries inside, or folders instead.
     *
     * @param knowledge folder instead of the built-in knowledge
     * @param rules     folder instead of the built-in rules; it is compiled now
     */
    public static Opened from(Optional<Path> knowledge, Optional<Path> rules) {
        return from(knowledge, rules, Optional.empty());
    }

    /** To answer with at once: what the program's jar carries ready-made, where nothing else is asked for. */
    public static Opened ready(Optional<Path> knowledge, Optional<Path> rules, Optional<Path> overlay) {
        boolean own = knowledge.isEmpty() && rules.isEmpty() && overlay.isEmpty();
        return (own ? Prepared.advisor() : Optional.<Advisor>empty())
                .map(advisor -> new Opened(Optional.of(advisor), List.of(), List.of()))
                .orElseGet(() -> from(knowledge, rules, overlay));
    }

    /**
     * The same, with what a shop lays over the knowledge.
     *
     * @param overlay folder of own products and narrower limits
     */
    public static Opened from(Optional<Path> knowledge, Optional<Path> rules, Optional<Path> overlay) {
        Map<String, String> known = knowledge.map(KnowledgeFiles::inFolder)
                .orElseGet(() -> KnowledgeFiles.builtIn("knowledge"));
        Map<String, String> texts = rules.map(RuleBooks::texts).orElseGet(() -> KnowledgeFiles.builtIn("rules"));
        Map<String, String> own = overlay.map(KnowledgeFiles::yamlIn).orElse(Map.of());
        Map<String, String> content = new TreeMap<>(known);
        own.forEach((name, text) -> content.put("overlay/" + name, text));
        String revision = KnowledgeFiles.revision(content, texts);
        // what the program carries was held against the schemas when it was built
        KnowledgeLoader.Loaded loaded = knowledge.isEmpty() ? KnowledgeLoader.loadProven(known, revision)
                : KnowledgeLoader.load(known, revision);
        List<Fault> faults = new ArrayList<>(loaded.faults());
        RuleBook book = null;
        try {
            book = rules.map(RuleBooks::fromFolder).orElseGet(RuleBooks::builtIn);
            RuleBook opened = book;
            loaded.base().ifPresent(base -> faults.addAll(RuleWords.faults(texts, base)));
            loaded.base().ifPresent(base -> opened.rules().values().forEach(rule -> rule.sources().stream()
                    .filter(s -> !base.sources().containsKey(s)).forEach(s -> faults.add(new Fault("rules",
                            rule.id(), Texts.said("rule.no-source", "source", s),
                                    Texts.said("rule.no-source.do")).by(LoadingChecks.RULE_SOURCE.id())))));
        } catch (BadRules e) {
            e.faults().forEach(f -> faults.add(new Fault("rules", "", f, Texts.said("rule.mend")).by(LoadingChecks.RULE.id())));
        }
        if (!faults.isEmpty()) {
            return new Opened(Optional.empty(), List.of(), List.copyOf(faults));
        }
        KnowledgeBase base = loaded.base().orElseThrow();
        Overlay.Laid laid = overlay.map(folder -> Overlay.lay(base, folder.toString(), own))
                .orElseGet(() -> new Overlay.Laid(Optional.of(base), List.of(), List.of()));
        RuleBook opened = book;
        return new Opened(laid.base().map(whole -> new Advisor(whole, opened)), laid.products(),
                laid.faults().stream().map(f -> f.by(LoadingChecks.OVERLAY.id())).toList());
    }

    /** The advisor, where faults are not expected. */
    public Advisor orElseThrow() {
        return advisor.orElseThrow(() -> new IllegalStateException(
                String.join("\n", faults.stream().map(Fault::toString).toList())));
    }
}
