package rungwise.shoplog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import rungwise.knowledge.load.Mappers;
import tools.jackson.databind.JsonNode;

/** What holds for every log, whatever database keeps it. */
abstract class ShoplogTest {
    private final List<Shoplog> opened = new ArrayList<>();
    private String data;

    /** A place without a log, the same each time within a test. */
    abstract String place();

    private Shoplog open() {
        if (data == null) {
            data = place();
        }
        Shoplog log = Shoplog.open(data);
        opened.add(log);
        return log;
    }

    @AfterEach
    void close() {
        opened.forEach(Shoplog::close);
    }

    private static Optional<SenderKey> key(String key, String body) {
        JsonNode sent = Mappers.json().readTree(body);
        return Optional.of(SenderKey.of(key, sent));
    }

    private static final String FULL = "{contaminant: sap_conifer, age: P21D, surface: [clear_2k_sound, wrap_gloss], "
            + "facts: {totalFilmMicrons: {min: 104, max: 118}, clearMicrons: 41.5, colour: dark, paintAgeDays: 2900, "
            + "vehicleYear: 2012, refinished: false, place: sill, priorDamage: [stone chips], warmestPanelC: 61}, "
            + "setting: {airC: -2.5, panelC: 22, sun: overcast, windMs: 1.5, humidity: 0.5, indoors: {volumeM3: 180, "
            + "airChangesPerHour: 2}}, method: alc_gel, advised: alc_15, notFollowedBecause: [not_at_hand], outcome: "
            + "partly, prepared: false, minutes: 12.5, note: \"=zwei Zeilen\\n'é 😀; \\\"x\\\", y\", photo: "
            + "\"shots/17.jpg\", shop: Yard 2, bay: b/1, spot: v17-3, at: \"2026-05-03T10:00:00.123+02:00\"}";

    @Test
    void an_attempt_comes_back_as_it_went_in_also_after_the_log_was_closed() {
        Attempt whole = Made.attempt(FULL);
        Attempt bare = Made.tar("aliph_tar", "cleared", "");
        try (Shoplog log = open()) {
            log.add(whole, Optional.empty());
            log.add(bare, Optional.empty());
        }
        Shoplog again = open();
        assertThat(again.one(whole.id())).hasValue(whole);
        assertThat(again.one(bare.id())).hasValue(bare);
        assertThat(again.size()).isEqualTo(2);
        assertThat(again.one("00000000-0000-4000-8000-000000000000")).isEmpty();
    }

    @Test
    void a_mark_that_shows_is_kept_and_learnt_from_as_such() {
        Shoplog log = open();
        Attempt marked = Made.tar("clay_medium", "marked", "");
        log.add(marked, Optional.empty());
        assertThat(log.one(marked.id())).hasValue(marked);
        assertThat(log.tried(0, 10)).singleElement().extracting(Tried::outcome).isEqualTo(Outcome.MARKED);
    }

    @Test
    void a_key_brings_the_first_attempt_back_and_adds_nothing() {
        Shoplog log = open();
        Attempt first = Made.tar("aliph_tar", "cleared", "");
        assertThat(log.add(first, key("k1", "{\"a\":1,\"b\":2}"))).isEqualTo(new Kept(first, false));
        Attempt second = Made.tar("aliph_tar", "cleared", "");
        assertThat(second).isNotEqualTo(first);
        assertThat(log.add(second, key("\"k1\"", "{ \"b\": 2, \"a\": 1 }"))).isEqualTo(new Kept(first, true));
        assertThat(log.size()).isEqualTo(1);
    }

    @Test
    void a_key_with_another_body_is_refused_and_nothing_is_kept() {
        Shoplog log = open();
        log.add(Made.tar("aliph_tar", "cleared", ""), key("k1", "{\"a\":1}"));
        assertThatThrownBy(() -> log.add(Made.tar("aliph_tar", "harm", ""), key("k1", "{\"a\":2}")))
                .isInstanceOf(KeyReused.class).hasMessageContaining("k1");
        assertThat(log.size()).isEqualTo(1);
        log.add(Made.tar("aliph_tar", "harm", ""), key("k2", "{\"a\":2}"));
        assertThat(log.size()).isEqualTo(2);
    }

