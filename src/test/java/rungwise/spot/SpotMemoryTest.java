package rungwise.spot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwise.Base;
import rungwise.answer.Answer;
import rungwise.knowledge.load.Mappers;
import rungwise.question.BadQuestion;
import rungwise.question.Problem;
import rungwise.question.Question;
import rungwise.question.QuestionReader;
import rungwise.shoplog.Attempt;
import rungwise.shoplog.AttemptReader;
import rungwise.shoplog.BadAttempt;
import rungwise.shoplog.Cursor;
import rungwise.shoplog.KeyReused;
import rungwise.shoplog.Lessons;
import rungwise.shoplog.Said;
import rungwise.shoplog.SenderKey;
import rungwise.shoplog.Shoplog;
import rungwise.shoplog.Teacher;
import rungwise.shoplog.Undone;
import tools.jackson.databind.JsonNode;

/** A spot from its first question on, with a clock that the test sets. */
class SpotMemoryTest {
    private static final Instant NOON = Instant.parse("2026-05-04T12:00:00Z");
    private static final String TAR = "{contaminant: tar, age: 12 days, surface: clear_2k_sound, extent: {spots: 20, diameterMm: 4}, "
            + "facts: {paintAgeDays: 2000, colour: light}, setting: {airC: 19, panelC: 18, sun: shade, water: {hardnessMgL: 90}}, "
            + "done: [washed, dry]}";

    @TempDir
    private Path folder;
    private Shoplog log;
    private Teacher teacher;
    private Instant now = NOON;
    private SpotMemory memory;

    @BeforeEach
    void open() {
        log = Shoplog.open(folder.toString());
        teacher = new Teacher(log, Base.advisor().knowledge());
        memory = new SpotMemory(Base.advisor(), log.spots(), teacher::fresh, () -> now);
    }

    @AfterEach
    void close() {
        log.close();
    }

    private static JsonNode yaml(String text) {
        return Mappers.question().readTree(text);
    }

    private SpotNow begin(String question) {
        return memory.begin(yaml(question), Optional.empty());
    }

    private SpotTried attempt(String id, String attempt) {
        return memory.attempt(id, yaml(attempt), Optional.empty());
    }

    private SpotNow tell(String id, JsonNode facts) {
        return memory.tell(id, facts, Optional.empty());
    }

    private void hoursLater(double hours) {
        now = now.plus(Duration.ofMinutes(Math.round(hours * 60)));
    }

    private static Question question(SpotNow spot) {
        return QuestionReader.read(spot.question(), Base.advisor().knowledge());
    }

    private static List<String> missing(Answer answer) {
        Answer.Rung first = answer.rungs().get(0);
        return first.gates().stream().map(Answer.GateState::id).filter(first::isMissing).toList();
    }

    private static List<String> pointers(List<Problem> problems) {
        return problems.stream().map(Problem::pointer).toList();
    }

    private static List<Problem> wrong(BadAttempt bad) {
        return bad.problems();
    }

    @Test
    void a_spot_is_answered_as_a_ladder_is_and_keeps_what_was_asked_in_ids() {
        SpotNow spot = begin(TAR);
        assertThat(spot.answer().answer()).usingRecursiveComparison().isEqualTo(
                Base.advisor().answer(QuestionReader.read(yaml(TAR), Base.advisor().knowledge())));
        assertThat(spot.question().path("contaminant").asString()).isEqualTo("tar_spot");
        assertThat(spot.question().path("done").toString()).isEqualTo("[\"washed\",\"dried\"]");
        assertThat(spot.question().path("age").asString()).isEqualTo("P12D");
        assertThat(memory.show(spot.id(), false)).usingRecursiveComparison().isEqualTo(spot);
    }

