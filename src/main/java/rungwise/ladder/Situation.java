package rungwise.ladder;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Hours;
import rungwise.knowledge.decision.AssumptionId;
import rungwise.knowledge.decision.Assumptions;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.decision.Decisions;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.deposit.Susceptibility;
import rungwise.knowledge.surface.Place;
import rungwise.knowledge.surface.Surface;
import rungwise.question.Question;
import rungwise.question.Sensitisation;
import rungwise.question.TriedAgents;
import rungwise.rules.Phase;
import rungwise.rules.fact.Attempt;
import rungwise.rules.fact.Bay;
import rungwise.rules.fact.BuildYear;
import rungwise.rules.fact.ClearReading;
import rungwise.rules.fact.Colour;
import rungwise.rules.fact.Covering;
import rungwise.rules.fact.Deposit;
import rungwise.rules.fact.Ground;
import rungwise.rules.fact.Happening;
import rungwise.rules.fact.Missing;
import rungwise.rules.fact.OldDamage;
import rungwise.rules.fact.PaintAge;
import rungwise.rules.fact.Panel;
import rungwise.rules.fact.Person;
import rungwise.rules.fact.Reading;
import rungwise.rules.fact.Refinish;
import rungwise.rules.fact.Seen;
import rungwise.rules.fact.Spread;
import rungwise.rules.fact.Treated;
import rungwise.rules.fact.Warmth;
import rungwise.rules.fact.Where;
import rungwise.rules.said.Assume;
import rungwise.rules.said.Concluded;
import rungwise.rules.said.Conclusion;
import rungwise.rules.said.Conclusions;
import rungwise.rules.said.FlushFirst;
import rungwise.rules.said.Halt;
import rungwise.rules.said.Hold;
import rungwise.rules.said.MightBe;
import rungwise.rules.said.TreatAs;
import rungwise.science.Belief;
import rungwise.science.HeatIndex;
import rungwise.science.Marking;
import rungwise.science.PanelTemperature;

/**
 * A question seen with the knowledge: ids resolved, what is unknown worked out or assumed, the deposits it may be, and the
 * surface made as delicate as the facts ask.
 *
 * @param suspects what the deposit may be and is weighed one by one, the likeliest first
 * @param others   the rest of the belief, as it would lie here
 * @param asked    the surface as named
 * @param surface  the surface as it must be treated
 * @param mights   what an unknown fact could make of it, with the gate that asks for the fact
 * @param facts    the facts that the rules of today look at
 */
