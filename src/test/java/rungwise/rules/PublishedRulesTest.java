package rungwise.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.knowledge.common.Basis;

/** What is called published can be looked up: by an address, by the number of a document or by the edition of a book. */
class PublishedRulesTest {
    @Test
    void a_published_rule_has_a_source_with_an_address_or_a_document_number() {
        var rules = Base.advisor().rules().rules().values();
        Map<Basis, Long> bases = rules.stream().collect(Collectors.groupingBy(RuleInfo::basis, TreeMap::new, Collectors.counting()));
        System.out.println("bases of rules: " + bases);
        assertThat(rules).filteredOn(r -> r.basis() == Basis.PUBLISHED).isNotEmpty()
                .allSatisfy(r -> assertThat(r.sources()).as(r.id()).anyMatch(LookedUp::can));
    }

    @Test
    void a_source_without_either_cannot_be_looked_up() {
        assertThat(LookedUp.can("clay-grades")).isFalse();
        assertThat(LookedUp.can("fallout-clay-bulletin")).isTrue();
        assertThat(LookedUp.can("stainless-carbon-steel-wool")).isTrue();
    }

    @Test
    void a_source_is_called_by_words_and_not_by_a_number() {
        assertThat(Base.advisor().knowledge().sources().keySet()).hasSizeGreaterThan(150)
                .allMatch(id -> id.matches("[a-z]+(-[a-z0-9]+)+")).noneMatch(id -> id.matches("(?i)[a-z][0-9]+"));
    }
}
