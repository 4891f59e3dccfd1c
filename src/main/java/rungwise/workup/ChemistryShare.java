package rungwise.workup;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.method.Chance;
import rungwise.knowledge.method.Chances;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.surface.Verdict;
import rungwise.rules.use.PolymerContact;
import rungwise.rules.use.Use;
import rungwise.science.Solubility;
import rungwise.text.Texts;

/**
 * How much of what the trade says of solvents is computed, or confirmed by computation, where there are figures. What
 * contradicts the chemistry counts as neither and is listed; what is said stands all the same.
 *
 * @param pairs         contaminants times solvent methods
 * @param chances       of these, those for which there is a sphere for fresh and hardened, a composition, and a chance that was stated or
 *                      computed; what a deposit's components are never thought of for says nothing of chemistry
 * @param computed      of these, computed as nobody had stated one
 * @param confirmed     of these, stated and within one grade of what is computed, for fresh and for hardened
 * @param contradicted  of these, stated and further off
 * @param verdicts      what surfaces say of each organic component, where there is a sphere
 * @param agreed        of these, in agreement with the chemistry
 * @param disagreements the rest of these, by surface
 */
public record ChemistryShare(int pairs, int chances, int computed, int confirmed, List<Contradiction> contradicted,
                             int verdicts, int agreed, Map<String, Long> disagreements) {

    /** A stated chance that is not borne out. */
    public record Contradiction(String method, String contaminant, String said, String expected) {
    }

    public static ChemistryShare of(KnowledgeBase known) {
        int pairs = 0;
        int chances = 0;
        int computed = 0;
        int confirmed = 0;
        List<Contradiction> contradicted = new ArrayList<>();
        double within = known.decisions().value(DecisionId.CHEMISTRY_BEARS_OUT);
        ComputedChances completed = ComputedChances.of(known);
        for (Method method : known.methods().values()) {
            if (!ComputedChances.dissolves(method) || known.agentOf(method).strongestSolvent() < known.decisions().value(DecisionId.SOLVENT_COUNTS)) {
                continue;
            }
            for (Contaminant contaminant : completed.base().contaminants().values()) {
                pairs++;
                var young = ComputedChances.estimate(contaminant, contaminant.bond().fresh(), method, known);
                var old = ComputedChances.estimate(contaminant, contaminant.bond().hardened(), method, known);
                if (young.isEmpty() || old.isEmpty() || !ChemistryDoubt.isStated(contaminant, method)
                        && !completed.isComputed(contaminant.id(), method.id())) {
                    continue;
                }
                chances++;
                Chances said = ChemistryDoubt.stated(contaminant, method);
                Chances expected = new Chances(young.get().chances().fresh(), old.get().chances().hardened());
                if (completed.isComputed(contaminant.id(), method.id())) {
                    computed++;
                } else if (near(said.fresh(), expected.fresh(), within) && near(said.hardened(), expected.hardened(), within)) {
                    confirmed++;
                } else {
                    contradicted.add(new Contradiction(method.id(), contaminant.id(), words(said), words(expected)));
                }
            }
        }
        int verdicts = 0;
        int agreed = 0;
        Map<String, Long> disagreements = new TreeMap<>();
        for (Surface surface : known.surfaces().values()) {
            for (Method method : known.methods().values()) {
                for (PolymerContact contact : PolymerContacts.all(new Use(method, known.agentOf(method),
                        known.toolOf(method), surface), known)) {
                    verdicts++;
                    Verdict said = surface.limit(contact.component().solvent().orElseThrow().column()).verdict();
                    if (agrees(said, Solubility.band(contact.red()))) {
                        agreed++;
                    } else {
                        disagreements.merge(surface.id(), 1L, Long::sum);
                    }
                }
            }
        }
        return new ChemistryShare(pairs, chances, computed, confirmed, List.copyOf(contradicted), verdicts, agreed,
                disagreements);
    }

    private static boolean near(Chance one, Chance other, double within) {
        return Math.abs(one.ordinal() - other.ordinal()) <= within;
    }

    private static String words(Chances chances) {
        return (chances.fresh() + "/" + chances.hardened()).toUpperCase(Locale.ROOT);
    }

    /** A ban where the solvent is near, a leave where it is outside, a trial in between or on either side of it. */
    private static boolean agrees(Verdict said, Solubility.Band band) {
        return switch (said) {
            case OK -> band == Solubility.Band.SLOW || band == Solubility.Band.PASSES;
            case TEST -> band != Solubility.Band.DISSOLVES;
            case NO, BAR -> band != Solubility.Band.PASSES;
        };
    }

    /** As lines for a person. */
    public String words() {
        return Texts.said("chemistry.share", "chances", chances, "pairs", pairs, "computed", computed, "confirmed", confirmed,
                "contradicted", contradicted.size(), "share", share(computed + confirmed, chances), "verdicts", verdicts, "agreed", agreed,
                "agreedShare", share(agreed, verdicts));
    }

    /** What is contradicted, a line a method; chances fresh/hardened. */
    public List<String> contradictions() {
        List<String> lines = new ArrayList<>();
        contradicted.stream().collect(Collectors.groupingBy(Contradiction::method, TreeMap::new, Collectors.groupingBy(
                c -> Texts.said("chemistry.contradiction", "stated", c.said(), "expected", c.expected()), TreeMap::new,
                Collectors.mapping(Contradiction::contaminant, Collectors.joining(", "))))).forEach((method, by) ->
                by.forEach((what, contaminants) -> lines.add(method + ": " + what + ": " + contaminants)));
        if (!disagreements.isEmpty()) {
            lines.add("verdicts: " + disagreements.entrySet().stream().map(e -> e.getKey() + " " + e.getValue())
                    .collect(Collectors.joining(", ")));
        }
        return lines;
    }

    private static long share(int part, int whole) {
        return whole == 0 ? 0 : Math.round(100.0 * part / whole);
    }
}