    @Test
    void once_a_mark_shows_what_is_tried_is_tried_on_the_mark() {
        SpotNow spot = begin("{contaminant: bird_dropping, age: 3 days, surface: clear_2k_sound, setting: {airC: 18, panelC: 18, sun: shade, "
                + "outdoors: true}, done: [washed, dry]}");
        hoursLater(0.5);
        Answer after = attempt(spot.id(), "{method: warm_compress, outcome: marked}").answer().answer();
        assertThat(after.mark().orElseThrow().mark()).isEqualTo("etch_beneath");
        assertThat(after.rungs().get(0).method()).isEqualTo("hand_polish_fine");
        hoursLater(0.5);
        SpotTried polished = attempt(spot.id(), "{method: hand_polish_fine, outcome: no-change}");
        assertThat(polished.attempt().contaminant()).isEqualTo("etch_beneath");
        assertThat(polished.answer().answer().rungs().get(0).method()).isEqualTo("machine_finish");
        assertThat(attempt(spot.id(), "{method: machine_finish, outcome: cleared}").answer().answer().next().action()).isEqualTo("done");
        assertThat(memory.show(spot.id(), false).attempts()).extracting(Attempt::contaminant)
                .containsExactly("bird_dropping", "etch_beneath", "etch_beneath");
    }

    @Test
    void what_a_ladder_would_refuse_is_not_kept() {
        String wrong = "{contaminant: tarr, surface: clear_2k_sound, done: [polishd]}";
        assertThatThrownBy(() -> QuestionReader.read(yaml(wrong), Base.advisor().knowledge()))
                .isInstanceOfSatisfying(BadQuestion.class, ladder -> assertThatThrownBy(() -> begin(wrong))
                        .isInstanceOf(BadQuestion.class).hasMessage(ladder.getMessage()));
    }

    @Test
    void an_attempt_on_a_spot_is_learned_once_and_changes_the_next_step() {
        SpotNow spot = begin(TAR);
        assertThat(spot.answer().answer().next().method()).hasValue("aliph_tar");
        SpotTried tried = attempt(spot.id(), "{method: Aliphatic tar remover, outcome: no-change, minutes: 6}");
        assertThat(tried.answer().answer().next().method()).isPresent().get().isNotEqualTo("aliph_tar");
        assertThat(log.last(10)).containsExactly(tried.attempt());
        Lessons lessons = teacher.lessons();
        assertThat(lessons.counted()).isEqualTo(1);
        assertThat(lessons.moved()).isNotEmpty().allSatisfy(move -> assertThat(move.method()).isEqualTo("aliph_tar"));
        memory.show(spot.id(), false);
        assertThat(teacher.lessons()).as("looking at it teaches nothing").isEqualTo(lessons);
    }

    @Test
    void an_attempt_has_from_its_spot_all_that_the_log_asks_for() {
        SpotNow spot = begin(TAR);
        hoursLater(5);
        Attempt attempt = attempt(spot.id(), "{method: aliph_tar, outcome: partly, minutes: 6, note: edges left, "
                + "setting: {panelC: 27}}").attempt();
        assertThat(attempt.spot()).hasValue(spot.id());
        assertThat(attempt.at()).isEqualTo(now);
        assertThat(attempt.contaminant()).isEqualTo("tar_spot");
        assertThat(attempt.age()).isEqualTo("P12DT5H");
        assertThat(attempt.surface()).containsExactly("clear_2k_sound");
        assertThat(attempt.facts().paintAgeDays()).hasValue(2000);
        assertThat(attempt.setting().panelC()).hasValue(27);
        assertThat(attempt.setting().airC()).hasValue(19);
        assertThat(attempt.note()).hasValue("edges left");
        assertThat(attempt.revision()).isEqualTo(Base.advisor().knowledge().revision());
    }

    @Test
    void what_was_so_earlier_never_overrides_what_is_so_now_however_late_it_is_sent() {
        SpotNow spot = begin(TAR);
        hoursLater(6);
        tell(spot.id(), yaml("{setting: {panelC: 55, sun: direct}, consent: {refused: [g01]}}"));
        attempt(spot.id(), "{method: aliph_tar, outcome: partly, at: \"" + now.minusSeconds(3 * 3600)
                + "\", setting: {panelC: 18, sun: shade}, consent: {granted: [g01]}}");
        JsonNode question = memory.show(spot.id(), false).question();
        assertThat(question.at("/setting/panelC").asDouble()).isEqualTo(55);
        assertThat(question.at("/consent/refused").toString()).isEqualTo("[\"g01\"]");
        assertThat(question.at("/consent/granted").toString()).doesNotContain("g01");
    }

