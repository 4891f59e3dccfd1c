package rungwise.lint;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungwise.Base;
import rungwise.Tiny;
import rungwise.answer.Advisor;
import rungwise.knowledge.check.LoadingChecks;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.load.KnowledgeFiles;
import rungwise.knowledge.load.KnowledgeLoader;
import rungwise.rules.RuleBook;
import rungwise.rules.RuleBooks;
import rungwise.start.Opened;

/** Every check has a page, and what the page calls wrong is found and what it calls right is not. */
class CheckPagesTest {
    private static final Map<String, String> TINY = Tiny.files();
    private static final Map<String, String> RULES = KnowledgeFiles.builtIn("rules");
    private static final Map<String, String> WHOLE = KnowledgeFiles.inFolder(Path.of("knowledge"));
    private static final String HEAD = """
            package rungwise.rules
            import rungwise.knowledge.chemistry.*;
            import rungwise.knowledge.decision.*;
            import rungwise.knowledge.deposit.*;
            import rungwise.knowledge.method.*;
            import rungwise.knowledge.surface.*;
            import rungwise.rules.fact.*;
            import rungwise.rules.said.*;
            import rungwise.rules.use.*;
            """;
    private static final Set<String> LADDERS = Set.of("tar_spot", "coolant", "milk_dairy");

    @TempDir
    private Path folder;

    static Stream<CheckPage> pages() {
        return CheckPage.all().values().stream();
    }

    @Test
    void every_check_has_a_page_and_every_page_a_check() {
        assertThat(CheckPage.all().keySet()).containsExactlyInAnyOrderElementsOf(Lint.checks().toList());
        assertThat(Lint.checks()).doesNotHaveDuplicates().hasSizeGreaterThan(30);
    }

    @ParameterizedTest
    @MethodSource("pages")
    void what_a_page_calls_wrong_is_found_and_what_it_calls_right_is_not(CheckPage page) throws IOException {
        Sample wrong = Sample.of(page.wrong());
        assertThat(found(page.id(), wrong)).as("wrong").extracting(Fault::check).contains(page.id());
        Sample right = Sample.of(page.right());
        assertThat(found(page.id(), right)).as("right").filteredOn(f -> f.check().equals(page.id())).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void a_page_says_what_why_and_how(CheckPage page) {
        assertThat(page.says()).endsWith(".");
        assertThat(page.why()).endsWith(".");
        assertThat(page.text()).startsWith(page.id() + ": ").contains("Wrong:", "Right:");
    }

    private List<Fault> found(String check, Sample sample) throws IOException {
        if (check.equals(LoadingChecks.OVERLAY.id())) {
            Files.writeString(folder.resolve(sample.file()), sample.text());
            return Opened.from(Optional.empty(), Optional.empty(), Optional.of(folder)).faults();
        }
        if (check.startsWith(LoadingChecks.RULE.id())) {
            // a sample in the folder of a phase stands among the rules that are there
            boolean amongOthers = sample.file().startsWith("rules/2-standing/");
            if (amongOthers) {
                RULES.forEach(this::write);
            }
            write("own.drl", (amongOthers ? HEAD.replaceFirst("rules", "rules.standing") : HEAD) + sample.text());
            return Opened.from(Optional.empty(), Optional.of(folder)).faults();
        }
        boolean onLoading = LoadingChecks.ids().anyMatch(check::equals);
        return onLoading ? KnowledgeLoader.load(sample.in(TINY), "test", Set.of()).faults() : asked(check, sample);
    }

    private void write(String name, String text) {
        try {
            Files.createDirectories(folder.resolve(name).getParent());
            Files.writeString(folder.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A sample stands alone but for the rules of what is next, without which there is no answer. */
    private static Map<String, String> among(Sample sample) {
        Map<String, String> texts = new TreeMap<>(RULES);
        texts.keySet().removeIf(name -> !name.startsWith("6-next/"));
        texts.put("own.drl", HEAD + sample.text());
        return texts;
    }

    private static List<Fault> asked(String check, Sample sample) {
        RuleBook rules = sample.isRule() ? RuleBooks.fromTexts(among(sample))
                : Base.advisor().rules().unfired();
        KnowledgeLoader.Loaded loaded = KnowledgeLoader.load(sample.isRule() ? WHOLE : sample.in(WHOLE), "test");
        assertThat(loaded.faults()).isEmpty();
        Lint lint = new Lint(new Advisor(loaded.base().orElseThrow(), rules), LocalDate.of(2026, 12, 1));
        boolean waivers = check.equals(Lint.IDLE_WAIVER);
        return lint.report(c -> waivers ? c.id().equals("chance-against-chemistry") : c.id().equals(check),
                        c -> LADDERS.contains(c.id())).faults().stream()
                .filter(f -> sample.isAbout(f)).toList();
    }
}
