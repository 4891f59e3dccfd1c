package rungwise.book;

import java.util.List;
import java.util.Optional;
import rungwise.rules.RuleInfo;

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
        Sheet sheet = new Sheet().say(one.says()).fact("Cause", one.cause()).fact("Phase", one.phase())
                .fact("Basis", links.basis(one.basis(), one.sources()));
        cases.ifPresent(names -> sheet.sentences("Cases in which it fires", names.isEmpty()
                ? List.of("None: no case fires it.") : names));
        return sheet.page(Chapter.RULE.path(one.id()), "Rule " + one.id());
    }
}
