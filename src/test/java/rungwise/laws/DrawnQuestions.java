package rungwise.laws;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import rungwise.Base;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.question.Question;

/** DrawnQuestions of every kind, weighted towards those that have a ladder. */
public final class DrawnQuestions {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    private static final Clashes CLASHES = Clashes.of(Base.advisor());
    private static final List<String> PAINT = KNOWN.surfaces().keySet().stream()
            .filter(s -> s.startsWith("clear_2k") || s.startsWith("ceramic")).toList();

    private DrawnQuestions() {
    }

    /** Any question, a third of them after some tries of the ladder's own rungs. */
    static Arbitrary<Question> any() {
        return Arbitraries.randomValue(r -> r.nextInt(3) == 0 ? tried(r, fresh(r)) : fresh(r));
    }

    /** Nothing tried yet. */
    static Arbitrary<Question> untried() {
        return Arbitraries.randomValue(DrawnQuestions::fresh);
    }

    /** Clear coat with film readings and every agreement: where abrasives come in reach. */
    static Arbitrary<Question> filmy() {
        return Arbitraries.randomValue(r -> {
            Question q = fresh(r);
            Question.Facts f = q.facts();
            double total = 95 + r.nextInt(100);
            return new Made(q).surface(List.of(pick(r, PAINT)))
                    .contaminant(pick(r, List.of("water_spot_etched", "overspray_2k", "acid_rain_etch", "swirl_marring",
                            "rubber_scuff", "paint_transfer")))
                    .facts(new Question.Facts(Optional.of(new Question.Span(total, total + 10)),
                            r.nextInt(3) == 0 ? OptionalDouble.empty() : OptionalDouble.of(10 + r.nextInt(45)),
                            f.colour(), OptionalDouble.of(400 + r.nextInt(3000)), f.vehicleYear(),
                            Optional.of(false), Optional.empty(), List.of(), f.warmestPanelC(), f.soiling(), f.protection()))
                    .circumstances(List.of()).shelf(Optional.empty()).neighbours(List.of())
                    .setting(new Question.Setting(OptionalDouble.of(20), OptionalDouble.of(20), Optional.of("shade"), 0,
                            OptionalDouble.empty(), Optional.empty(), true, Optional.empty()))
                    .consent(new Question.Consent(List.copyOf(KNOWN.gates().keySet()), List.of()))
                    .age("P" + (20 + r.nextInt(380)) + "D").made();
        });
    }

    /** Something reactive was put on the spot within the day. */
    static Arbitrary<Question> afterChemistry() {
        return Arbitraries.randomValue(r -> {
            Question fresh = new Made(fresh(r)).circumstances(List.of()).made();
            return new Made(fresh).tried(spent(r, CLASHES.before(Base.advisor().answer(fresh)))).made();
        });
    }