    @Test
    void a_test_that_was_passed_counts_on_its_surface_only() {
        SpotNow spot = begin(TAR);
        tell(spot.id(), yaml("{passedTests: [aliph_tar]}"));
        assertThat(memory.show(spot.id(), false).question().path("passedTests").toString()).contains("aliph_tar");
        tell(spot.id(), yaml("{surface: lacquer_nitro_acrylic}"));
        assertThat(memory.show(spot.id(), false).question().path("passedTests").toString()).doesNotContain("aliph_tar");
    }

    @Test
    void an_attempt_is_found_by_its_spot_however_the_name_was_written_down() {
        SpotNow spot = begin(TAR);
        Attempt harm = new AttemptReader(Base.advisor().knowledge(), () -> now).read(yaml("{contaminant: tar_spot, surface: clear_2k_sound, "
                + "method: aliph_tar, outcome: harm, prepared: true, spot: " + spot.id().toUpperCase(java.util.Locale.ROOT) + "}"));
        assertThat(harm.spot()).hasValue(spot.id());
    }

    @Test
    void a_method_that_is_a_number_is_refused() {
        SpotNow spot = begin(TAR);
        assertThatThrownBy(() -> attempt(spot.id(), "{method: 7, outcome: partly}")).isInstanceOfSatisfying(BadAttempt.class,
                bad -> assertThat(bad.problems()).anyMatch(p -> p.pointer().equals("/method")));
    }

    @Test
    void an_attempt_joins_what_was_tried_with_the_hours_since_then() {
        SpotNow spot = begin(TAR.replace("done:", "tried: [{text: dish soap, outcome: no-change, hoursAgo: 2}], done:"));
        hoursLater(1);
        attempt(spot.id(), "{method: aliph_tar, outcome: partly, dwellMinutes: 3.5, prepared: false}");
        hoursLater(4.5);
        List<Question.Tried> tried = question(memory.show(spot.id(), false)).tried();
        assertThat(tried).hasSize(2);
        assertThat(tried.get(0).hoursAgo()).isEqualTo(7.5);
        assertThat(tried.get(1)).isEqualTo(new Question.Tried(Optional.of("aliph_tar"), null, null, "partly", 1, 3.5, 4.5,
                Optional.of(false), List.of()));
    }

    @Test
    void a_stop_sign_seen_in_an_attempt_stops_the_spot() {
        SpotNow spot = begin(TAR);
        assertThat(spot.answer().answer().isStopped()).isFalse();
        assertThat(attempt(spot.id(), "{method: aliph_tar, outcome: no-change, signs: [whitening]}").answer().answer().isStopped()).isTrue();
        assertThat(memory.show(spot.id(), false).answer().answer().isStopped()).isTrue();
    }

    @Test
    void an_attempt_told_later_counts_from_when_it_was_made() {
        SpotNow spot = begin(TAR);
        hoursLater(3);
        Attempt attempt = attempt(spot.id(), "{method: aliph_tar, outcome: no-change, at: \"2026-05-04T11:00:00Z\"}").attempt();
        assertThat(attempt.age()).as("an hour before the spot was kept").isEqualTo("P11DT23H");
        assertThat(question(memory.show(spot.id(), false)).tried().get(0).hoursAgo()).isEqualTo(4);
    }

