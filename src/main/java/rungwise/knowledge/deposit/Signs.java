package rungwise.knowledge.deposit;

import java.util.Map;

/** What is known of recognising a deposit, beside the observations themselves. */
public record Signs(Map<String, EvidenceStrength> strengths, Map<String, SignGroup> groups,
                    Map<String, Inspection> checks, Map<String, Frequency> frequencies) {
    /** How often a contaminant is met, against the others. */
    public Frequency frequencyOf(String contaminant) {
        return frequencies.values().stream().filter(f -> f.contaminants().contains(contaminant)).findFirst()
                .orElseGet(() -> frequencies.values().stream().filter(Frequency::otherwise).findFirst().orElseThrow());
    }
}