    /** Six reactive agents within the day; every other one clashes with something on the ladder, where anything would. */
    static List<Question.Tried> spent(Random r, List<String> clashing) {
        List<String> reactive = KNOWN.agents().values().stream().filter(a -> !a.reactive().isEmpty()).map(a -> a.id()).toList();
        List<Question.Tried> tried = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            tried.add(new Question.Tried(Optional.empty(), Optional.of(pick(r, i % 2 == 0 || clashing.isEmpty() ? reactive : clashing)),
                    Optional.empty(), "no-change", 1, 1, r.nextInt(20), Optional.empty(), List.of()));
        }
        return tried;
    }

    /** Two times in three drawn again, up to eight times, until there is a ladder of two rungs. */
    static Question fresh(Random r) {
        Question q = drawn(r);
        boolean wantsLadder = r.nextInt(3) > 0;
        for (int i = 0; wantsLadder && i < 8 && Base.advisor().answer(q).rungs().size() < 2; i++) {
            q = drawn(r);
        }
        return q;
    }

    public static Question drawn(Random r) {
        String contaminant = pick(r, KNOWN.contaminants().keySet());
        int days = r.nextBoolean() ? r.nextInt(12) : r.nextInt(401);
        List<String> surface = r.nextInt(12) == 0 ? List.of("unknown")
                : r.nextInt(10) == 0 ? some(r, KNOWN.surfaces().keySet(), 2)
                : List.of(r.nextBoolean() ? pick(r, PAINT) : pick(r, KNOWN.surfaces().keySet()));
        double low = 60 + r.nextInt(120);
        Question.Facts facts = new Question.Facts(
                maybe(r, x -> new Question.Span(low, low + x.nextInt(40))),
                number(r, 15, 65), maybe(r, x -> pick(x, List.of("dark", "medium", "light"))),
                r.nextInt(3) == 0 ? OptionalDouble.empty()
                        : OptionalDouble.of(r.nextInt(6) == 0 ? r.nextInt(95) : 100 + r.nextInt(4000)),
                r.nextBoolean() ? OptionalInt.of(1960 + r.nextInt(65)) : OptionalInt.empty(),
                maybe(r, x -> x.nextInt(5) == 0), Optional.empty(), List.of(), number(r, 5, 80), Optional.empty(),
                Optional.empty());
        Question.Setting setting = new Question.Setting(number(r, -5, 40), number(r, -5, 60),
                maybe(r, x -> pick(x, List.of("shade", "shade", "overcast", "direct"))), r.nextInt(6),
                r.nextBoolean() ? OptionalDouble.of(r.nextInt(100) / 100.0) : OptionalDouble.empty(),
                r.nextBoolean() ? Optional.empty() : Optional.of(new Question.Indoors(30 + r.nextInt(400), r.nextInt(8))), false,
                maybe(r, x -> new Question.Water(number(x, 0, 400), number(x, 0, 300))));
        Optional<List<String>> shelf = r.nextInt(3) > 0 ? Optional.empty() : Optional.of(things().stream()
                .filter(t -> r.nextInt(5) > 1).toList());
        List<String> gates = KNOWN.gates().values().stream().filter(g -> g.needsAgreement()).map(g -> g.id()).toList();
        List<String> granted = new ArrayList<>();
        List<String> refused = new ArrayList<>();
        for (String gate : gates) {
            int fate = r.nextInt(10);
            (fate < 3 ? granted : fate == 9 ? refused : new ArrayList<String>()).add(gate);
        }
        return new Question(r.nextInt(25) == 0 ? Optional.empty() : Optional.of(contaminant), List.of(), List.of(),
                r.nextInt(6) == 0 ? "unknown" : "P" + days + "D",
                r.nextBoolean() ? new Question.Extent(OptionalInt.of(1 + r.nextInt(40)), OptionalDouble.of(4), null) : null,
                surface, facts,
                r.nextInt(20) == 0 ? some(r, KNOWN.circumstances().keySet(), 1) : List.of(),
                r.nextInt(3) == 0 ? some(r, KNOWN.surfaces().keySet(), 1 + r.nextInt(2)) : List.of(), setting,
                r.nextBoolean() ? List.of(new Question.Worker("L" + (1 + r.nextInt(4)), List.of())) : List.of(),
                shelf, r.nextInt(4) == 0, new Question.Consent(granted, refused),
                r.nextBoolean() ? List.of("washed", "dried") : List.of(), r.nextInt(4) * 30, List.of(),
                some(r, KNOWN.methods().keySet(), r.nextInt(3)), List.of(),
                r.nextInt(4) == 0 ? Optional.of(new Question.Mixing(1000, number(r, 0, 20))) : Optional.empty());
    }

    /** After some of the ladder's own rungs changed nothing, the last one with any outcome but cleared. */
    static Question tried(Random r, Question q) {
        List<Answer.Rung> rungs = Base.advisor().answer(q).rungs();
        List<Question.Tried> tried = new ArrayList<>();
        int until = rungs.isEmpty() ? 0 : 1 + r.nextInt(Math.min(3, rungs.size()));
        for (int i = 0; i < until; i++) {
            String outcome = i < until - 1 ? "no-change" : pick(r, List.of("no-change", "no-change", "partly", "harm"));
            tried.add(attempt(rungs.get(i).method(), outcome, 1 + r.nextInt(2), rungs.get(i).dwell().from(), true));
        }
        return new Made(q).tried(tried).made();
    }

    static Question.Tried attempt(String method, String outcome, int times, double dwell, boolean prepared) {
        return new Question.Tried(Optional.of(method), Optional.empty(), Optional.empty(), outcome, times, dwell, 1,
                Optional.of(prepared), List.of());
    }

    static List<String> things() {
        return Stream.concat(KNOWN.agents().keySet().stream(), KNOWN.tools().keySet().stream()).toList();
    }

    static <T> T pick(Random r, Collection<T> from) {
        return List.copyOf(from).get(r.nextInt(from.size()));
    }

    private static List<String> some(Random r, Collection<String> from, int many) {
        List<String> all = new ArrayList<>(from);
        Collections.shuffle(all, r);
        return List.copyOf(all.subList(0, many));
    }

    private static <T> Optional<T> maybe(Random r, Function<Random, T> value) {
        return r.nextInt(3) == 0 ? Optional.empty() : Optional.of(value.apply(r));
    }

    private static OptionalDouble number(Random r, int from, int to) {
        return r.nextInt(3) == 0 ? OptionalDouble.empty() : OptionalDouble.of(from + r.nextInt(to - from + 1));
    }
}