    @Test
    void a_deposit_grows_older_with_the_days_and_paint_stays_as_old_as_was_told() {
        SpotNow spot = begin(TAR);
        hoursLater(24 * 40 + 1.5);
        Question later = question(memory.show(spot.id(), false));
        assertThat(later.age()).isEqualTo("P52DT1H30M");
        assertThat(later.facts().paintAgeDays()).hasValue(2000);
        tell(spot.id(), yaml("{age: 8 weeks, facts: {paintAgeDays: 2040}}"));
        hoursLater(24);
        later = question(memory.show(spot.id(), false));
        assertThat(later.age()).isEqualTo("P57D");
        assertThat(later.facts().paintAgeDays()).hasValue(2040);
        assertThat(question(begin("{surface: clear_2k_sound}")).age()).isEqualTo("unknown");
    }

    @Test
    void steps_done_and_the_weather_hold_for_a_visit_and_are_asked_for_again() {
        SpotNow spot = begin(TAR);
        hoursLater(23.9);
        assertThat(memory.show(spot.id(), false).letGo()).isEmpty();
        hoursLater(0.1);
        SpotNow next = memory.show(spot.id(), false);
        assertThat(next.letGo()).containsExactly("/done/dried", "/done/washed", "/setting/airC", "/setting/panelC", "/setting/sun");
        assertThat(question(next).done()).isEmpty();
        assertThat(question(next).setting().panelC()).isEmpty();
        assertThat(question(next).setting().waterHardnessMgL()).hasValue(90);
        SpotNow told = tell(spot.id(), yaml("{done: [washed], setting: {panelC: 12}}"));
        assertThat(told.letGo()).containsExactly("/done/dried", "/setting/airC", "/setting/sun");
        assertThat(question(told).done()).containsExactly("washed");
        assertThat(question(told).setting().panelC()).hasValue(12);
    }

    @Test
    void the_next_day_nothing_is_permitted_that_was_barred_and_the_wash_is_due_again() {
        SpotNow spot = begin(TAR);
        Answer today = spot.answer().answer();
        hoursLater(30);
        Answer tomorrow = memory.show(spot.id(), false).answer().answer();
        assertThat(today.next().steps()).extracting(Answer.Due::step).doesNotContain("contact_wash_neutral");
        assertThat(tomorrow.next().steps()).extracting(Answer.Due::step).contains("contact_wash_neutral");
        assertThat(missing(today)).doesNotContain("ask_panel", "ask_sun", "cool");
        assertThat(missing(tomorrow)).containsAll(missing(today)).contains("ask_panel", "ask_sun", "cool");
        assertThat(tomorrow.never()).extracting(Answer.Barred::method)
                .containsAll(today.never().stream().map(Answer.Barred::method).toList());
    }

    @Test
    void what_is_told_later_is_added_or_takes_the_place_of_what_was_told() {
        SpotNow spot = begin(TAR);
        tell(spot.id(), yaml("{done: [taped off], passedTests: [aliph_tar], consent: {refused: [alc_gel]}, facts: {clearMicrons: 41}}"));
        SpotNow told = tell(spot.id(), yaml("{consent: {granted: [alc_gel]}, facts: {colour: null}, surface: wrap_gloss}"));
        Question now = question(told);
        assertThat(now.done()).containsExactly("washed", "dried", "masked");
        assertThat(now.passedTests()).as("passed on what was there before").isEmpty();
        assertThat(now.consent()).isEqualTo(new Question.Consent(List.of("alc_gel"), List.of()));
        assertThat(now.facts().clearMicrons()).isEqualTo(OptionalDouble.of(41));
        assertThat(now.facts().colour()).isEmpty();
        assertThat(now.facts().paintAgeDays()).hasValue(2000);
        assertThat(now.surface()).containsExactly("wrap_gloss");
    }

    @Test
    void what_became_known_with_an_attempt_is_told_with_it() {
        SpotNow spot = begin(TAR);
        attempt(spot.id(), "{method: aliph_tar, outcome: partly, done: [masked], facts: {clearMicrons: 38}, contaminant: asphalt spots}"
                .replace("asphalt spots", "sap_conifer"));
        Question now = question(memory.show(spot.id(), false));
        assertThat(now.done()).contains("masked");
        assertThat(now.contaminant()).hasValue("sap_conifer");
        assertThat(log.last(1).get(0).contaminant()).isEqualTo("sap_conifer");
        assertThat(log.last(1).get(0).facts().clearMicrons()).hasValue(38);
    }

