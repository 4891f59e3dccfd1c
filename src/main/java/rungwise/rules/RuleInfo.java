package rungwise.rules;

import java.util.List;
import rungwise.knowledge.common.Basis;
import rungwise.rules.said.Reason;

/**
 * What a rule says of itself.
 *
 * @param says  the one sentence a trade person would say
 * @param cause the chemistry, physics or experience beneath it
 */
public record RuleInfo(String id, String says, String cause, List<String> sources, Basis basis, String phase) {
    Reason reason() {
        return Reason.rule(id, says, cause, sources, basis);
    }
}
