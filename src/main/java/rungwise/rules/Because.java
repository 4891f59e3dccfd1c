package rungwise.rules;

import java.util.List;
import rungwise.knowledge.Basis;

/**
 * Why a conclusion stands.
 *
 * @param facts   what the rule matched, as a person would read it
 * @param sources ids of published sources, of the rule and of the facts it matched
 */
public record Because(String rule, String says, String cause, List<String> facts, List<String> sources, Basis basis) {
}