    @Test
    void a_spot_that_nobody_named_keeps_its_attempts_and_teaches_as_little_as_the_log_lets_it() {
        SpotNow spot = begin("{observations: [near_conifers, form_beads, water_no_change], age: P5D, surface: clear_2k_sound, "
                + "setting: {panelC: 18, sun: shade}}");
        assertThat(spot.answer().suspects()).isPresent();
        SpotTried tried = attempt(spot.id(), "{method: alc_70, outcome: no-change}");
        assertThat(tried.attempt().contaminant()).isEqualTo("unknown");
        assertThat(tried.answer().suspects()).isPresent();
        assertThat(teacher.lessons().counted()).isZero();
        assertThat(teacher.lessons().leftOut().unknown()).isEqualTo(1);
        tell(spot.id(), yaml("{contaminant: sap_conifer}"));
        attempt(spot.id(), "{method: alc_70, outcome: partly}");
        assertThat(teacher.lessons().counted()).isEqualTo(1);
    }

    @Test
    void what_is_wrong_in_an_attempt_is_pointed_at_and_nothing_is_kept() {
        SpotNow spot = begin(TAR);
        assertThatThrownBy(() -> attempt(spot.id(), "{method: aliph_tarr, outcome: gone, dwellMinutes: -1, signs: [cheering], "
                + "done: [polishd], spot: mine, id: x, tried: [], facts: {clearMicrons: -3}, minuts: 4}"))
                .asInstanceOf(InstanceOfAssertFactories.type(BadAttempt.class)).extracting(SpotMemoryTest::wrong)
                .satisfies(problems -> assertThat(pointers(problems)).containsExactlyInAnyOrder("/id", "/spot", "/tried", "/done/0",
                        "/facts/clearMicrons", "/dwellMinutes", "/signs/0", "/method", "/minuts"));
        assertThatThrownBy(() -> attempt(spot.id(), "{method: aliph_tar}")).isInstanceOf(BadAttempt.class).hasMessageContaining("/outcome");
        assertThatThrownBy(() -> attempt(spot.id(), "[]")).isInstanceOf(BadAttempt.class).hasMessageContaining("method and outcome");
        assertThat(log.size()).isZero();
        assertThat(memory.show(spot.id(), false)).usingRecursiveComparison().isEqualTo(spot);
    }

    @Test
    void what_does_not_go_together_with_what_was_told_is_refused() {
        SpotNow spot = begin("{contaminant: tar_spot, surface: clear_2k_sound, setting: {outdoors: true}}");
        String bay = "setting: {indoors: {volumeM3: 180, airChangesPerHour: 2}}";
        assertThatThrownBy(() -> tell(spot.id(), yaml("{" + bay + "}"))).isInstanceOf(BadQuestion.class).hasMessageContaining("/setting/outdoors");
        assertThatThrownBy(() -> attempt(spot.id(), "{method: aliph_tar, outcome: partly, " + bay + "}"))
                .isInstanceOf(BadAttempt.class).hasMessageContaining("/setting/outdoors");
        for (String wrong : List.of("{}", "[]", "{tried: []}", "{whatIf: true}", "{colour: light}")) {
            assertThatThrownBy(() -> tell(spot.id(), yaml(wrong))).as(wrong).isInstanceOf(BadQuestion.class);
        }
        assertThat(log.size()).isZero();
        assertThat(memory.show(spot.id(), false)).usingRecursiveComparison().isEqualTo(spot);
    }

