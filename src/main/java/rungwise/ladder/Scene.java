package rungwise.ladder;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rungwise.knowledge.Agent;
import rungwise.knowledge.Contaminant;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Method;
import rungwise.knowledge.Surface;
import rungwise.question.Question;
import rungwise.rules.Assume;
import rungwise.rules.Attempt;
import rungwise.rules.Bay;
import rungwise.rules.BuildYear;
import rungwise.rules.ClearReading;
import rungwise.rules.Concluded;
import rungwise.rules.Conclusions;
import rungwise.rules.Deposit;
import rungwise.rules.FlushFirst;
import rungwise.rules.Ground;
import rungwise.rules.Happening;
import rungwise.rules.MightBe;
import rungwise.rules.Missing;
import rungwise.rules.PaintAge;
import rungwise.rules.Panel;
import rungwise.rules.Person;
import rungwise.rules.Phase;
import rungwise.rules.Reading;
import rungwise.rules.Refinish;
import rungwise.rules.RuleBook;
import rungwise.rules.Seen;
import rungwise.rules.Spread;
import rungwise.rules.TreatAs;
import rungwise.rules.Warmth;
import rungwise.science.Belief;
import rungwise.science.HeatIndex;
import rungwise.science.PanelTemperature;

/**
 * A question seen with the knowledge: ids resolved, what is unknown worked out or assumed, and the surface made as
 * delicate as the facts ask.
 *
 * @param asked   the surface as named
 * @param surface the surface as it must be treated
 * @param mights  what an unknown fact could make of it, with the gate that asks for the fact
 * @param facts   the facts that the rules of today look at
 */
