package rungwise.diagnosis;

import java.util.List;
import java.util.Optional;
import rungwise.answer.Answer;
import rungwise.knowledge.common.Basis;

/**
 * What it may be.
 *
 * @param verdict        known, likely or open
 * @param says           the verdict in a sentence
 * @param suspects       likeliest first; never one alone unless the signs bear it
 * @param others         probability of everything that is not listed
 * @param contradictions signs that do not go together
 * @param check          the next harmless check worth its minutes, or why there is none
 * @param next           the next step over all that it may be
 */
public record Identification(String revision, String verdict, String says, List<Suspect> suspects, double others,
                             List<Contradiction> contradictions, NextCheck check, Answer.Next next) {

    /** What it may be, with what speaks for it and against it. */
    public record Suspect(String contaminant, String name, double probability, String frequency,
                          List<Sign> speaksFor, List<Sign> speaksAgainst, List<String> lookAlikes) {
    }

    /**
     * A sign as it counts for one contaminant.
     *
     * @param sign   observation id, or tried: and a method id
     * @param seen   whether it was seen, or was looked for and is not there
     * @param ratio  its own likelihood ratio, before it is taken together with its like
     */
    public record Sign(String sign, String says, boolean seen, String group, String strength, double ratio,
                       boolean decisive, Basis basis, List<String> sources) {
    }

    /** Signs that do not go together, and what may lie behind it. */
    public record Contradiction(List<String> signs, String explains) {
    }

    /**
     * The next check.
     *
     * @param offered    the check; empty where none is worth it
     * @param says       what to do, or why no check is worth it
     * @param notOffered checks that would help but are not for this surface, with the reason
     */
    public record NextCheck(Optional<Check> offered, String says, List<Withheld> notOffered) {
    }

    /**
     * A check with what it is expected to bring.
     *
     * @param savesMinutes expected saving of the ladder's expected minutes, the check's own taken off
     */
    public record Check(String id, String name, String how, double minutes, double savesMinutes,
                        List<Outcome> outcomes) {
    }

    /** What may be seen, how likely that is, what it would then be and what would be done first. */
    public record Outcome(Optional<String> sign, String says, double probability, String likeliest,
                          double likeliestProbability, Optional<String> nextMethod) {
    }

    /** A check that is not offered. */
    public record Withheld(String check, String name, String why) {
    }
}