    @Test
    void a_key_keeps_one_attempt_whatever_was_told_in_between() {
        SpotNow spot = begin(TAR);
        JsonNode sent = yaml("{method: aliph_tar, outcome: partly, setting: {outdoors: true}}");
        Optional<SenderKey> key = Optional.of(SenderKey.of("k", SpotMemory.on(spot.id(), sent)));
        Attempt first = memory.attempt(spot.id(), sent, key).attempt();
        tell(spot.id(), yaml("{setting: {outdoors: null, indoors: {volumeM3: 180, airChangesPerHour: 2}}}"));
        assertThat(memory.attempt(spot.id(), sent, key).attempt()).isEqualTo(first);
        assertThat(log.size()).isEqualTo(1);
        assertThat(SenderKey.of("k", SpotMemory.on("d2d2d2", sent)).fingerprint()).as("on another spot")
                .isNotEqualTo(key.get().fingerprint());
    }

    @Test
    void a_spot_that_nobody_kept_is_named() {
        for (Runnable asks : List.<Runnable>of(() -> memory.show("d2d2d2", false), () -> attempt("d2d2d2", "{}"),
                () -> tell("d2d2d2", yaml("{done: [washed]}")))) {
            assertThatThrownBy(asks::run).isInstanceOfSatisfying(UnknownSpot.class, e -> assertThat(e.id()).isEqualTo("d2d2d2"));
        }
    }

    @Test
    void a_method_that_this_revision_no_longer_knows_counts_as_anything() {
        SpotNow spot = begin(TAR);
        Attempt made = attempt(spot.id(), "{method: aliph_tar, outcome: no-change}").attempt();
        log.add(new Attempt("00000000-0000-4000-8000-000000000000", made.at(), made.shop(), null, made.spot(), made.contaminant(), made.age(),
                made.surface(), null, null, "gone_since", null, null, made.outcome(), true, null, null, null, made.revision()), Optional.empty());
        Question.Tried last = question(memory.show(spot.id(), false)).tried().get(1);
        assertThat(last.method()).isEmpty();
        assertThat(last.text()).hasValue("gone_since");
    }

    @Test
    void what_was_tried_on_another_surface_never_says_that_the_spot_is_off() {
        SpotNow spot = begin(TAR);
        for (String surface : List.of("lacquer_nitro_acrylic", "[clear_2k_sound, wrap_gloss]", "unknown", "null")) {
            assertThatThrownBy(() -> attempt(spot.id(), "{method: aliph_tar, outcome: cleared, surface: " + surface + "}")).as(surface)
                    .isInstanceOfSatisfying(BadAttempt.class, bad -> assertThat(pointers(bad.problems())).containsExactly("/surface"))
                    .hasMessageContaining("spot " + spot.id() + " is on clear_2k_sound");
        }
        assertThat(memory.show(spot.id(), false)).usingRecursiveComparison().isEqualTo(spot);
        assertThat(attempt(spot.id(), "{method: aliph_tar, outcome: partly, surface: [clear_2k_sound]}").attempt().surface())
                .containsExactly("clear_2k_sound");
        tell(spot.id(), yaml("{surface: wrap_gloss}"));
        assertThat(attempt(spot.id(), "{method: aliph_tar, outcome: partly}").attempt().surface()).as("after it was set right")
                .containsExactly("wrap_gloss");
        String unsaid = begin("{contaminant: tar_spot}").id();
        assertThat(attempt(unsaid, "{method: aliph_tar, outcome: partly, surface: wrap_gloss}").attempt().surface()).as("nobody had said it")
                .containsExactly("wrap_gloss");
    }

    @Test
    void an_attempt_of_tomorrow_is_refused_and_one_of_a_clock_slightly_ahead_makes_nothing_younger() {
        SpotNow spot = begin("{contaminant: tar, age: 2 h, surface: clear_2k_sound}");
        assertThatThrownBy(() -> attempt(spot.id(), "{method: aliph_tar, outcome: partly, age: 2 h, at: \"2026-05-05T07:00:00Z\"}"))
                .isInstanceOf(BadAttempt.class).hasMessageContaining("/at").hasMessageContaining("has not come yet; here it is 2026-05-04T12:00:00Z");
        assertThat(log.size()).isZero();
        attempt(spot.id(), "{method: aliph_tar, outcome: partly, age: 2 min, at: \"2026-05-04T12:04:00Z\"}");
        assertThat(question(memory.show(spot.id(), false)).age()).as("as told").isEqualTo("PT2M");
    }

