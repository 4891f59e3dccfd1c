package rungwise.knowledge.draft;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import rungwise.knowledge.Circumstance;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Source;
import rungwise.knowledge.Waiver;
import rungwise.knowledge.chemistry.Solute;
import rungwise.knowledge.chemistry.Substance;
import rungwise.knowledge.common.Sorted;
import rungwise.knowledge.common.Word;
import rungwise.knowledge.decision.Assumption;
import rungwise.knowledge.decision.Assumptions;
import rungwise.knowledge.decision.Decision;
import rungwise.knowledge.decision.Decisions;
import rungwise.knowledge.deposit.BondClass;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.deposit.EvidenceStrength;
import rungwise.knowledge.deposit.Frequency;
import rungwise.knowledge.deposit.Inspection;
import rungwise.knowledge.deposit.Observation;
import rungwise.knowledge.deposit.SignGroup;
import rungwise.knowledge.deposit.Signs;
import rungwise.knowledge.deposit.Susceptibility;
import rungwise.knowledge.matter.Component;
import rungwise.knowledge.matter.ComponentClass;
import rungwise.knowledge.matter.Matter;
import rungwise.knowledge.matter.Reach;
import rungwise.knowledge.matter.Shares;
import rungwise.knowledge.matter.Way;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Family;
import rungwise.knowledge.method.Gate;
import rungwise.knowledge.method.MechanismWord;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.Tool;
import rungwise.knowledge.product.ProductFunction;
import rungwise.knowledge.product.ProductWords;
import rungwise.knowledge.product.SheetPart;
import rungwise.knowledge.product.TellingPart;
import rungwise.knowledge.safety.Exposure;
import rungwise.knowledge.safety.HazardStatement;
import rungwise.knowledge.safety.Permeation;
import rungwise.knowledge.safety.Protective;
import rungwise.knowledge.safety.Respirator;
import rungwise.knowledge.surface.Place;
import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.words.AskedFact;
import rungwise.knowledge.words.EverydayProduct;
import rungwise.knowledge.words.FinishProtection;
import rungwise.knowledge.words.IdleWord;
import rungwise.knowledge.words.ListWord;
import rungwise.knowledge.words.PriorDamage;
import rungwise.knowledge.words.QuestionWords;
import rungwise.knowledge.words.Sensitiser;
import rungwise.knowledge.words.SpokenWords;
import rungwise.knowledge.words.Spelling;
import rungwise.knowledge.words.TimeWord;
import rungwise.knowledge.words.WideWord;

/**
 * Everything that was read, before it is known to be free of faults.
 *
 * @param usedElsewhere ids that rules name; empty where nobody said
 * @param unreadable    kinds of which a file is missing or could not be read at all
 */
public record Draft(List<Entry> entries, Optional<Set<String>> usedElsewhere, Set<Kind> unreadable) {
    public Stream<Entry> entries(Kind kind) {
        return entries.stream().filter(e -> e.kind() == kind);
    }

    /** Ids of a kind, also of entries with faults, so that one fault does not cause another. */
    public Set<String> ids(Kind kind) {
        Set<String> ids = new TreeSet<>();
        entries(kind).forEach(e -> ids.add(e.id()));
        return ids;
    }

    public boolean isReadable(Kind kind) {
        return !unreadable.contains(kind);
    }

    public boolean isWhole(Kind kind) {
        return isReadable(kind) && entries(kind).allMatch(e -> e.item().isPresent());
    }

    public <T> Map<String, T> items(Kind kind, Class<T> type) {
        Map<String, T> items = new HashMap<>();
        entries(kind).forEach(e -> e.item().ifPresent(i -> items.put(e.id(), type.cast(i))));
        return Sorted.map(items);
    }

    public Map<String, Method> methods() {
        return items(Kind.METHOD, Method.class);
    }

    public Map<String, Contaminant> contaminants() {
        Matter matter = matter();
        Map<String, Contaminant> made = new HashMap<>();
        items(Kind.CONTAMINANT, Contaminant.class).forEach((id, contaminant) -> made.put(id, contaminant.knowing(matter)));
        return Sorted.map(made);
    }

