package rungwise.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.knowledge.common.Basis;

/** What is called published can be looked up: by an address, by the number of a document or by the edition of a book. */
class PublishedRulesTest {
    private static final Pattern NUMBERED = Pattern.compile("\\b(\\d+ CFR \\d|[A-Z]{2,4} \\d[\\d.]*-\\d|bulletin[ \\w]* \\d"
            + "|MMWR \\d|NFPA \\d|IEC \\d|EPA \\d|Regulation \\d|\\d+(st|nd|rd|th) ed\\.)");

    @Test
    void a_published_rule_has_a_source_with_an_address_or_a_document_number() {
        assertThat(Base.advisor().rules().rules().values()).filteredOn(r -> r.basis() == Basis.PUBLISHED).isNotEmpty()
                .allSatisfy(r -> assertThat(r.sources()).as(r.id()).anyMatch(PublishedRulesTest::canBeLookedUp));
    }

    @Test
    void a_source_without_either_cannot_be_looked_up() {
        assertThat(canBeLookedUp("clay-grades")).isFalse();
        assertThat(canBeLookedUp("fallout-clay-bulletin")).isTrue();
        assertThat(canBeLookedUp("stainless-carbon-steel-wool")).isTrue();
    }

    private static boolean canBeLookedUp(String id) {
        var source = Base.advisor().knowledge().sources().get(id);
        return !source.url().isBlank() || NUMBERED.matcher(source.title() + " " + source.section()).find();
    }
}
