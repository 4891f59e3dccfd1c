package rungwise.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rungwise.Base;

class RuleBookTest {
    private static final String RULE = """
            package rungwise.rules
            import rungwise.rules.said.*;
            import rungwise.rules.use.*;
            rule "probe"
              %s
              ruleflow-group "%s"
            when
              $u : Use()
            then
              insert(Bar.never($u.name(), $u.figures()));
            end
            """;

    @Test
    void the_build_compiles_every_rule_in_the_rules_folder() {
        long written = RuleBooks.texts(Path.of("rules")).values().stream()
                .flatMap(String::lines).filter(l -> l.startsWith("rule \"")).count();
        assertThat(Base.advisor().rules().rules()).hasSize((int) written).hasSizeGreaterThan(60);
    }

    @Test
    void rules_read_from_the_folder_are_the_rules_that_were_built_in() {
        assertThat(RuleBooks.fromFolder(Path.of("rules")).rules()).isEqualTo(Base.advisor().rules().rules());
    }

    @Test
    void a_rule_is_called_by_words_and_by_no_name_of_an_entry() {
        var known = Base.advisor().knowledge();
        assertThat(Base.advisor().rules().rules().keySet()).allMatch(id -> id.matches("[a-z0-9]+(-[a-z0-9]+)+"))
                .doesNotContainAnyElementsOf(known.gates().keySet()).doesNotContainAnyElementsOf(known.methods().keySet())
                .doesNotContainAnyElementsOf(known.decisions().byId().keySet())
                .doesNotContainAnyElementsOf(known.assumptions().byId().keySet());
    }

    @Test
    void a_rule_that_does_not_say_why_is_refused() {
        assertThatThrownBy(() -> RuleBooks.fromTexts(Map.of("probe.drl", RULE.formatted("@id(x01)", "standing"))))
                .isInstanceOf(BadRules.class).hasMessageContaining("has no @says").hasMessageContaining("@cause");
    }

    @Test
    void a_rule_in_a_group_that_never_runs_is_refused() {
        assertThatThrownBy(() -> RuleBooks.fromTexts(Map.of("probe.drl", RULE.formatted(
                "@id(x01) @says(\"a\") @cause(\"b\") @basis(memory)", "standign"))))
                .isInstanceOf(BadRules.class).hasMessageContaining("which never runs");
    }

    @Test
    void a_rule_called_published_names_its_source() {
        assertThatThrownBy(() -> RuleBooks.fromTexts(Map.of("probe.drl", RULE.formatted(
                "@id(x01) @says(\"a\") @cause(\"b\") @basis(published)", "standing"))))
                .isInstanceOf(BadRules.class).hasMessageContaining("no @source");
    }

    @Test
    void a_rule_that_does_not_compile_is_named_with_its_file() {
        Map<String, String> texts = new TreeMap<>(Map.of("probe.drl", RULE.formatted("@id(x01)", "standing")
                .replace("Use()", "Usage()")));
        assertThatThrownBy(() -> RuleBooks.fromTexts(texts)).isInstanceOf(BadRules.class)
                .hasMessageContaining("probe.drl");
    }
}
