package rungwise.question;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.load.Mappers;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** What people at the wash bay say is understood, asked back or refused with what is near; never guessed. */
class EverydayWordsTest {
    private static final KnowledgeBase BASE = Base.advisor().knowledge();
    private static final JsonNode WRITTEN = tree("words/everyday.yaml");
    private static final JsonNode COLLECTED = tree("first-steps/words.yaml");
    private static final Map<String, String> FIELD = Map.of("contaminants", "contaminant", "surfaces", "surface", "methods", "wanted");
    private static final Map<String, Function<Question, String>> READ = Map.of("contaminants", q -> q.contaminant().orElseThrow(),
            "surfaces", q -> q.surface().get(0), "methods", q -> q.wanted().get(0));

    private static JsonNode tree(String file) {
        try {
            return Mappers.yaml().readTree(Files.readString(Path.of("src/test/resources", file)));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static String read(String kind, String word) {
        return READ.get(kind).apply(QuestionReader.read(question(kind, word), BASE));
    }

    private static ObjectNode question(String kind, String word) {
        ObjectNode question = Mappers.json().createObjectNode();
        if (kind.equals("methods")) {
            question.putArray("wanted").add(word);
        } else {
            question.put(FIELD.get(kind), word);
        }
        return question;
    }

    private static Problem refused(String kind, String word) {
        BadQuestion bad = catchThrowableOfType(BadQuestion.class, () -> QuestionReader.read(question(kind, word), BASE));
        assertThat(bad).as(word).isNotNull();
        assertThat(bad.problems()).as(word).hasSize(1);
        Problem problem = bad.problems().get(0);
        assertThat(problem.pointer()).isEqualTo("/" + FIELD.get(kind) + (kind.equals("methods") ? "/0" : ""));
        assertThat(problem.wrong()).contains("\"" + word + "\"");
        return problem;
    }

    private static Stream<String> kinds() {
        return FIELD.keySet().stream().sorted();
    }

    @Test
    void there_are_enough_pairs_to_mean_something() {
        assertThat(kinds().mapToInt(k -> WRITTEN.path(k).size()).sum()).isGreaterThanOrEqualTo(120);
    }

    @TestFactory
    Stream<DynamicTest> a_word_of_the_trade_means_its_entry() {
        return kinds().flatMap(kind -> WRITTEN.path(kind).properties().stream().map(pair -> DynamicTest.dynamicTest(
                kind + " " + pair.getKey(), () -> assertThat(read(kind, pair.getKey())).isEqualTo(pair.getValue().asString()))));
    }

    @TestFactory
    Stream<DynamicTest> a_collected_word_means_its_entry() {
        return kinds().flatMap(kind -> COLLECTED.path(kind).properties().stream().map(entry -> DynamicTest.dynamicTest(
                kind + " " + entry.getKey(), () -> entry.getValue().forEach(word ->
                        assertThat(read(kind, word.asString())).as(word.asString()).isEqualTo(entry.getKey())))));
    }

    @TestFactory
    Stream<DynamicTest> an_id_and_a_name_mean_their_entry() {
        Map<String, Map<String, String>> names = Map.of(
                "contaminants", of(BASE.contaminants(), c -> c.name()), "surfaces", of(BASE.surfaces(), s -> s.name()),
                "methods", of(BASE.methods(), m -> m.name()));
        return kinds().map(kind -> DynamicTest.dynamicTest(kind, () -> names.get(kind).forEach((id, name) -> {
            assertThat(read(kind, id)).isEqualTo(id);
            assertThat(read(kind, name.toUpperCase(java.util.Locale.ROOT))).isEqualTo(id);
            assertThat(read(kind, id.replace('_', '-'))).isEqualTo(id);
        })));
    }

    private static <T> Map<String, String> of(Map<String, T> entries, Function<T, String> name) {
        return entries.entrySet().stream().collect(java.util.stream.Collectors.toMap(Map.Entry::getKey, e -> name.apply(e.getValue())));
    }

    @TestFactory
    Stream<DynamicTest> a_word_too_wide_is_asked_back() {
        return kinds().flatMap(kind -> WRITTEN.path("tooWide").path(kind).valueStream().map(word -> DynamicTest.dynamicTest(
                kind + " " + word.asString(), () -> {
                    Problem problem = refused(kind, word.asString());
                    assertThat(problem.wrong()).endsWith("may mean several things");
                    assertThat(problem.remedy()).startsWith("say which: ").contains(", ");
                    if (kind.equals("surfaces")) {
                        assertThat(problem.choices()).hasSizeGreaterThan(1).allSatisfy(c -> assertThat(c.tell()).endsWith("."));
                    }
                })));
    }

    @TestFactory
    Stream<DynamicTest> what_was_collected_as_too_wide_names_at_least_what_was_collected() {
        return kinds().flatMap(kind -> COLLECTED.path("ambiguous").path(kind).properties().stream().map(pair -> DynamicTest.dynamicTest(
                kind + " " + pair.getKey(), () -> {
                    Problem problem = refused(kind, pair.getKey());
                    pair.getValue().forEach(id -> assertThat(problem.remedy()).contains(id.asString() + " ("));
                })));
    }

    @TestFactory
    Stream<DynamicTest> an_unknown_word_is_refused_with_what_is_near() {
        return kinds().flatMap(kind -> WRITTEN.path("unknown").path(kind).properties().stream().map(pair -> DynamicTest.dynamicTest(
                kind + " " + pair.getKey(), () -> {
                    Problem problem = refused(kind, pair.getKey());
                    assertThat(problem.wrong()).endsWith("is not known");
                    assertThat(problem.remedy()).startsWith("nearest are ").contains(pair.getValue().asString() + " (");
                })));
    }

    @Test
    void nothing_near_leads_to_the_search() {
        assertThat(refused("surfaces", "qqqqqqq").remedy()).startsWith(
                "nothing is near; look a shorter word up with \"rungwise find\" or GET /v1/find. Say the place first").contains("a magnet holds on steel");
    }

    @Test
    void paint_alone_is_answered_with_how_to_tell_what_it_is() {
        Problem problem = refused("surfaces", "paint");
        assertThat(problem.choices()).extracting(Choice::id).contains("clear_2k_sound", "single_stage_enamel", "matte_satin_clear");
        assertThat(problem.toString()).contains("\n  single_stage_enamel: Polish on a white cloth takes on the colour of the paint");
    }

    @Test
    void the_nearest_stands_first_with_its_name() {
        assertThat(refused("contaminants", "burd poop").remedy()).isEqualTo("nearest are bird_dropping (Bird dropping)");
    }

    @Test
    void every_field_that_names_an_entry_takes_words() {
        Question question = QuestionReader.read(Mappers.question().readTree("{contaminant: road tar, age: 12 days, surface: [clear coat, "
                + "Car wrap], neighbours: [window rubber], shelf: [tar remover, Rubbing alcohol], wanted: [clay bar], passedTests: "
                + "[White Spirit], consent: {granted: [machine polish]}, tried: [{method: two-bucket wash, outcome: no-change}]}"), BASE);
        assertThat(question.contaminant()).hasValue("tar_spot");
        assertThat(question.age()).isEqualTo("P12D");
        assertThat(question.surface()).containsExactly("clear_2k_sound", "wrap_gloss");
        assertThat(question.neighbours()).containsExactly("rubber_epdm_seal");
        assertThat(question.shelf()).hasValue(List.of("aliph_tar", "alc_70"));
        assertThat(question.wanted()).containsExactly("clay_fine");
        assertThat(question.passedTests()).containsExactly("aliph_tar");
        assertThat(question.consent().granted()).containsExactly("machine_finish");
        assertThat(question.tried().get(0).method()).hasValue("contact_wash_neutral");
    }

    @Test
    void an_answer_to_words_is_the_answer_to_their_ids() {
        assertThat(Base.ask("{contaminant: bird poop, age: yesterday, surface: factory paint}"))
                .isEqualTo(Base.ask("{contaminant: bird_dropping, age: P1D, surface: clear_2k_sound}"));
    }

    @Test
    void every_entry_has_some_words() {
        assertThat(BASE.contaminants().values()).allSatisfy(c -> assertThat(c.alsoCalled()).as(c.id()).hasSizeGreaterThanOrEqualTo(2));
        assertThat(BASE.surfaces().values()).allSatisfy(s -> assertThat(s.alsoCalled()).as(s.id()).isNotEmpty());
    }

    @Test
    void every_surface_that_a_wide_word_may_mean_can_be_told() {
        assertThat(BASE.questionWords().spoken().wideSurfaces().values()).isNotEmpty().allSatisfy(w -> w.mayBe().stream()
                .forEach(id -> assertThat(BASE.surfaces().get(id).tell()).as(id).isNotEmpty()));
    }

    /** Nobody is less careful of a bonnet than of any paint that it may have. */
    @TestFactory
    Stream<DynamicTest> a_place_with_its_usual_material_is_answered_for_all_that_it_may_be() {
        return WRITTEN.path("together").properties().stream().map(pair -> DynamicTest.dynamicTest(pair.getKey(), () -> {
            List<String> meant = pair.getValue().valueStream().map(JsonNode::asString).toList();
            Question question = QuestionReader.read(question("surfaces", pair.getKey()), BASE);
            assertThat(question.surface()).containsExactlyInAnyOrderElementsOf(meant);
            Set<String> barred = barred(pair.getKey());
            meant.forEach(one -> assertThat(barred).as(one).containsAll(barred(one)));
        }));
    }

    private static Set<String> barred(String surface) {
        return Base.advisor().answer(QuestionReader.read(question("surfaces", surface).put("contaminant", "tar_spot").put("age", "3 days"), BASE)).barred()
                .stream().map(b -> b.method()).collect(java.util.stream.Collectors.toSet());
    }
}
