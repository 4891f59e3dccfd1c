package rungwise.question;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.deposit.Observation;
import rungwise.knowledge.method.Gate;
import rungwise.knowledge.surface.Place;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.knowledge.surface.Trait;
import rungwise.knowledge.words.EverydayProduct;
import rungwise.text.Texts;

/**
 * Which of the facts that a question gave could count in its answer. For each field stands here what reads it and when; asking
 * again without each fact would tell it exactly, and cost as many answers as there are facts. A fact is called unused only where
 * nothing could have read it; that it is called used does not say that the answer hung on it.
 *
 * @param used   pointers of facts that could count
 * @param unused the others, each with why it did not
 */
public record FactUse(List<String> used, List<Unused> unused) {
    /**
     * A fact that did not count.
     *
     * @param why a sentence for whoever gave it
     */
    public record Unused(String pointer, String why) {
    }

    /** For each field the id of the sentence that says why it did not count here; a field without an entry always counts. */
    private static final Map<String, Function<Asked, Optional<String>>> WHY_NOT = Map.ofEntries(
            Map.entry("/observations/*", a -> a.observationFallsSilent()),
            Map.entry("/notSeen/*", a -> a.notSeenFallsSilent()),
            Map.entry("/extent/diameterMm", a -> a.unless(a.question.extent().areaM2().isEmpty(), "the-area-is-told")),
            Map.entry("/facts/totalFilmMicrons", a -> a.unless(a.hasFilm(), "no-film-here")),
            Map.entry("/facts/clearMicrons", a -> a.unless(a.hasFilm(), "no-film-here")),
            Map.entry("/facts/paintAgeDays", a -> a.unless(a.hasPaint(), "no-paint-here")),
            Map.entry("/facts/refinished", a -> a.unless(a.hasPaint(), "no-paint-here")),
            Map.entry("/facts/vehicleYear", a -> a.unless(a.question.facts().vehicleYear().orElse(0) >= 1990, "unknown-counts-as-old")),
            Map.entry("/facts/colour", a -> a.unless(a.isDark() || a.sunWarms(), "nothing-warms-by-colour")),
            Map.entry("/facts/place", a -> a.unless(a.placeCounts(), "place-adds-nothing")),
            Map.entry("/facts/warmestPanelC", a -> a.unless(a.warmthCounts(), "warmth-ages-nothing")),
            Map.entry("/facts/soiling", a -> a.unless(a.isHeavilySoiled() || a.isFound("soiling"), "light-soil-asks-nothing")),
            Map.entry("/facts/protection", a -> a.unless(a.protectionCounts(), "protection-changes-nothing")),
            Map.entry("/setting/windMs", a -> a.unless(!a.touched.methods().isEmpty(), "nothing-dries")),
            Map.entry("/setting/water/hardnessMgL", a -> a.unless(!a.touched.methods().isEmpty(), "nothing-is-rinsed")),
            Map.entry("/setting/water/alkalinityMgL", a -> a.unless(!a.touched.methods().isEmpty(), "nothing-is-rinsed")),
            Map.entry("/workers/*/sensitisedTo/*", a -> a.unless(a.isBorne(), "nobody-uses-it")),
            Map.entry("/shelfStrict", a -> a.unless(a.question.shelf().isPresent(), "no-shelf")),
            Map.entry("/consent/granted/*", a -> a.unless(a.isAsked(a.question.consent().granted()), "nobody-asked")),
            Map.entry("/consent/refused/*", a -> a.unless(a.isAsked(a.question.consent().refused()), "nobody-asked")),
            Map.entry("/passedTests/*", a -> a.unless(a.isTested(), "no-test-asked")),
            Map.entry("/done/*", a -> a.unless(a.isAwaited(), "no-step-asked")),
            Map.entry("/tried/*/text", a -> a.unless(a.wordsCount(), "words-name-nothing")),
            Map.entry("/tried/*/prepared", a -> a.unless(!a.tried().counts(), "prepared-is-assumed")));

    /** What still counts where work stops before any rung; paint that cures is left alone, whoever takes over. */
    private static final Set<String> OF_HAZARDS = Set.of("/contaminant", "/circumstances/*", "/surface/*", "/extent/areaM2",
            "/extent/diameterMm", "/extent/spots", "/tried/*/method", "/tried/*/substance", "/tried/*/text", "/tried/*/outcome", "/tried/*/signs/*",
            "/tried/*/times", "/tried/*/hoursAgo", "/age", "/observations/*", "/facts/place", "/facts/paintAgeDays");

    /** What tells beside these what an unnamed deposit may be, whether work stops or not. */
    private static final Set<String> OF_NAMING = Set.of("/facts/warmestPanelC", "/tried/*/prepared", "/notSeen/*");

    /** Whether a fact, called by its last field, still counts where work stops before any rung. */
    public static boolean countsWhereWorkStops(String fact) {
        return OF_HAZARDS.stream().anyMatch(kind -> List.of(kind.split("/")).contains(fact));
    }

    /** What was given and what of it could count. */
    public static FactUse of(Question question, KnowledgeBase base, Touched touched) {
        List<String> used = new ArrayList<>();
        List<Unused> unused = new ArrayList<>();
        for (String pointer : FactsGiven.of(question)) {
            String kind = FactsGiven.kind(pointer);
            Asked asked = new Asked(question, base, touched, pointer);
            Optional<String> why = touched.stopped() && !asked.countsWhereWorkStops(kind) ? Optional.of("work-stops-first")
                    : WHY_NOT.getOrDefault(kind, a -> Optional.empty()).apply(asked);
            why.ifPresentOrElse(id -> unused.add(new Unused(pointer, Texts.said("unused." + id))), () -> used.add(pointer));
        }
        return new FactUse(List.copyOf(used), List.copyOf(unused));
    }