record Scene(Contaminant contaminant, Deposit deposit, Belief belief, Surface asked, Surface surface,
             List<Might> mights, Panel panel, List<Attempt> attempts, List<Object> facts, Conclusions derived) {
    private static final double MILD_AIR_C = 20;
    private static final double HOT_PANEL_C = 45;
    private static final String NOTHING_KNOWN = "unknown_deposit";

    record Might(Surface surface, Concluded<MightBe> said) {
    }

    static Scene of(Question question, KnowledgeBase base, RuleBook book) {
        Contaminant contaminant = base.contaminants()
                .get(question.contaminant().filter(c -> !c.equals(Question.UNKNOWN)).orElse(NOTHING_KNOWN));
        Surface asked = asked(question, base);
        Panel panel = panel(question);
        Belief belief = belief(question, contaminant);
        Deposit deposit = deposit(question, contaminant, belief);
        List<Attempt> attempts = attempts(question, base);
        List<Object> facts = new ArrayList<>();
        facts.add(base.decisions());
        facts.add(deposit);
        facts.add(panel);
        facts.addAll(attempts);
        addPanelFacts(question, facts);
        question.observations().forEach(o -> facts.add(new Seen(base.observations().get(o))));
        question.circumstances().forEach(c -> facts.add(new Happening(base.circumstances().get(c))));
        if (question.setting().sun().isEmpty()) {
            facts.add(new Missing("sun"));
        }
        if (question.setting().indoors().isEmpty() && !question.setting().outdoors()) {
            facts.add(new Missing("bay"));
        }
        if (question.setting().waterHardnessMgL().isEmpty()) {
            facts.add(new Missing("waterHardness"));
        }
        spread(question.extent()).ifPresent(area -> facts.add(new Spread(area)));
        question.setting().indoors().ifPresent(i -> facts.add(new Bay(i.volumeM3(), i.airChangesPerHour())));
        question.setting().airC().ifPresent(c -> facts.add(warmth(c, question.setting().humidity())));
        question.workers().forEach(w -> facts.add(new Person(level(w.level()), new HashSet<>(w.sensitisedTo()))));
        facts.add(new Ground(asked, !question.surface().contains(Question.UNKNOWN)));
        Conclusions derived = book.run(Phase.DERIVE, facts);
        // first aid is given whatever the weather, the shelf and the count of tries: the rules of today see what it is
        derived.of(FlushFirst.class).forEach(f -> facts.add(f.conclusion()));
        Surface surface = asked;
        for (String id : ids(derived)) {
            surface = tightened(surface, base.surfaces().get(id));
        }
        List<Might> mights = new ArrayList<>();
        for (Concluded<MightBe> might : derived.of(MightBe.class)) {
            Surface then = tightened(surface, base.surfaces().get(might.conclusion().surface()));
            if (!then.id().equals(surface.id())) {
                mights.add(new Might(then, might));
            }
        }
        return new Scene(contaminant, deposit, belief, asked, surface, mights, panel, attempts, facts, derived);
    }

    private static Set<String> ids(Conclusions derived) {
        Set<String> ids = new LinkedHashSet<>();
        derived.of(TreatAs.class).stream().map(t -> t.conclusion().surface()).sorted().forEach(ids::add);
        return ids;
    }

    private static Surface tightened(Surface surface, Surface by) {
        return List.of(surface.id().split("\\+")).contains(by.id()) ? surface : surface.stricter(by);
    }

    private static Surface asked(Question question, KnowledgeBase base) {
        List<Surface> named = question.surface().contains(Question.UNKNOWN)
                ? List.copyOf(base.surfaces().values())
                : question.surface().stream().distinct().sorted().map(base.surfaces()::get).toList();
        Surface strictest = named.get(0);
        for (Surface other : named) {
            strictest = tightened(strictest, other);
        }
        return strictest;
    }

    private static Panel panel(Question question) {
        Question.Setting setting = question.setting();
        boolean direct = setting.sunOrShade().equals("direct");
        double worked = PanelTemperature.celsius(setting.airC().orElse(MILD_AIR_C), setting.sunOrShade(),
                PanelTemperature.absorption(question.facts().colour().orElse("dark")), setting.windMs(),
                PanelTemperature.facing(question.facts().place().orElse(Question.UNKNOWN)));
        return new Panel(setting.panelC().orElse(worked), setting.panelC().isPresent(), direct, setting.windMs());
    }

    private static Warmth warmth(double airC, OptionalDouble humidity) {
        double damp = humidity.orElseGet(() -> HeatIndex.muggy(airC));
        return new Warmth(airC, damp, humidity.isPresent(), HeatIndex.celsius(airC, damp));
    }

    private static double warmest(Question question) {
        return question.facts().warmestPanelC().orElse(HOT_PANEL_C);
    }

    private static Belief belief(Question question, Contaminant contaminant) {
        if (question.ageHours().isEmpty()) {
            return contaminant.hardens().isNever() ? new Belief(0) : Belief.UNKNOWN;
        }
        return Belief.byAge(question.ageHours().getAsDouble(), Belief.hoursAt(contaminant.hardens().cool(),
                contaminant.hardens().hot(), warmest(question)));
    }

    private static Deposit deposit(Question question, Contaminant contaminant, Belief belief) {
        if (question.ageHours().isEmpty()) {
            return new Deposit(contaminant, false, 0, belief.hardened(), contaminant.marks().isNever() ? 0 : 1);
        }
        double age = question.ageHours().getAsDouble();
        double marked = Belief.byAge(age, Belief.hoursAt(contaminant.marks().cool(), contaminant.marks().hot(),
                warmest(question))).hardened();
        return new Deposit(contaminant, true, age, belief.hardened(), marked);
    }

    private static void addPanelFacts(Question question, List<Object> facts) {
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
        for (Question.Tried tried : question.tried()) {
            Optional<Method> method = tried.method().map(base.methods()::get);
            Agent agent = method.map(base::agentOf)
                    .or(() -> tried.substance().map(base.agents()::get))
                    .orElse(Agent.NONE);
            attempts.add(new Attempt(
                    tried.method().or(tried::substance).or(tried::text).orElse("something"),
                    method.map(Method::family).orElse(agent.family()), agent, tried.outcome(),
                    tried.times(), tried.dwellMinutes() * tried.times(), tried.hoursAgo(),
                    !tried.signs().isEmpty()));
        }
        return attempts;
    }

    List<Concluded<Assume>> assumptions() {
        return derived.of(Assume.class);
    }
}
