package rungwise.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import rungwise.Base;
import rungwise.knowledge.load.Mappers;
import rungwise.knowledge.safety.AirLimit;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.question.Question;
import rungwise.question.QuestionReader;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * What others published, held against the ladder: their prohibitions, requirements and numbers are respected, and their
 * orders of work are kept or the pair is listed with the reason. The source of each is named in the data by its id.
 */
class PublishedCasesTest {
    private static final Path FOLDER = Path.of("src/test/resources/published");
    private static final String SOUND = "{totalFilmMicrons: {min: 112, max: 120}, clearMicrons: 48, paintAgeDays: 2900, refinished: false}";
    private static final String MILD = "{airC: 20, panelC: 20, sun: shade, outdoors: true}";
    private static final long OFFERED = 28;
    private static final int LAST = Integer.MAX_VALUE;

    private static final Advisor ADVISOR = Base.advisor();

    private static List<JsonNode> entries(String file) {
        try {
            return StreamSupport.stream(Mappers.yaml().readTree(Files.readString(FOLDER.resolve(file))).spliterator(), false).toList();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void every_entry_names_a_source_of_this_base_and_only_known_methods() {
        Stream.concat(entries("sequences.yaml").stream(), entries("limits.yaml").stream()).forEach(entry -> {
            assertThat(ADVISOR.knowledge().sources()).containsKey(entry.path("id").asString());
            assertThat(ADVISOR.knowledge().methods().keySet()).as(entry.path("id").asString()).containsAll(methods(entry));
        });
    }

    /** A mistyped key would check nothing. */
    @Test
    void every_entry_has_only_the_keys_that_are_looked_at() {
        entries("sequences.yaml").forEach(entry -> {
            assertThat(entry.propertyNames()).isSubsetOf("id", "question", "inferred", "steps", "otherwise");
            entry.path("steps").forEach(s -> assertThat(s.propertyNames()).isSubsetOf("does", "as", "wash", "rank", "none", "without"));
        });
        entries("limits.yaml").forEach(entry -> {
            assertThat(entry.propertyNames()).isSubsetOf("id", "says", "question", "never", "needs", "most");
            assertThat(entry.path("needs").propertyNames()).isSubsetOf("gates", "ppe", "after", "before", "next", "order");
            assertThat(entry.path("most").propertyNames()).isSubsetOf("pressureBar", "filmMicrons", "dwellMinutes", "surfaceBar", "shiftPpm", "marksHotHours");
            assertThat(List.of("never", "needs", "most")).anyMatch(entry::has);
        });
    }

    private static Set<String> methods(JsonNode entry) {
        Set<String> methods = new TreeSet<>(names(entry.path("never")));
        entry.path("steps").forEach(s -> methods.addAll(names(s.path("as"))));
        return methods;
    }

    @TestFactory
    Stream<DynamicTest> prohibitions_requirements_and_numbers_are_respected() {
        return entries("limits.yaml").stream().map(entry -> DynamicTest.dynamicTest(
                entry.path("id").asString() + ": " + entry.path("says").asString(), () -> assertThat(broken(entry)).isEmpty()));
    }

    private static List<String> broken(JsonNode entry) {
        List<String> broken = new ArrayList<>();
        if (entry.has("question")) {
            Answer answer = ADVISOR.answer(question(entry), true);
            Set<String> named = named(answer);
            names(entry.path("never")).stream().filter(named::contains).forEach(m -> broken.add(m + " is offered"));
            needs(entry.path("needs"), answer, broken);
            most(entry.path("most"), answer, broken);
        }
        entry.path("most").path("shiftPpm").properties().forEach(limit -> {
            double held = ADVISOR.knowledge().exposures().values().stream()
                    .filter(e -> e.id().startsWith(limit.getKey())).flatMap(e -> e.limits().stream())
                    .filter(l -> l.unit() == AirLimit.Unit.PPM && l.over() == AirLimit.Over.SHIFT)
                    .mapToDouble(AirLimit::value).min().orElse(Double.POSITIVE_INFINITY);
            if (held > limit.getValue().asDouble()) {
                broken.add("the base allows " + held + " ppm");
            }
        });
        entry.path("most").path("surfaceBar").properties().forEach(limit -> {
            double held = ADVISOR.knowledge().surfaces().get(limit.getKey()).maxPressureBar();
            if (held > limit.getValue().asDouble()) {
                broken.add("the base lets " + held + " bar on " + limit.getKey());
            }
        });
        entry.path("most").path("marksHotHours").properties().forEach(limit -> {
            double hot = ADVISOR.knowledge().contaminants().get(limit.getKey()).marks().hot();
            if (hot > limit.getValue().asDouble()) {
                broken.add("the base says a mark comes after " + hot + " h of heat");
            }
        });
        return broken;
    }

    private static void needs(JsonNode needs, Answer answer, List<String> broken) {
        List<Answer.Rung> rungs = rungs(answer);
        needs.path("gates").properties().forEach(g -> names(g.getValue()).forEach(gate -> expect(rungs.stream()
                .filter(r -> r.method().equals(g.getKey())).anyMatch(r -> r.gates().stream().anyMatch(x -> x.id().equals(gate))),
                g.getKey() + " is not offered with gate " + gate, broken)));
        needs.path("ppe").properties().forEach(p -> names(p.getValue()).forEach(item -> expect(rungs.stream()
                .filter(r -> r.method().equals(p.getKey())).anyMatch(r -> r.ppe().stream().anyMatch(x -> x.item().equals(item))),
                p.getKey() + " is not offered with " + item, broken)));
        names(needs.path("after")).forEach(step -> expect(answer.after().stream().anyMatch(s -> s.step().equals(step)),
                step + " does not follow", broken));
        names(needs.path("before")).forEach(step -> expect(answer.before().stream().anyMatch(s -> s.step().equals(step)),
                step + " does not come first", broken));
        names(needs.path("next")).forEach(next -> expect(answer.next().action().equals(next),
                "next is " + answer.next().action(), broken));
        needs.path("order").forEach(pair -> {
            List<String> order = ADVISOR.order(answer.question());
            int first = order.indexOf(pair.path(0).asString());
            int then = order.indexOf(pair.path(1).asString());
            expect(first >= 0 && then >= 0 && first < then, pair + " are not in this order", broken);
        });
    }

    private static void most(JsonNode most, Answer answer, List<String> broken) {
        most.path("dwellMinutes").properties().forEach(d -> expect(rungs(answer).stream().anyMatch(r -> r.method().equals(d.getKey())),
                d.getKey() + " is not offered, so its dwell says nothing", broken));
        expect(!most.has("pressureBar") || rungs(answer).stream().anyMatch(r -> r.pressureBar().isPresent()),
                "no jet is offered, so its pressure says nothing", broken);
        if (most.has("filmMicrons")) {
            double together = rungs(answer).stream().mapToDouble(r -> r.severity().filmMicrons() * r.tries().allowed()).sum();
            expect(together > 0 && together <= most.path("filmMicrons").asDouble(), "all tries of all rungs take " + together + " µm", broken);
        }
        for (Answer.Rung rung : rungs(answer)) {
            expect(!most.has("pressureBar") || rung.pressureBar().orElse(0.0) <= most.path("pressureBar").asDouble(),
                    rung.method() + " at " + rung.pressureBar() + " bar", broken);
            JsonNode dwell = most.path("dwellMinutes").path(rung.method());
            expect(dwell.isMissingNode() || rung.dwell().to() <= dwell.asDouble(),
                    rung.method() + " stays " + rung.dwell().to() + " min", broken);
        }
    }

    private static void expect(boolean met, String otherwise, List<String> broken) {
        if (!met) {
            broken.add(otherwise);
        }
    }

    @TestFactory
    Stream<DynamicTest> published_orders_are_kept_or_the_pair_is_listed_with_its_reason() {
        return entries("sequences.yaml").stream().map(entry -> DynamicTest.dynamicTest(entry.path("id").asString(), () -> {
            Set<List<String>> excused = new HashSet<>();
            entry.path("otherwise").forEach(pair -> {
                assertThat(pair.path(2).asString()).as("the reason of " + pair).isNotBlank();
                excused.add(List.of(pair.path(0).asString(), pair.path(1).asString()));
            });
            // a pair that is no longer turned needs no reason any more
            assertThat(new Sequenced(entry).turned()).containsExactlyInAnyOrderElementsOf(excused);
        }));
    }

    /** What became of a published step, best first. BESIDE is named elsewhere than on the ladder: slow, or for a mark. */
    private enum What { OFFERED, BESIDE, PASSED_OVER, BARRED, NOWHERE, NOT_HELD }

    /** With the step of worth, or the reasons, by which it is not offered. */
    private record Fate(What what, Set<String> by) {
        String key() {
            return what.name().toLowerCase(Locale.ROOT);
        }

        @Override
        public String toString() {
            return key() + (by.isEmpty() ? "" : " by " + new TreeSet<>(by));
        }
    }

    /** A step that a person is not offered has its reason with it, and a reason whose difference has gone goes too. */
    @TestFactory
    Stream<DynamicTest> each_published_step_is_on_the_printed_ladder_or_says_why_not() {
        return entries("sequences.yaml").stream().map(entry -> DynamicTest.dynamicTest(entry.path("id").asString(), () -> {
            entry.path("steps").forEach(s -> assertThat(s.path("without").path("why").asString(s.has("without") ? "" : "-"))
                    .as("why " + s + " is not offered").isNotBlank());
            assertThat(new Sequenced(entry).unexplained()).isEmpty();
        }));
    }

    /** What an answer puts before the one who works: first aid, preparation, the rungs, and who takes over. */
    private static Set<String> printed(Answer answer) {
        Set<String> printed = new TreeSet<>();
        answer.next().method().ifPresent(printed::add);
        answer.before().forEach(s -> printed.add(s.step()));
        answer.rungs().forEach(r -> printed.add(r.method()));
        answer.whoTakesOver().ifPresent(w -> printed.add(w.method()));
        return printed;
    }

    /** One published order beside ours. */
    private static final class Sequenced {
        private final Answer answer;
        private final List<String> order;
        private final List<JsonNode> steps = new ArrayList<>();

        Sequenced(JsonNode entry) {
            Question question = question(entry);
            answer = ADVISOR.answer(question, true);
            order = ADVISOR.order(question);
            entry.path("steps").forEach(steps::add);
        }

        /** Where a step stands with us; empty where it is barred or no work on the deposit itself. */
        Optional<Integer> place(JsonNode step) {
            List<String> before = answer.before().stream().map(Answer.Around::step).toList();
            for (String method : names(step.path("as"))) {
                if (before.contains(method)) {
                    return Optional.of(before.indexOf(method) - before.size());
                }
                if (order.contains(method)) {
                    return Optional.of(order.indexOf(method));
                }
                if (answer.whoTakesOver().filter(w -> w.method().equals(method)).isPresent()) {
                    return Optional.of(LAST);
                }
            }
            return Optional.empty();
        }

        /** The working steps, which are those that a source does not share with every other. */
        Stream<JsonNode> working() {
            return IntStream.range(0, steps.size()).filter(i -> !isWash(i)).mapToObj(steps::get);
        }

        /** Where a step is on the printed ladder, or what became of it: of several that would do, the best. */
        Fate fate(JsonNode step) {
            return names(step.path("as")).stream().map(this::fate).min(Comparator.comparing(Fate::what)).orElse(new Fate(What.NOT_HELD, Set.of()));
        }

        private Fate fate(String method) {
            if (printed(answer).contains(method)) {
                return new Fate(What.OFFERED, Set.of());
            }
            if (named(answer).contains(method)) {
                return new Fate(What.BESIDE, Set.of());
            }
            return answer.passedOver().stream().filter(p -> p.method().equals(method)).findFirst()
                    .map(p -> new Fate(What.PASSED_OVER, Set.of(p.step())))
                    .or(() -> answer.barred().stream().filter(b -> b.method().equals(method)).findFirst().map(b -> new Fate(What.BARRED,
                            b.because().stream().map(r -> r.reason().id()).collect(Collectors.toSet()))))
                    .orElse(new Fate(What.NOWHERE, Set.of()));
        }

        /** Steps without a reason, reasons of another fate, and reasons of steps that are offered by now. */
        List<String> unexplained() {
            List<String> wrong = new ArrayList<>();
            working().filter(s -> s.has("as")).forEach(step -> {
                Fate fate = fate(step);
                JsonNode given = step.path("without");
                String where = step.path("as").path(0).asString() + " is " + fate;
                if (fate.what() == What.OFFERED && !given.isMissingNode()) {
                    wrong.add(where + ": no difference any more");
                } else if (fate.what() != What.OFFERED && !given.has(fate.key())) {
                    wrong.add(where + ": no reason");
                } else if (fate.what() != What.OFFERED && !fate.by().isEmpty() && !fate.by().contains(given.path(fate.key()).asString())) {
                    wrong.add(where + ", not by " + given.path(fate.key()).asString());
                }
            });
            return wrong;
        }

        int rank(int step) {
            return steps.get(step).path("rank").asInt(step + 1);
        }

        List<List<String>> turned() {
            List<List<String>> turned = new ArrayList<>();
            pairs(true).filter(p -> place(steps.get(p[0])).isPresent() && place(steps.get(p[1])).isPresent()
                    && place(steps.get(p[0])).get() > place(steps.get(p[1])).get()).forEach(p -> turned.add(List.of(
                    steps.get(p[0]).path("as").path(0).asString(), steps.get(p[1]).path("as").path(0).asString())));
            return turned;
        }

        Stream<int[]> pairs(boolean washes) {
            return IntStream.range(0, steps.size()).boxed().flatMap(i -> IntStream.range(i + 1, steps.size())
                    .filter(j -> rank(i) < rank(j)).filter(j -> washes || !isWash(i) && !isWash(j))
                    .mapToObj(j -> new int[]{i, j}));
        }

        boolean isWash(int step) {
            return steps.get(step).path("wash").asBoolean(false);
        }

        /** Kendall's tau-b over the steps that are printed, or over all that have a place; empty where fewer than two have. */
        Optional<Double> tau(boolean washes, boolean printed) {
            List<double[]> points = IntStream.range(0, steps.size()).filter(i -> washes || !isWash(i))
                    .filter(i -> !printed || fate(steps.get(i)).what() == What.OFFERED)
                    .filter(i -> place(steps.get(i)).isPresent())
                    .mapToObj(i -> new double[]{rank(i), place(steps.get(i)).get()}).toList();
            double agree = 0;
            double leftPairs = 0;
            double rightPairs = 0;
            for (int i = 0; i < points.size(); i++) {
                for (int j = i + 1; j < points.size(); j++) {
                    double left = Math.signum(points.get(j)[0] - points.get(i)[0]);
                    double right = Math.signum(points.get(j)[1] - points.get(i)[1]);
                    agree += left * right;
                    leftPairs += left * left;
                    rightPairs += right * right;
                }
            }
            return leftPairs == 0 || rightPairs == 0 ? Optional.empty() : Optional.of(agree / Math.sqrt(leftPairs * rightPairs));
        }
    }

    @Test
    void the_ladder_agrees_with_what_was_published() {
        List<Sequenced> all = entries("sequences.yaml").stream().map(Sequenced::new).toList();
        double tauAll = tau(all, true, false);
        double tau = tau(all, false, false);
        double printed = tau(all, true, true);
        long incomparable = all.stream().mapToLong(s -> s.pairs(false).filter(p -> s.place(s.steps.get(p[0])).isEmpty()
                || s.place(s.steps.get(p[1])).isEmpty()).count()).sum();
        Map<What, Long> fates = all.stream().flatMap(s -> s.working().map(s::fate)).collect(Collectors.groupingBy(Fate::what,
                () -> new EnumMap<>(What.class), Collectors.counting()));
        long steps = all.stream().mapToLong(s -> s.steps.size()).sum();
        long mapped = all.stream().mapToLong(s -> s.steps.stream().filter(x -> x.has("as")).count()).sum();
        long forbidden = 0;
        long byRule = 0;
        List<String> absent = new ArrayList<>();
        for (JsonNode entry : entries("limits.yaml")) {
            if (!entry.has("never")) {
                continue;
            }
            Set<String> barred = new TreeSet<>();
            ADVISOR.answer(question(entry), true).barred().forEach(b -> barred.add(b.method()));
            List<String> never = names(entry.path("never"));
            forbidden += never.size();
            byRule += never.stream().filter(barred::contains).count();
            never.stream().filter(m -> !barred.contains(m)).forEach(m -> absent.add(entry.path("id").asString() + " " + m));
        }
        long sources = Stream.concat(entries("sequences.yaml").stream(), entries("limits.yaml").stream())
                .map(e -> e.path("id").asString()).distinct().count();
        System.out.printf(Locale.ROOT, "published cases: %d sources; working steps on the printed ladder %s; Kendall tau-b "
                + "%.3f of what is printed, washes too; of all that has a place %.3f without washes, %.3f with; %d of %d steps mapped; %d pairs not comparable; %d of %d prohibited methods "
                + "barred by rule, not so: %s%n", sources, fates.toString().toLowerCase(Locale.ROOT), printed, tau, tauAll, mapped, steps, incomparable,
                byRule, forbidden, absent);
        assertThat(sources).isEqualTo(58);
        assertThat(mapped).isGreaterThanOrEqualTo(Math.round(0.9 * steps));
        // a wish of 0.9 is missed; the pairs that this base turns stand in the data with their reasons
        assertThat(tau).isGreaterThanOrEqualTo(0.74);
        // what is offered of them today; it may only rise
        assertThat(fates.get(What.OFFERED)).isGreaterThanOrEqualTo(OFFERED);
        assertThat((double) byRule / forbidden).isGreaterThanOrEqualTo(0.9);
    }

    private static double tau(List<Sequenced> all, boolean washes, boolean printed) {
        return all.stream().map(s -> s.tau(washes, printed)).flatMap(Optional::stream).mapToDouble(t -> t).average().orElseThrow();
    }

    private static Question question(JsonNode entry) {
        ObjectNode question = entry.path("question").deepCopy().asObject();
        if (!question.has("setting")) {
            question.set("setting", Mappers.question().readTree(MILD));
        }
        if (ADVISOR.knowledge().surfaces().get(question.path("surface").asString()).kind() == SurfaceKind.PAINT
                && !question.path("surface").asString().contains("fresh")) {
            question.set("facts", Mappers.question().readTree(SOUND));
        }
        return QuestionReader.read(question, ADVISOR.knowledge());
    }

    private static List<Answer.Rung> rungs(Answer answer) {
        return Stream.concat(answer.rungs().stream(), answer.alternatives().stream().map(Answer.Alternative::rung)).toList();
    }

    /** Every method that the answer tells somebody to use. */
    private static Set<String> named(Answer answer) {
        Set<String> named = new TreeSet<>();
        answer.before().forEach(s -> named.add(s.step()));
        answer.after().forEach(s -> named.add(s.step()));
        rungs(answer).forEach(r -> {
            named.add(r.method());
            r.bridgeBefore().forEach(b -> named.addAll(b.steps()));
            r.ifMarked().forEach(s -> named.add(s.step()));
        });
        answer.whoTakesOver().ifPresent(w -> named.add(w.method()));
        return named;
    }

    private static List<String> names(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false).map(JsonNode::asString).toList();
    }
}