    /** The fields of which something must hold, so that they count. */
    static Set<String> conditional() {
        return WHY_NOT.keySet();
    }

    /** One fact of a question, beside what its answer came by. */
    private record Asked(Question question, KnowledgeBase base, Touched touched, String pointer) {
        Optional<String> unless(boolean counts, String why) {
            return counts ? Optional.empty() : Optional.of(why);
        }

        private String word(List<String> list) {
            return list.get(FactsGiven.place(pointer));
        }

        Question.Tried tried() {
            return question.tried().get(FactsGiven.place(pointer));
        }

        boolean countsWhereWorkStops(String kind) {
            return OF_HAZARDS.contains(kind) || !isNamed() && OF_NAMING.contains(kind);
        }

        boolean isNamed() {
            return question.contaminant().filter(c -> !c.equals(Question.UNKNOWN)).isPresent();
        }

        /** A sign of what it is counts where that is not known; a sign of danger or of the surface always. */
        Optional<String> observationFallsSilent() {
            Observation sign = base.observations().get(word(question.observations()));
            if (sign.treatAs().isPresent() || sign.stops().isPresent() || touched.signs().contains(sign.id())
                    || !isNamed() && (sign.speaks() || !sign.implies().isEmpty())) {
                return Optional.empty();
            }
            return Optional.of(sign.speaks() ? "the-deposit-is-named" : "sign-tells-a-person-only");
        }

        /** What is not there tells only what lies there. */
        Optional<String> notSeenFallsSilent() {
            Observation sign = base.observations().get(word(question.notSeen()));
            return isNamed() ? Optional.of("the-deposit-is-named") : unless(sign.speaks(), "sign-tells-a-person-only");
        }

        /** How fast it hardens and marks; what it may be hangs on that too. */
        boolean warmthCounts() {
            return question.ageHours().isPresent() && (!isNamed() || !touched.contaminant().hardens().isNever()
                    || !touched.contaminant().marks().isNever());
        }

        boolean hasPaint() {
            return touched.surface().mayBe(SurfaceKind.PAINT) || touched.surface().mayBe(SurfaceKind.FILM);
        }

        boolean hasFilm() {
            return touched.surface().mayBe(SurfaceKind.PAINT) || touched.surface().is(Trait.LOSES_FILM);
        }

        boolean isDark() {
            return question.facts().colour().filter("dark"::equals).isPresent();
        }

        /** Colour and the way a panel faces count where its warmth is worked out from the sun. */
        boolean sunWarms() {
            return question.setting().panelC().isEmpty() && !question.setting().sunOrShade().equals("shade");
        }

        boolean placeCounts() {
            Place place = base.questionWords().places().get(question.facts().place().orElseThrow());
            return place.edge() || sunWarms() || isOnBothSides() || !isNamed() && place.sign().isPresent() || !place.traits().isEmpty();
        }

        /** Of glass and plastic the place tells whether it is inside. */
        boolean isOnBothSides() {
            return touched.surface().kind() == SurfaceKind.GLASS || touched.surface().kind() == SurfaceKind.PLASTIC;
        }

        boolean isHeavilySoiled() {
            return question.facts().soiling().filter("heavy"::equals).isPresent();
        }

        /** A reason that says what was told of the body shows it, whatever it is. */
        boolean isFound(String figure) {
            return touched.figures().contains(figure);
        }

        boolean protectionCounts() {
            boolean treats = base.questionWords().protections().get(question.facts().protection().orElseThrow()).treatAs().isPresent();
            return isFound("protection") || (treats ? touched.surface().mayBe(SurfaceKind.PAINT) : isHeavilySoiled());
        }

        boolean isBorne() {
            Question.Worker worker = question.workers().get(FactsGiven.place(pointer));
            String word = worker.sensitisedTo().get(Integer.parseInt(pointer.substring(pointer.lastIndexOf('/') + 1)));
            Set<String> all = new Sensitisation(base).of(List.of(word));
            return base.agents().values().stream().anyMatch(a -> all.contains(a.id()) || all.contains(a.family())
                    || a.sensitisers().stream().anyMatch(all::contains));
        }

        boolean isAsked(List<String> list) {
            return touched.gates().contains(word(list)) || touched.methods().contains(word(list));
        }

        boolean isTested() {
            return touched.methods().contains(word(question.passedTests())) && touched.gates().stream().map(base.gates()::get)
                    .anyMatch(g -> g.opens().testPassed());
        }

        /** A word counts where a step or a gate waits for it, or a method is done by it. */
        boolean isAwaited() {
            String word = word(question.done());
            return touched.done().contains(word) || touched.gates().contains(word)
                    || touched.gates().stream().map(base.gates()::get).map(Gate::opens).anyMatch(o -> o.done().filter(word::equals).isPresent())
                    || touched.methods().stream().map(base.methods()::get).anyMatch(m -> m.doneBy().filter(word::equals).isPresent());
        }

        boolean wordsCount() {
            List<EverydayProduct> named = new TriedAgents(base).named(tried().text().orElseThrow());
            return tried().method().isEmpty() && tried().substance().isEmpty() || !named.isEmpty();
        }
    }
}