    @Test
    void what_was_told_for_a_time_that_has_not_come_counts_as_told_now() {
        SpotNow spot = begin("{contaminant: tar, age: 2 h, surface: clear_2k_sound}");
        log.spots().tell(spot.id(), new Said(now.plus(Duration.ofHours(20)), Optional.empty(), yaml("{age: PT3H}"), null, null), Optional.empty());
        assertThat(question(memory.show(spot.id(), false)).age()).isEqualTo("PT3H");
    }

    @Test
    void a_try_of_which_no_sign_was_told_has_none() {
        SpotNow spot = begin(TAR);
        attempt(spot.id(), "{method: aliph_tar, outcome: partly, dwellMinutes: 3, signs: [], done: []}");
        JsonNode tried = memory.show(spot.id(), false).question();
        assertThat(tried.at("/tried/0").has("signs")).isFalse();
        assertThat(tried.at("/tried/0/dwellMinutes").asDouble()).isEqualTo(3);
        assertThat(attempt(begin("{contaminant: tar_spot}").id(), "{method: aliph_tar, outcome: partly, done: []}").attempt()).isNotNull();
    }

    private SpotNow undo(String id, Attempt attempt) {
        return memory.undo(id, yaml("{attempt: " + attempt.id() + ", why: the spot beside it, by: Yard 2}"), Optional.empty());
    }

    @Test
    void an_attempt_taken_back_is_as_if_it_had_not_been_made_and_is_still_there_to_read() {
        SpotNow spot = begin(TAR);
        Lessons before = teacher.lessons();
        Attempt attempt = attempt(spot.id(), "{method: aliph_tar, outcome: harm, done: [masked], signs: [whitening], facts: {clearMicrons: 38}}")
                .attempt();
        assertThat(memory.show(spot.id(), false).answer().answer().isStopped()).isTrue();
        assertThat(teacher.lessons().alarms()).hasSize(1);
        hoursLater(1);
        SpotNow undone = undo(spot.id(), attempt);
        assertThat(undone.attempts()).isEmpty();
        assertThat(undone.question().has("tried")).isFalse();
        assertThat(question(undone).done()).containsExactly("washed", "dried");
        assertThat(question(undone).facts().clearMicrons()).isEmpty();
        assertThat(undone.answer().answer().isStopped()).isFalse();
        assertThat(undone.undone()).containsExactly(new Undone(attempt, yaml("{done: [masked], facts: {clearMicrons: 38}}"), now, "Yard 2",
                "the spot beside it"));
        assertThat(log.one(attempt.id())).as("as it was kept").hasValue(attempt);
        assertThat(teacher.lessons()).isEqualTo(before);
        assertThat(new Teacher(log, Base.advisor().knowledge()).lessons()).as("after a restart").isEqualTo(before);
        hoursLater(1);
        assertThat(undo(spot.id(), attempt).undone()).as("once is enough").isEqualTo(undone.undone());
    }

    @Test
    void what_is_left_is_learned_as_if_nothing_else_had_been_there() {
        String id = begin(TAR).id();
        attempt(id, "{method: aliph_tar, outcome: partly}");
        teacher.refresh();
        Lessons before = teacher.lessons();
        Attempt mistyped = attempt(id, "{method: terpene_neat, outcome: no-change}").attempt();
        assertThat(teacher.lessons()).isNotEqualTo(before);
        undo(id, mistyped);
        assertThat(teacher.lessons()).isEqualTo(before);
        attempt(id, "{method: terpene_neat, outcome: cleared}");
        assertThat(teacher.lessons()).isEqualTo(new Teacher(log, Base.advisor().knowledge()).lessons());
        assertThat(teacher.lessons().counted()).isEqualTo(2);
    }

