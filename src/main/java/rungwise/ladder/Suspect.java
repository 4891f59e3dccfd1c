package rungwise.ladder;

import rungwise.knowledge.deposit.Contaminant;
import rungwise.rules.fact.Deposit;
import rungwise.science.Belief;

/**
 * A contaminant that the deposit may be.
 *
 * @param weight belief in it by its signs, before any try
 * @param now    belief in it after the tries
 * @param age    belief that it has hardened, before any try
 */
record Suspect(Contaminant contaminant, double weight, double now, Deposit deposit, Belief age) {
    String id() {
        return contaminant.id();
    }
}
