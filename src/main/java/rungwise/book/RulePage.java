package rungwise.book;

import java.util.List;
import java.util.Optional;
import rungwise.rules.RuleInfo;
import rungwise.text.Texts;

/** What a rule says, why, and which cases would notice if it went. */
final class RulePage {
    private final Links links;

    RulePage(Links links) {
        this.links = links;
    }

    /**
     * The page.
     *
     * @param cases names of the cases whose answers fired it; empty where no cases were given
     */
    Page of(RuleInfo one, Optional<List<String>> cases) {
        Sheet sheet = new Sheet().say(one.says()).fact("cause", one.cause()).fact("phase", one.phase())
                .fact("basis", links.basis(one.basis(), one.sources()));
        cases.ifPresent(names -> sheet.sentences("cases-in-which-it", names.isEmpty()
                ? List.of(Texts.said("book.no-case-fires-it")) : names));
        return sheet.page(Chapter.RULE.path(one.id()), Texts.said("book.rule", "id", one.id()));
    }
}