    @Test
    void one_key_sent_by_many_at_once_keeps_one_attempt() throws Exception {
        Shoplog log = open();
        List<Callable<Kept>> senders = IntStream.range(0, 12).mapToObj(i -> (Callable<Kept>) () ->
                log.add(Made.tar("aliph_tar", "cleared", ""), key("same", "{}"))).toList();
        var pool = Executors.newFixedThreadPool(12);
        Set<String> ids = new HashSet<>();
        int fresh = 0;
        for (Future<Kept> kept : pool.invokeAll(senders)) {
            ids.add(kept.get().attempt().id());
            fresh += kept.get().again() ? 0 : 1;
        }
        pool.shutdown();
        assertThat(ids).hasSize(1);
        assertThat(fresh).isEqualTo(1);
        assertThat(log.size()).isEqualTo(1);
    }

    @Test
    void pages_meet_every_attempt_once_while_others_write() throws Exception {
        Shoplog log = open();
        Shoplog other = open();
        Set<String> written = java.util.concurrent.ConcurrentHashMap.newKeySet();
        var pool = Executors.newFixedThreadPool(4);
        List<Future<?>> writers = IntStream.range(0, 4).<Future<?>>mapToObj(w -> pool.submit(() -> {
            for (int i = 0; i < 25; i++) {
                written.add((w % 2 == 0 ? log : other).add(Made.tar("aliph_tar", "cleared", ""), Optional.empty())
                        .attempt().id());
            }
        })).toList();
        List<String> met = new ArrayList<>();
        Optional<Cursor> from = Optional.empty();
        boolean writing = true;
        boolean more = true;
        while (writing || more) {
            writing = writers.stream().anyMatch(w -> !w.isDone());
            Page page = log.page(from, 7);
            assertThat(page.items()).hasSizeLessThanOrEqualTo(7);
            page.items().forEach(a -> met.add(a.id()));
            from = Cursor.of(page.next().text());
            more = page.more();
        }
        for (Future<?> writer : writers) {
            writer.get();
        }
        pool.shutdown();
        assertThat(met).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(written).hasSize(100);
        assertThat(log.page(from, 7).items()).isEmpty();
        assertThat(log.last(3)).extracting(Attempt::id).isEqualTo(met.subList(97, 100));
    }

    @Test
    void many_are_kept_whole_or_not_at_all() {
        Shoplog log = open();
        List<Attempt> many = IntStream.range(0, 1_203).mapToObj(i -> Made.tar("aliph_tar", "partly", "")).toList();
        Iterator<Attempt> breaks = new Iterator<>() {
            private int at;

            @Override
            public boolean hasNext() {
                return true;
            }

            @Override
            public Attempt next() {
                if (at == 1_100) {
                    throw new IllegalStateException("the file broke");
                }
                return many.get(at++);
            }
        };
        assertThatThrownBy(() -> log.addAll(breaks)).hasMessageContaining("the file broke");
        assertThat(log.size()).isZero();
        assertThat(log.addAll(many.iterator())).isEqualTo(1_203);
        assertThat(log.addAll(many.iterator())).as("there already").isZero();
        assertThat(log.size()).isEqualTo(1_203);
    }

    @Test
    void an_id_that_says_something_else_is_refused() {
        Shoplog log = open();
        Attempt first = Made.tar("aliph_tar", "cleared", "");
        log.add(first, Optional.empty());
        Attempt other = Made.tar("aliph_tar", "harm", "id: " + first.id());
        assertThatThrownBy(() -> log.addAll(List.of(Made.tar("citrus_degreaser", "cleared", ""), other).iterator()))
                .isInstanceOf(BadAttempt.class).hasMessageContaining("/id").hasMessageContaining(first.id());
        assertThat(log.size()).isEqualTo(1);
    }

