package rungwise.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import rungwise.Base;
import rungwise.answer.Advisor;
import rungwise.cli.CaseFile;
import rungwise.knowledge.KnowledgeBase;
import rungwise.rules.said.Advice;
import rungwise.rules.said.Assume;
import rungwise.rules.said.Caution;
import rungwise.rules.said.Clash;
import rungwise.rules.said.Concluded;
import rungwise.rules.said.Conclusion;
import rungwise.rules.said.Halt;
import rungwise.rules.said.Step;
import rungwise.start.Opened;
import rungwise.text.Figure;
import rungwise.text.Texts;
import tools.jackson.databind.JsonNode;

/** Every case written as data, and what the cases reach. */
class CasesTest {
    private static final Path FOLDER = Path.of("src/test/resources/cases");

    static List<JsonNode> cases() throws IOException {
        return Base.entries(FOLDER);
    }

    @TestFactory
    Stream<DynamicTest> every_case_is_answered_as_its_source_says() throws IOException {
        CaseFile file = new CaseFile(Base.advisor());
        return cases().stream().map(one -> DynamicTest.dynamicTest(one.path("name").asString(),
                () -> assertThat(file.differences(one)).isEmpty()));
    }

    @Test
    void there_are_enough_cases_and_each_forbids_or_orders_something() throws IOException {
        List<JsonNode> all = cases();
        assertThat(all).hasSizeGreaterThanOrEqualTo(60);
        assertThat(all).allSatisfy(c -> {
            assertThat(c.path("source").asString()).isNotBlank();
            assertThat(c.path("expect").path("mustNot").size() + c.path("expect").path("order").size()).isPositive();
        });
    }

    @Test
    void every_published_source_that_a_case_names_is_known() throws IOException {
        KnowledgeBase base = Base.advisor().knowledge();
        Set<String> unknown = new TreeSet<>();
        for (JsonNode one : cases()) {
            for (String source : one.path("source").asString().split(",\\s*")) {
                if (!source.equals("common-practice") && !base.sources().containsKey(source)) {
                    unknown.add(source);
                }
            }
        }
        assertThat(unknown).isEmpty();
    }

    @Test
    void every_rule_fires_in_some_case() throws IOException {
        Advisor fresh = new Advisor(Base.advisor().knowledge(), Base.advisor().rules().unfired());
        CaseFile file = new CaseFile(fresh);
        cases().forEach(file::differences);
        Set<String> never = new TreeSet<>(fresh.rules().rules().keySet());
        never.removeAll(fresh.rules().fired());
        System.out.println("rule coverage: " + fresh.rules().fired().size() + " of "
                + fresh.rules().rules().size() + " rules fired in " + cases().size() + " cases; never: " + never);
        assertThat(never).isEmpty();
    }

    /** A figure without a label would show its bare name; a sentence without its figure could not be said. */
    @Test
    void every_figure_that_a_rule_finds_has_a_label_and_every_sentence_its_figures() throws IOException {
        Set<String> unsaid = new ConcurrentSkipListSet<>();
        Advisor heard = new Advisor(Base.advisor().knowledge(), Base.advisor().rules().heardBy(said -> said.all().stream()
                .map(Concluded::conclusion).forEach(one -> unsaid.addAll(unsaid(one)))));
        CaseFile file = new CaseFile(heard);
        cases().forEach(file::differences);
        assertThat(unsaid).isEmpty();
    }

    private static Set<String> unsaid(Conclusion one) {
        Set<String> unsaid = one.figures().stream().map(Figure::name).filter(name -> !Texts.ENGLISH.has("figure." + name))
                .collect(Collectors.toCollection(TreeSet::new));
        Optional<String> sentence = one instanceof Caution c ? Optional.of(c.text()) : one instanceof Clash c ? Optional.of(c.text())
                : one instanceof Step s ? Optional.of(s.text()) : one instanceof Advice a ? Optional.of(a.text())
                : one instanceof Assume a ? Optional.of(a.value()) : one instanceof Halt h ? Optional.of(h.text()) : Optional.empty();
        sentence.filter(words -> words.contains("{")).ifPresent(unsaid::add);
        return unsaid;
    }
}
