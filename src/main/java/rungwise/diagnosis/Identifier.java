package rungwise.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import rungwise.answer.Advisor;
import rungwise.answer.Answer;
import rungwise.diagnosis.Identification.Contradiction;
import rungwise.diagnosis.Identification.NextCheck;
import rungwise.diagnosis.Identification.Sign;
import rungwise.diagnosis.Identification.Suspect;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.deposit.Observation;
import rungwise.ladder.ChanceTable;
import rungwise.ladder.Suspects;
import rungwise.question.Question;
import rungwise.text.Texts;

/** Says what a deposit may be. One identifier may be asked from many threads. */
public final class Identifier {
    private final Advisor advisor;
    private final KnowledgeBase base;
    private final Weighing weighing;
    private final Plans plans;

    public Identifier(Advisor advisor) {
        this.advisor = advisor;
        this.base = advisor.knowledge();
        this.weighing = new Weighing(base);
        this.plans = new Plans(advisor);
    }

    /** Probability by contaminant, in id order. */
    public Map<String, Double> belief(Spot spot) {
        return new TreeMap<>(after(Noted.of(spot, base), spot.question()).belief());
    }

    /** Whether a ladder question names no contaminant but shows signs that speak for some. */
    public boolean canStandFor(Question question) {
        return question.contaminant().filter(c -> !c.equals(Question.UNKNOWN)).isEmpty()
                && Noted.of(Spot.of(question), base).tells();
    }

    /**
     * One ladder over all that it may be.
     *
     * @param chances what the shop's log teaches; what the deposit is believed to be stays with the priors
     */
    public Answer ladder(Question question, boolean all, ChanceTable chances) {
        return advisor.answer(question, weighing.suspects(Noted.of(Spot.of(question), base)), all, chances);
    }

    /** What it may be by its signs and after its tries. */
    private Suspects after(Noted noted, Question question) {
        return weighing.suspects(noted).afterTries(question, base);
    }

    public Identification identify(Spot spot) {
        return identify(spot, ChanceTable.PRIOR);
    }

    /**
     * What it may be.
     *
     * @param chances for the next step, and for what a check is worth
     */
    public Identification identify(Spot spot, ChanceTable chances) {
        Noted noted = Noted.of(spot, base);
        Suspects bySigns = weighing.suspects(noted);
        Map<String, Double> belief = bySigns.afterTries(spot.question(), base).belief();
        List<Suspect> suspects = suspects(noted, spot.question(), belief);
        NextCheck check = checks(spot, noted, bySigns, chances).best();
        Answer.Next next = noted.tells() ? advisor.answer(spot.question(), bySigns, false, chances).next()
                : advisor.answer(spot.question(), false, chances).next();
        String verdict = verdict(suspects.get(0));
        return new Identification(base.revision(), verdict, says(noted, verdict, suspects), suspects,
                Figures.thousandths(1 - suspects.stream().mapToDouble(s -> belief.get(s.contaminant())).sum()),
                contradictions(noted, suspects), check, next);
    }

    private Checks checks(Spot spot, Noted noted, Suspects bySigns, ChanceTable chances) {
        return new Checks(plans, base, weighing, spot, noted, bySigns, chances);
    }

    /** What each check that could be made is expected to save, beyond its own minutes. */
    Map<String, Double> saving(Spot spot) {
        Noted noted = Noted.of(spot, base);
        return checks(spot, noted, weighing.suspects(noted), ChanceTable.PRIOR).saving();
    }

    /** What it may be, likeliest first. */
    public List<Suspect> suspects(Question question) {
        Noted noted = Noted.of(Spot.of(question), base);
        return suspects(noted, question, after(noted, question).belief());
    }

    private List<Suspect> suspects(Noted noted, Question question, Map<String, Double> belief) {
        List<String> order = belief.entrySet().stream().sorted(Map.Entry.<String, Double>comparingByValue().reversed()
                .thenComparing(Map.Entry.comparingByKey())).map(Map.Entry::getKey).toList();
        List<Suspect> suspects = new ArrayList<>();
        for (String id : order) {
            if (suspects.size() < decided(DecisionId.LISTED_AT_LEAST) || belief.get(id) >= decided(DecisionId.LISTED_FROM)
                    && suspects.size() < decided(DecisionId.LISTED_AT_MOST)) {
                Contaminant contaminant = base.contaminants().get(id);
                List<Sign> signs = weighing.signs(noted, question, id);
                suspects.add(new Suspect(id, contaminant.name(), Figures.thousandths(belief.get(id)),
                        base.signs().frequencyOf(id).id(), signs.stream().filter(s -> s.ratio() > 1).toList(),
                        signs.stream().filter(s -> s.ratio() < 1).toList(), contaminant.recognise().lookAlikes()));
            }
        }
        return suspects;
    }

    private double decided(DecisionId id) {
        return base.decisions().value(id);
    }

    /** A sign that decides, or telling ones of two kinds; one weak sign alone never names it. */
    private String verdict(Suspect top) {
        boolean decided = top.speaksFor().stream().anyMatch(Sign::decisive);
        long kinds = top.speaksFor().stream().filter(s -> s.ratio() >= decided(DecisionId.TELLING_FROM) && !s.group().equals(Weighing.SIDE))
                .map(Sign::group).distinct().count();
        if (top.probability() >= decided(DecisionId.KNOWN_FROM) && (decided || kinds >= 2)) {
            return "known";
        }
        return top.probability() >= decided(DecisionId.LIKELY_FROM) && (decided || kinds >= 2) ? "likely" : "open";
    }

    private static String says(Noted noted, String verdict, List<Suspect> suspects) {
        if (!noted.tells()) {
            return Texts.said("diagnosis.no-sign");
        }
        String first = suspects.get(0).name();
        return switch (verdict) {
            case "known" -> Texts.said("diagnosis.known", "first", first);
            case "likely" -> Texts.said("diagnosis.likely", "first", first, "second", suspects.get(1).name());
            default -> Texts.said("diagnosis.open", "first", first, "second", suspects.get(1).name(), "third", suspects.get(2).name());
        };
    }

    /** Said to be seen and not seen; or one telling sign for what another telling one speaks against. */
    private List<Contradiction> contradictions(Noted noted, List<Suspect> suspects) {
        List<Contradiction> all = new ArrayList<>();
        noted.both().forEach(id -> all.add(new Contradiction(List.of(id, id), Texts.said("diagnosis.seen-and-not", "sign",
                base.observations().get(id).says()))));
        Set<String> told = new LinkedHashSet<>();
        List<Observation> telling = noted.seen().stream().filter(o -> !o.group().equals("side")
                && base.signs().strengths().get(o.strength()).ratio() >= decided(DecisionId.TELLING_FROM))
                .sorted(Comparator.comparing(Observation::id)).toList();
        for (Suspect suspect : suspects) {
            for (Observation against : telling) {
                if (against.against().contains(suspect.contaminant()) && told.add(against.id())) {
                    telling.stream().filter(o -> o.pointsTo().contains(suspect.contaminant())).max(Comparator
                            .comparingDouble((Observation o) -> base.signs().strengths().get(o.strength()).ratio())
                            .thenComparing(Observation::id)).ifPresent(forIt -> all.add(new Contradiction(
                            List.of(forIt.id(), against.id()), Texts.said("diagnosis.contradiction", "for", forIt.says(), "suspect",
                                    suspect.name(), "against", against.says()))));
                }
            }
        }
        return all;
    }
}