    @Test
    void learning_reads_what_was_written() {
        Shoplog log = open();
        Attempt whole = Made.attempt(FULL);
        Attempt bare = Made.attempt("{contaminant: unknown, method: alc_gel, outcome: harm}");
        log.add(whole, Optional.empty());
        log.add(bare, Optional.empty());
        List<Tried> tried = log.tried(0, 10);
        assertThat(tried).containsExactly(Tried.of(tried.get(0).seq(), whole), Tried.of(tried.get(1).seq(), bare));
        assertThat(log.tried(tried.get(0).seq(), 10)).hasSize(1);
    }

    @Test
    void the_version_looked_for_is_that_of_the_last_migration() throws Exception {
        open().close();
        try (var connection = java.sql.DriverManager.getConnection(Place.of(data).url());
             var statement = connection.createStatement(); var row = statement.executeQuery(
                     "SELECT version FROM flyway_schema_history ORDER BY installed_rank DESC LIMIT 1")) {
            assertThat(row.next()).isTrue();
            assertThat(row.getString(1)).isEqualTo(Place.NEWEST);
        }
    }

    @Test
    void a_log_of_a_newer_program_is_not_touched() throws Exception {
        open().close();
        try (var connection = java.sql.DriverManager.getConnection(Place.of(data).url());
             var statement = connection.createStatement()) {
            statement.execute("INSERT INTO flyway_schema_history SELECT installed_rank + 1, '99', 'later', type, "
                    + "'V99__later.sql', checksum, installed_by, installed_on, execution_time, success "
                    + "FROM flyway_schema_history WHERE version = '" + Place.NEWEST + "'");
        }
        assertThatThrownBy(this::open).isInstanceOf(LogFailure.class).hasMessageContaining("newer program");
    }

    private static final String TAR = "{\"contaminant\":\"tar_spot\",\"age\":\"P12D\",\"surface\":[\"clear_2k_sound\"],\"facts\":{\"clearMicrons\":41.5,\"colour\":null}}";

    private static JsonNode tar() {
        return Mappers.json().readTree(TAR);
    }

    private static Attempt on(KeptSpot spot, String outcome) {
        return Made.tar("aliph_tar", outcome, "spot: " + spot.id());
    }

    private static Said with(Attempt attempt, String told) {
        return new Said(Made.NOW, Optional.of(attempt.id()), Mappers.json().readTree(told), OptionalDouble.of(3.5), List.of("tack"));
    }

    @Test
    void a_spot_comes_back_with_all_that_was_tried_and_told_also_after_the_log_was_closed() {
        KeptSpot kept;
        Attempt attempt;
        Said with;
        Said later = new Said(Made.NOW, Optional.empty(), Mappers.json().readTree("{\"facts\":{\"colour\":null}}"), null, null);
        try (Shoplog log = open()) {
            kept = log.spots().begin(tar(), Made.NOW, Optional.empty());
            attempt = on(kept, "no-change");
            with = with(attempt, "{\"done\":[\"washed\"]}");
            log.spots().add(attempt, with, Optional.empty());
            log.spots().tell(kept.id(), later, Optional.empty());
            log.add(Made.tar("aliph_tar", "cleared", ""), Optional.empty());
        }
        Shoplog again = open();
        assertThat(again.spots().one(kept.id())).hasValue(new KeptSpot(kept.id(), Made.NOW, tar(), List.of(with, later), List.of(attempt)));
        assertThat(again.one(attempt.id())).as("it is an attempt as any other").hasValue(attempt);
        assertThat(again.size()).isEqualTo(2);
        assertThat(again.spots().one("d2d2d2d2")).isEmpty();
    }

    @Test
    void what_the_log_was_told_of_a_spot_is_what_was_tried_on_it() {
        Shoplog log = open();
        KeptSpot kept = log.spots().begin(tar(), Made.NOW, Optional.empty());
        Attempt before = Made.tar("aliph_tar", "partly", "at: \"2026-05-01T08:00:00Z\", spot: " + kept.id());
        Attempt last = on(kept, "cleared");
        log.addAll(List.of(last, before).iterator());
        assertThat(log.spots().one(kept.id()).orElseThrow().attempts()).as("oldest first").containsExactly(before, last);
    }