    private Matter matter() {
        return new Matter(items(Kind.COMPONENT, Component.class), items(Kind.COMPONENT_CLASS, ComponentClass.class),
                items(Kind.WAY, Way.class), items(Kind.REACH, Reach.class), Shares.of(decisions()));
    }

    private Decisions decisions() {
        return new Decisions(items(Kind.DECISION, Decision.class));
    }

    /** Whether the chances of a contaminant can be known at all. */
    public boolean hasItsBondClasses(Contaminant contaminant) {
        Set<String> known = ids(Kind.BOND_CLASS);
        return known.contains(contaminant.bond().fresh()) && known.contains(contaminant.bond().hardened());
    }

    /** Looks at each sound entry of a kind. */
    public <T> List<Fault> each(Kind kind, Class<T> type, Look<T> look) {
        return entries(kind).filter(e -> e.item().isPresent())
                .flatMap(e -> look.at(e, type.cast(e.item().get()))).toList();
    }

    /** What a check says of one entry. */
    @FunctionalInterface
    public interface Look<T> {
        Stream<Fault> at(Entry entry, T item);
    }

    public KnowledgeBase base(String revision) {
        return new KnowledgeBase(revision, contaminants(), items(Kind.SURFACE, Surface.class), methods(),
                items(Kind.AGENT, Agent.class), items(Kind.TOOL, Tool.class), items(Kind.FAMILY, Family.class),
                items(Kind.GATE, Gate.class), items(Kind.CIRCUMSTANCE, Circumstance.class),
                items(Kind.OBSERVATION, Observation.class), items(Kind.SOURCE, Source.class),
                items(Kind.BOND_CLASS, BondClass.class), items(Kind.MECHANISM, MechanismWord.class), items(Kind.WASTE, Word.class), items(Kind.LEVEL, Word.class),
                items(Kind.PPE, Protective.class), items(Kind.NOT_FOLLOWED, Word.class), items(Kind.STEP, Word.class),
                items(Kind.EXPOSURE, Exposure.class), items(Kind.GLOVES, Permeation.class),
                items(Kind.RESPIRATOR, Respirator.class), items(Kind.SUBSTANCE, Substance.class),
                items(Kind.SOLUTE, Solute.class), items(Kind.HAZARD, HazardStatement.class),
                decisions(), new Assumptions(items(Kind.ASSUMPTION, Assumption.class)),
                new Signs(items(Kind.EVIDENCE_STRENGTH, EvidenceStrength.class), items(Kind.SIGN_GROUP, SignGroup.class),
                        items(Kind.CHECK, Inspection.class), items(Kind.FREQUENCY, Frequency.class)),
                List.copyOf(items(Kind.WAIVER, Waiver.class).values()), questionWords(),
                new ProductWords(items(Kind.PRODUCT_FUNCTION, ProductFunction.class), items(Kind.SHEET_PART, SheetPart.class),
                        items(Kind.TELLING_PART, TellingPart.class)), matter(), items(Kind.SUSCEPTIBILITY, Susceptibility.class));
    }

    private SpokenWords spokenWords() {
        return new SpokenWords(items(Kind.SPELLING, Spelling.class), items(Kind.TIME_WORD, TimeWord.class),
                items(Kind.WIDE_DEPOSIT, WideWord.class), items(Kind.WIDE_SURFACE, WideWord.class),
                items(Kind.WIDE_METHOD, WideWord.class), items(Kind.IDLE_WORD, IdleWord.class));
    }

    private QuestionWords questionWords() {
        return new QuestionWords(items(Kind.DONE, ListWord.class), items(Kind.PLACE, Place.class),
                items(Kind.PRIOR_DAMAGE, PriorDamage.class), items(Kind.FINISH_PROTECTION, FinishProtection.class),
                items(Kind.SOILING, ListWord.class), items(Kind.COLOUR, ListWord.class),
                items(Kind.SUN, ListWord.class), items(Kind.OUTCOME, ListWord.class),
                items(Kind.STOP_SIGN, ListWord.class), items(Kind.EVERYDAY_PRODUCT, EverydayProduct.class),
                items(Kind.SENSITISER, Sensitiser.class), items(Kind.FACT, AskedFact.class), spokenWords());
    }
}