    @Test
    void what_is_to_be_taken_back_is_named_and_why() {
        SpotNow spot = begin(TAR);
        Attempt one = attempt(spot.id(), "{method: aliph_tar, outcome: partly}").attempt();
        Attempt elsewhere = attempt(begin(TAR).id(), "{method: aliph_tar, outcome: partly}").attempt();
        for (String[] wrong : new String[][] {{"{attempt: " + elsewhere.id() + ", why: x}", "/attempt"}, {"{why: x}", "/attempt"},
            {"{attempt: " + one.id() + "}", "/why"}, {"{attempt: " + one.id() + ", why: \" \"}", "/why"}, {"{attempt: last, why: x}", "/attempt"},
            {"{attempt: " + one.id() + ", why: x, by: \"../x\"}", "/by"}, {"{attempt: " + one.id() + ", why: x, how: y}", "/how"}, {"[]", ""}}) {
            assertThatThrownBy(() -> memory.undo(spot.id(), yaml(wrong[0]), Optional.empty())).as(wrong[0])
                    .isInstanceOfSatisfying(BadAttempt.class, bad -> assertThat(pointers(bad.problems())).containsExactly(wrong[1]));
        }
        assertThat(log.undone()).isEmpty();
        assertThat(memory.undo(spot.id(), yaml("{attempt: " + one.id().substring(0, 8).toUpperCase() + ", why: x}"), Optional.empty()).attempts())
                .as("by the beginning of its id").isEmpty();
    }

    @Test
    void open_spots_are_listed_with_what_was_tried_last_and_one_taken_off_is_open_again_when_that_was_mistyped() {
        String fresh = begin("{observations: [near_conifers], surface: [clear_2k_sound, wrap_gloss]}").id();
        hoursLater(1);
        String tried = begin(TAR).id();
        attempt(tried, "{method: aliph_tar, outcome: partly}");
        hoursLater(1);
        tell(tried, yaml("{contaminant: sap_conifer}"));
        Attempt off = attempt(tried, "{method: aliph_tar, outcome: cleared}").attempt();
        assertThat(memory.list(Optional.empty(), 10, false).items()).containsExactly(new SpotListed(fresh, NOON, "unknown",
                Set.of("clear_2k_sound", "wrap_gloss"), true, Optional.empty()));
        assertThat(memory.list(Optional.empty(), 10, true).items()).extracting(SpotListed::open).containsExactly(true, false);
        undo(tried, off);
        SpotsListed first = memory.list(Optional.empty(), 1, false);
        assertThat(first.items()).extracting(SpotListed::id).containsExactly(fresh);
        assertThat(first.more()).isTrue();
        SpotsListed second = memory.list(Cursor.of(first.next()), 1, false);
        assertThat(second.items()).containsExactly(new SpotListed(tried, NOON.plus(Duration.ofHours(1)), "sap_conifer", Set.of("clear_2k_sound"),
                true, Optional.of(new SpotListed.Last(NOON.plus(Duration.ofHours(1)), "aliph_tar", "partly"))));
        assertThat(second.more()).isFalse();
        assertThat(memory.list(Cursor.of(second.next()), 1, false).items()).isEmpty();
    }

    @Test
    void a_key_tells_facts_once_and_stands_for_nothing_else() {
        SpotNow spot = begin(TAR);
        JsonNode facts = yaml("{facts: {clearMicrons: 41}}");
        Optional<SenderKey> key = Optional.of(SenderKey.of("k", SpotMemory.on(spot.id(), facts)));
        memory.tell(spot.id(), facts, key);
        tell(spot.id(), yaml("{facts: {clearMicrons: 30}}"));
        assertThat(question(memory.tell(spot.id(), facts, key)).facts().clearMicrons()).as("told before, not now").hasValue(30);
        JsonNode other = yaml("{facts: {clearMicrons: 12}}");
        assertThatThrownBy(() -> memory.tell(spot.id(), other, Optional.of(SenderKey.of("k", SpotMemory.on(spot.id(), other)))))
                .isInstanceOf(KeyReused.class).hasMessageContaining("other facts");
        assertThat(question(memory.show(spot.id(), false)).facts().clearMicrons()).hasValue(30);
    }
}