    @Test
    void spots_have_short_names_of_their_own_however_they_are_written() {
        Shoplog log = open();
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < 50; i++) {
            ids.add(log.spots().begin(tar(), Made.NOW, Optional.empty()).id());
        }
        assertThat(ids).hasSize(50).allMatch(id -> id.matches("([a-z][2-9]){3}"));
        String id = ids.iterator().next();
        assertThat(log.spots().one(" " + id.substring(0, 2).toUpperCase() + "-" + id.substring(2, 4) + " " + id.substring(4)))
                .hasValueSatisfying(spot -> assertThat(spot.id()).isEqualTo(id));
    }

    @Test
    void a_name_that_a_shop_uses_for_a_spot_of_its_own_is_left_to_it() {
        Shoplog log = open();
        String drawnFirst = SpotName.drawn(new java.util.Random(7));
        log.add(Made.tar("aliph_tar", "partly", "spot: " + drawnFirst), Optional.empty());
        assertThat(new SpotStore(log, new java.util.Random(7)).begin(tar(), Made.NOW, Optional.empty()))
                .satisfies(spot -> assertThat(spot.id()).isNotEqualTo(drawnFirst))
                .satisfies(spot -> assertThat(spot.attempts()).isEmpty());
    }

    @Test
    void a_key_brings_the_first_spot_back_also_where_many_send_it_at_once() throws Exception {
        Shoplog log = open();
        List<Callable<KeptSpot>> senders = IntStream.range(0, 12).mapToObj(i -> (Callable<KeptSpot>) () ->
                log.spots().begin(tar(), Made.NOW, key("same", TAR))).toList();
        var pool = Executors.newFixedThreadPool(12);
        Set<String> ids = new HashSet<>();
        for (Future<KeptSpot> kept : pool.invokeAll(senders)) {
            ids.add(kept.get().id());
        }
        pool.shutdown();
        assertThat(ids).hasSize(1);
        assertThatThrownBy(() -> log.spots().begin(tar(), Made.NOW, key("same", "{}"))).isInstanceOf(KeyReused.class)
                .hasMessageContaining("another spot");
        assertThat(log.spots().begin(tar(), Made.NOW, key("other", "{}")).id()).isNotIn(ids);
    }

    @Test
    void an_attempt_and_what_it_told_of_its_spot_are_both_kept_or_neither() {
        Shoplog log = open();
        KeptSpot spot = log.spots().begin(tar(), Made.NOW, Optional.empty());
        Attempt first = on(spot, "no-change");
        assertThat(log.spots().add(first, with(first, "{}"), key("k1", "{}")).again()).isFalse();
        assertThat(log.spots().add(on(spot, "harm"), with(first, "{}"), key("k1", "{}"))).as("under its key").isEqualTo(new Kept(first, true));
        assertThat(log.spots().under(key("k1", "{}").orElseThrow())).hasValue(first);
        Attempt second = on(spot, "cleared");
        // a second telling with the first attempt cannot be kept
        assertThatThrownBy(() -> log.spots().add(second, with(first, "{}"), Optional.empty())).isInstanceOf(LogFailure.class);
        assertThat(log.size()).isEqualTo(1);
        assertThat(log.spots().one(spot.id()).orElseThrow().said()).hasSize(1);
    }

    @Test
    void a_log_from_before_there_were_spots_loses_nothing_and_takes_spots() throws Exception {
        data = place();
        Attempt old = Made.attempt(FULL);
        Place there = Place.of(data);
        try (var source = there.connect()) {
            there.flyway(source).target("1").load().migrate();
            try (var connection = source.getConnection(); var insert = connection.prepareStatement("INSERT INTO attempt (id, shop, spot, "
                    + "at_millis, contaminant, surface, method, outcome, prepared, body) VALUES (?, ?, ?, ?, ?, ?, ?, ?, 0, ?)")) {
                Object[] row = {old.id(), old.shop(), old.spot().orElseThrow(), old.at().toEpochMilli(), old.contaminant(),
                    String.join(" ", old.surface()), old.method(), old.outcome().word(), Shoplog.MAPPER.writeValueAsString(old)};
                for (int i = 0; i < row.length; i++) {
                    insert.setObject(i + 1, row[i]);
                }
                insert.executeUpdate();
            }
        }
        Shoplog log = open();
        assertThat(log.last(10)).containsExactly(old);
        KeptSpot spot = log.spots().begin(tar(), Made.NOW, Optional.empty());
        Attempt attempt = on(spot, "cleared");
        log.spots().add(attempt, with(attempt, "{}"), Optional.empty());
        assertThat(log.spots().one(spot.id()).orElseThrow().attempts()).containsExactly(attempt);
        assertThat(log.last(10)).containsExactly(old, attempt);
    }

    private static final UndoOrder MISTYPED = new UndoOrder("", "yard", "mistyped");

    @Test
    void an_attempt_taken_back_stays_word_for_word_and_counts_for_nothing_also_after_the_log_was_closed() {
        KeptSpot spot;
        Attempt wrong;
        Attempt right;
        try (Shoplog log = open()) {
            spot = log.spots().begin(tar(), Made.NOW, Optional.empty());
            wrong = on(spot, "harm");
            log.spots().add(wrong, with(wrong, "{\"done\":[\"washed\"]}"), key("k", "{}"));
            right = on(spot, "partly");
            log.spots().add(right, with(right, "{}"), Optional.empty());
            log.spots().undo(wrong.id(), MISTYPED, Made.NOW.plusSeconds(60), Optional.empty());
            log.spots().undo(wrong.id(), new UndoOrder("", "other", "again"), Made.NOW.plusSeconds(90), Optional.empty());
        }
        Shoplog again = open();
        Undone undone = new Undone(wrong, Mappers.json().readTree("{\"done\":[\"washed\"]}"), Made.NOW.plusSeconds(60), "yard", "mistyped");
        KeptSpot kept = again.spots().one(spot.id()).orElseThrow();
        assertThat(kept.attempts()).containsExactly(right);
        assertThat(kept.said()).containsExactly(with(right, "{}"));
        assertThat(kept.undone()).containsExactly(undone).isEqualTo(again.undone());
        assertThat(again.one(wrong.id())).hasValue(wrong);
        assertThat(again.last(10)).containsExactly(wrong, right);
        assertThat(again.page(Optional.empty(), 10).items()).containsExactly(right);
        assertThat(again.tried(0, 10)).extracting(Tried::id).containsExactly(right.id());
        assertThat(again.spots().under(key("k", "{}").orElseThrow())).as("sent again it is not made again").hasValue(wrong);
        assertThat(again.addAll(List.of(wrong, right).iterator())).as("there already").isZero();
    }

    @Test
    void a_taking_back_under_a_key_is_kept_once_and_the_key_stands_for_no_other() {
        Shoplog log = open();
        KeptSpot spot = log.spots().begin(tar(), Made.NOW, Optional.empty());
        List<Attempt> two = List.of(on(spot, "partly"), on(spot, "no-change"));
        log.addAll(two.iterator());
        log.spots().undo(two.get(0).id(), MISTYPED, Made.NOW, key("k", "{}"));
        log.spots().undo(two.get(0).id(), MISTYPED, Made.NOW.plusSeconds(5), key("k", "{}"));
        assertThat(log.undone()).extracting(Undone::at).containsExactly(Made.NOW);
        assertThatThrownBy(() -> log.spots().undo(two.get(1).id(), MISTYPED, Made.NOW, key("k", "{\"a\":1}"))).isInstanceOf(KeyReused.class);
        assertThatThrownBy(() -> log.spots().undo("00000000-0000-4000-8000-000000000000", MISTYPED, Made.NOW, Optional.empty()))
                .as("there is no such attempt").isInstanceOf(IllegalArgumentException.class);
        assertThat(log.undone()).hasSize(1);
    }

    @Test
    void a_teacher_unlearns_what_was_taken_back_elsewhere() {
        Shoplog log = open();
        Shoplog other = open();
        Teacher teacher = new Teacher(log, rungwise.Base.advisor().knowledge());
        log.add(Made.tar("aliph_tar", "cleared", ""), Optional.empty());
        Lessons before = teacher.lessons();
        Attempt wrong = Made.tar("aliph_tar", "harm", "");
        log.add(wrong, Optional.empty());
        assertThat(teacher.lessons().alarms()).hasSize(1);
        var taught = teacher.table();
        other.spots().undo(wrong.id(), MISTYPED, Made.NOW, Optional.empty());
        teacher.refresh();
        assertThat(teacher.table()).as("at the next look").isNotSameAs(taught);
        assertThat(teacher.lessons()).isEqualTo(before);
    }

    @Test
    void what_is_told_under_a_key_is_kept_once() {
        Shoplog log = open();
        KeptSpot spot = log.spots().begin(tar(), Made.NOW, Optional.empty());
        Said told = new Said(Made.NOW, Optional.empty(), Mappers.json().readTree("{\"done\":[\"washed\"]}"), null, null);
        assertThat(log.spots().isTold(key("k", "{}").orElseThrow())).isFalse();
        log.spots().tell(spot.id(), told, key("k", "{}"));
        log.spots().tell(spot.id(), told, key("k", "{}"));
        assertThat(log.spots().isTold(key("k", "{}").orElseThrow())).isTrue();
        assertThat(log.spots().one(spot.id()).orElseThrow().said()).containsExactly(told);
        assertThatThrownBy(() -> log.spots().tell(spot.id(), told, key("k", "{\"a\":1}"))).isInstanceOf(KeyReused.class);
    }

    @Test
    void an_attempt_that_names_a_kept_spot_and_another_surface_is_refused_by_every_door() {
        Shoplog log = open();
        KeptSpot spot = log.spots().begin(tar(), Made.NOW, Optional.empty());
        Attempt elsewhere = Made.attempt("{contaminant: tar_spot, surface: wrap_gloss, method: aliph_tar, outcome: cleared, spot: " + spot.id() + "}");
        Attempt unsaid = Made.attempt("{contaminant: tar_spot, method: aliph_tar, outcome: partly, spot: " + spot.id() + "}");
        assertThatThrownBy(() -> log.add(elsewhere, Optional.empty())).isInstanceOf(BadAttempt.class).hasMessageContaining("/surface")
                .hasMessageContaining(spot.id());
        assertThatThrownBy(() -> log.addAll(List.of(unsaid, elsewhere).iterator())).isInstanceOf(BadAttempt.class).hasMessageContaining("/surface");
        assertThat(log.size()).isZero();
        log.addAll(List.of(unsaid, Made.attempt("{contaminant: tar_spot, surface: wrap_gloss, method: aliph_tar, outcome: cleared, spot: d2d2d2}"))
                .iterator());
        assertThat(log.size()).as("a spot of the shop's own may lie anywhere").isEqualTo(2);
        log.spots().tell(spot.id(), new Said(Made.NOW, Optional.empty(), Mappers.json().readTree("{\"surface\":\"wrap_gloss\"}"), null, null),
                Optional.empty());
        assertThat(log.add(elsewhere, Optional.empty()).again()).as("after it was set right").isFalse();
    }

    @Test
    void spots_are_listed_in_pages_and_those_that_are_off_only_when_asked_for() {
        Shoplog log = open();
        List<String> ids = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            ids.add(log.spots().begin(tar(), Made.NOW, Optional.empty()).id());
        }
        log.add(Made.tar("aliph_tar", "cleared", "spot: " + ids.get(1)), Optional.empty());
        log.add(Made.tar("aliph_tar", "cleared", "spot: " + ids.get(2)), Optional.empty());
        log.add(Made.tar("aliph_tar", "partly", "spot: " + ids.get(2)), Optional.empty());
        SpotPage first = log.spots().page(Optional.empty(), 2, false);
        assertThat(first.items()).extracting(KeptSpot::id).containsExactly(ids.get(0), ids.get(2));
        assertThat(first.more()).isTrue();
        SpotPage second = log.spots().page(Optional.of(first.next()), 2, false);
        assertThat(second.items()).extracting(KeptSpot::id).containsExactly(ids.get(3), ids.get(4));
        assertThat(second.more()).isFalse();
        assertThat(log.spots().page(Optional.empty(), 10, true).items()).extracting(KeptSpot::id).containsExactlyElementsOf(ids);
    }
}
