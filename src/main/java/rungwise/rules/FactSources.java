package rungwise.rules;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rungwise.rules.fact.Deposit;
import rungwise.rules.fact.Happening;
import rungwise.rules.fact.Seen;
import rungwise.rules.use.SolventContact;

/** Sources that stand behind the facts a rule matched, added to those of the rule itself. */
final class FactSources {
    private FactSources() {
    }

    static List<String> beside(List<String> ofRule, List<Object> facts) {
        Set<String> all = new LinkedHashSet<>();
        for (Object fact : facts) {
            if (fact instanceof SolventContact contact) {
                all.addAll(contact.limit().sources());
            } else if (fact instanceof Happening happening) {
                all.addAll(happening.circumstance().sources());
            } else if (fact instanceof Seen seen) {
                all.addAll(seen.observation().sources());
            } else if (fact instanceof Deposit deposit && !ofRule.isEmpty()) {
                all.addAll(deposit.contaminant().sources());
            }
        }
        ofRule.forEach(all::remove);
        return List.copyOf(all);
    }
}