public record Situation(Question question, List<Suspect> suspects, List<Other> others, Surface asked, Surface surface,
                        List<Might> mights, Panel panel, List<Attempt> attempts, List<Object> facts, Conclusions derived) {
    static final String NOTHING_KNOWN = "unknown_deposit";

    /** What is hardly believed: too many to ask the rules about each. */
    record Other(Contaminant contaminant, double weight, Belief age) {
    }

    /** What an unknown fact could make of the surface. */
    public record Might(Surface surface, Concluded<MightBe> said) {
    }

    static Situation of(Revision revision, Subject subject) {
        Question question = subject.question();
        Suspects belief = subject.suspects();
        KnowledgeBase base = revision.base();
        Surface asked = asked(question, base);
        List<Suspect> suspects = new ArrayList<>();
        List<Other> others = new ArrayList<>();
        Decisions decisions = base.decisions();
        belief.afterTries(question, base).belief().forEach((id, now) -> {
            double weight = belief.belief().get(id);
            boolean counts = Math.max(weight, now) >= decisions.value(DecisionId.HAZARD_COUNTS)
                    && suspects.size() < decisions.value(DecisionId.SUSPECTS_WEIGHED);
            if (suspects.isEmpty() || counts) {
                suspects.add(suspect(base.contaminants().get(id).on(asked), weight, now, question, base));
            } else {
                Contaminant other = base.contaminants().get(id).on(asked);
                others.add(new Other(other, weight, age(question, other, base.assumptions())));
            }
        });
        // what is hardly believed is no suspect, and what is left of the belief is all there is, for bars as for what is printed
        double suspected = suspects.stream().mapToDouble(Suspect::now).sum();
        suspects.replaceAll(s -> new Suspect(s.contaminant(), s.weight(), s.now() / suspected, s.deposit(), s.age()));
        Optional<Place> place = question.facts().place().map(base.questionWords().places()::get);
        Panel panel = panel(question, place, base.assumptions());
        List<Attempt> attempts = attempts(question, base);
        List<Object> facts = new ArrayList<>();
        suspects.forEach(s -> facts.add(s.deposit()));
        subject.bared().ifPresent(facts::add);
        facts.add(panel);
        facts.addAll(attempts);
        addPanelFacts(question, base.assumptions(), facts);
        addSetting(question, facts);
        question.observations().forEach(o -> facts.add(new Seen(base.observations().get(o))));
        question.circumstances().forEach(c -> facts.add(new Happening(base.circumstances().get(c))));
        spread(question.extent()).ifPresent(area -> facts.add(new Spread(area)));
        place.ifPresent(p -> facts.add(new Where(p)));
        question.facts().protection().ifPresent(p -> facts.add(new Covering(base.questionWords().protections().get(p))));
        question.facts().priorDamage().forEach(d -> facts.add(new OldDamage(base.questionWords().priorDamage().get(d))));
        Sensitisation sensitisation = new Sensitisation(base);
        question.workers().forEach(w -> facts.add(new Person(level(w.level()), sensitisation.of(w.sensitisedTo()))));
        facts.add(new Ground(asked, !question.surface().contains(Question.UNKNOWN)));
        facts.add(decisions);
        Conclusions derived = revision.book().run(Phase.DERIVE, facts);
        // first aid is given whatever the weather, the shelf and the count of tries: the rules of today see what it is
        derived.of(FlushFirst.class).forEach(f -> facts.add(f.conclusion()));
        Surface surface = asked;
        Set<String> delicate = new LinkedHashSet<>();
        derived.of(TreatAs.class).stream().filter(t -> bars(t, suspects, decisions)).map(t -> t.conclusion().surface()).sorted()
                .forEach(delicate::add);
        for (String id : delicate) {
            surface = tightened(surface, base.surfaces().get(id));
        }
        List<Might> mights = new ArrayList<>();
        for (Concluded<MightBe> might : derived.of(MightBe.class)) {
            Surface then = tightened(surface, base.surfaces().get(might.conclusion().surface()));
            if (!then.id().equals(surface.id())) {
                mights.add(new Might(then, might));
            }
        }
        facts.add(new Treated(surface));
        return new Situation(question, List.copyOf(suspects), others, asked, surface, mights, panel, attempts, facts, derived);
    }

    /** Whether a conclusion that forbids counts: one from a suspect that is hardly believed does not. */
    static boolean bars(Concluded<? extends Conclusion> said, List<Suspect> suspects, Decisions decisions) {
        return said.suspect().isEmpty() || suspects.get(0).id().equals(said.suspect().get()) || suspects.stream()
                .anyMatch(s -> s.id().equals(said.suspect().get()) && s.now() >= decisions.value(DecisionId.BAR_COUNTS));
    }

    private static Suspect suspect(Contaminant contaminant, double weight, double now, Question question, KnowledgeBase base) {
        Belief age = age(question, contaminant, base.assumptions());
        double counts = base.decisions().value(DecisionId.STATE_COUNTS);
        return new Suspect(contaminant, weight, now, new Deposit(contaminant, question.ageHours().isPresent(), question.ageHours().orElse(0),
                age.hardened(), marked(contaminant, question, base), counts), age);
    }

    /** Belief that a mark is beneath; where nobody told the age, that of one as old as can be. */
    private static double marked(Contaminant contaminant, Question question, KnowledgeBase base) {
        Hours marks = contaminant.marks();
        if (marks.isNever()) {
            return 0;
        }
        double warmest = warmest(question, base.assumptions());
        if (contaminant.isMark()) {
            return question.ageHours().isEmpty() ? 1 : Belief.byAge(question.ageHours().getAsDouble(),
                    Belief.hoursAt(marks.cool(), marks.hot(), warmest)).hardened();
        }
        double dose = question.ageHours().isEmpty() ? Double.POSITIVE_INFINITY : Marking.dose(question.ageHours().getAsDouble(),
                base.assumptions().value(AssumptionId.SUN_HOURS), marks.cool(), marks.hot(), warmest);
        return named(question, base).stream().mapToDouble(s -> Susceptibility.of(s, contaminant.marksBy(), base.susceptibilities().values(),
                (times, most) -> Marking.belief(dose, times, most))).max().orElse(0);
    }

    private static double warmest(Question question, Assumptions assumptions) {
        return question.facts().warmestPanelC().orElseGet(() -> assumptions.value(AssumptionId.WARMEST_PANEL));
    }

    /** Whether beliefs rest on how warm the panel is taken to have been. */
    public boolean warmthIsAssumed() {
        return question.facts().warmestPanelC().isEmpty() && question.ageHours().isPresent() && suspects.stream().map(Suspect::contaminant)
                .anyMatch(c -> isByWarmth(c.hardens()) || isByWarmth(c.marks()));
    }

    private static boolean isByWarmth(Hours hours) {
        return !hours.isNever() && hours.cool() != hours.hot();
    }

    /** Belief that it has hardened, by its age. */
    static Belief age(Question question, Contaminant contaminant, Assumptions assumptions) {
        if (question.ageHours().isEmpty()) {
            return contaminant.hardens().isNever() ? new Belief(0) : Belief.UNKNOWN;
        }
        return Belief.byAge(question.ageHours().getAsDouble(), Belief.hoursAt(contaminant.hardens().cool(),
                contaminant.hardens().hot(), warmest(question, assumptions)));
    }

    private static Surface tightened(Surface surface, Surface by) {
        return List.of(surface.id().split("\\+")).contains(by.id()) ? surface : surface.stricter(by);
    }

    private static List<Surface> named(Question question, KnowledgeBase base) {
        return question.surface().contains(Question.UNKNOWN)
                ? List.copyOf(base.surfaces().values())
                : question.surface().stream().distinct().sorted().map(base.surfaces()::get).toList();
    }

    /** The surface as named, where it is. */
    static Surface asked(Question question, KnowledgeBase base) {
        List<Surface> named = named(question, base);
        Surface strictest = named.get(0);
        for (Surface other : named) {
            strictest = tightened(strictest, other);
        }
        Surface found = strictest;
        return question.facts().place().map(base.questionWords().places()::get).map(found::at).orElse(found);
    }

    private static Panel panel(Question question, Optional<Place> place, Assumptions assumptions) {
        Question.Setting setting = question.setting();
        String sun = setting.sun().orElseGet(() -> assumptions.word(AssumptionId.SUN));
        double worked = PanelTemperature.celsius(setting.airC().orElseGet(() -> assumptions.value(AssumptionId.AIR_TEMPERATURE)), sun,
                PanelTemperature.absorption(question.facts().colour().orElseGet(() -> assumptions.word(AssumptionId.PANEL_COLOUR))),
                setting.windMs(), place.map(Place::faces).orElse(PanelTemperature.Facing.VERTICAL));
        return new Panel(setting.panelC().orElse(worked), setting.panelC().isPresent(), sun.equals("direct"), setting.windMs());
    }

    private static void addSetting(Question question, List<Object> facts) {
        Question.Setting setting = question.setting();
        if (setting.sun().isEmpty()) {
            facts.add(new Missing("sun"));
        }
        if (setting.indoors().isEmpty() && !setting.outdoors()) {
            facts.add(new Missing("bay"));
        }
        if (setting.waterHardnessMgL().isEmpty()) {
            facts.add(new Missing("waterHardness"));
        }
        setting.indoors().ifPresent(i -> facts.add(new Bay(i.volumeM3(), i.airChangesPerHour())));
        setting.airC().ifPresent(c -> facts.add(warmth(c, setting.humidity())));
    }

    private static Warmth warmth(double airC, OptionalDouble humidity) {
        double damp = humidity.orElseGet(() -> HeatIndex.muggy(airC));
        return new Warmth(airC, damp, humidity.isPresent(), HeatIndex.celsius(airC, damp));
    }

    private static void addPanelFacts(Question question, Assumptions assumptions, List<Object> facts) {
        Question.Facts given = question.facts();
        given.totalFilmMicrons().ifPresentOrElse(t -> facts.add(new Reading(t.min(), t.max())),
                () -> facts.add(new Missing("totalFilmMicrons")));
        given.clearMicrons().ifPresentOrElse(c -> facts.add(new ClearReading(c)),
                () -> facts.add(new Missing("clearMicrons")));
        given.paintAgeDays().ifPresentOrElse(d -> facts.add(new PaintAge(d)),
                () -> facts.add(new Missing("paintAgeDays")));
        given.refinished().ifPresentOrElse(r -> facts.add(new Refinish(r)),
                () -> facts.add(new Missing("refinished")));
        given.vehicleYear().ifPresent(y -> facts.add(new BuildYear(y)));
        given.colour().ifPresent(c -> facts.add(new Colour(c)));
    }

    /** As given, or round spots of the given width. */
    private static OptionalDouble spread(Question.Extent extent) {
        if (extent.areaM2().isPresent() || extent.diameterMm().isEmpty()) {
            return extent.areaM2();
        }
        double radiusM = extent.diameterMm().getAsDouble() / 2000;
        return OptionalDouble.of(extent.spots().orElse(1) * Math.PI * radiusM * radiusM);
    }

    private static int level(String level) {
        return level.startsWith("L") ? level.charAt(1) - '0' : 5;
    }

    private static List<Attempt> attempts(Question question, KnowledgeBase base) {
        List<Attempt> attempts = new ArrayList<>();
        TriedAgents agents = new TriedAgents(base);
        for (Question.Tried tried : question.tried()) {
            agents.of(tried).forEach(b -> attempts.add(new Attempt(b.name(), b.family(), b.agent(), tried.outcome(),
                    tried.times(), tried.dwellMinutes() * tried.times(), tried.hoursAgo(),
                    !tried.signs().isEmpty(), tried.counts(), b.told())));
        }
        return attempts;
    }

    /** Whether the deposit itself, and not the surface, says who takes over. */
    public boolean isForAnotherTrade() {
        return likeliest().contaminant().refersTo().isPresent();
    }

    Suspect likeliest() {
        return suspects.get(0);
    }

    /** Whether it may be one of several things, so that a try also tells what it is. */
    boolean isOpen() {
        return suspects.size() + others.size() > 1;
    }

    public List<Concluded<Assume>> assumptions() {
        return derived.of(Assume.class);
    }

    /** Whether all work ends before any ladder. */
    public boolean isStopped() {
        return !derived.of(Hold.class).isEmpty() || !derived.of(Halt.class).isEmpty()
                || !derived.of(FlushFirst.class).isEmpty() && question.tried().stream().noneMatch(Question.Tried::tookItOff);
    }
}
