package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.question.Question;

/** Law 15, with nothing washed yet: on a washed panel no preparation is left that could be wrong. */
class WettingTest {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    private static final Breaks TOUCHED = new Breaks("15 nothing touches it before what wets and loosens it");
    private static final Breaks FLOODED = new Breaks("15 no running water where nothing drains");
    private static final Breaks TWICE = new Breaks("15 a wash is preparation or a rung");
    private static int prepared;

    @BeforeAll
    static void look() {
        UsualSpots.all().map(Placed::plain).filter(a -> !a.isStopped()).forEach(answer -> {
            prepared += answer.before().isEmpty() ? 0 : 1;
            TOUCHED.look(answer, answer.rungs().stream().anyMatch(r -> Wetting.wetsAndLoosens(r.method())), Wetting.touchedTooSoon(answer));
            FLOODED.look(answer, Wetting.isClosedIn(answer.question()), Wetting.floods(answer));
            TWICE.look(answer, !answer.rungs().isEmpty() && !answer.before().isEmpty(), Wetting.twice(answer));
        });
        // what lies inside, on glass and hard parts that are also found outside
        for (String contaminant : List.of("glass_haze_int", "nicotine_film", "soft_drink", "coffee_tea", "sunscreen_lotion", "int_dust")) {
            for (Surface surface : KNOWN.surfaces().values()) {
                if (surface.kind() == SurfaceKind.GLASS || surface.id().startsWith("trim_gloss") || surface.kind() == SurfaceKind.PLASTIC) {
                    Placed answer = Placed.plain(UsualSpots.of(contaminant, surface.id(), "P2D", "facts: {place: " + Placed.INSIDE + "}"));
                    FLOODED.look(answer, !answer.rungs().isEmpty(), Wetting.floods(answer));
                }
            }
        }
    }

    @Test
    void nothing_touches_the_spot_before_what_wets_and_loosens_it() {
        TOUCHED.none();
        assertThat(TOUCHED.percent()).isGreaterThanOrEqualTo(30);
    }

    @Test
    void no_water_runs_where_nothing_drains() {
        FLOODED.none();
        assertThat(FLOODED.percent()).isGreaterThanOrEqualTo(30);
    }

    @Test
    void a_wash_is_preparation_or_a_rung_and_never_both() {
        TWICE.none();
        assertThat(TWICE.percent()).isGreaterThanOrEqualTo(30);
    }

    /** An answer that prepares nothing would keep this law too. */
    @Test
    void what_is_not_washed_is_still_prepared() {
        Placed tar = Placed.plain(UsualSpots.of("tar_spot", "clear_2k_sound", "P12D", "shelf: [aliph_tar, neutral_shampoo]"));
        assertThat(tar.ids()).contains("aliph_tar");
        assertThat(tar.before()).anyMatch(s -> s.isFor("aliph_tar") && Set.of("contact_wash_neutral", "foam_neutral", "rinseless_wash")
                .contains(s.name()));
        System.out.println("law 15: " + prepared + " answers with preparation");
        assertThat(prepared).isGreaterThan(100);
    }

    @Test
    void a_mitt_before_the_soak_a_flood_on_the_console_and_a_wash_on_both_sides_are_seen() {
        Question dropping = UsualSpots.of("bird_dropping", "clear_2k_sound", "P5D", "done: [washed, dried]");
        Placed sound = Placed.plain(dropping);
        assertThat(sound.rungs()).anyMatch(r -> Wetting.wetsAndLoosens(r.method()));
        assertThat(Wetting.touchedTooSoon(sound)).isEmpty();
        String soak = sound.rungs().stream().map(Placed.Offer::method).filter(Wetting::wetsAndLoosens).findFirst().orElseThrow();
        assertThat(Wetting.touchedTooSoon(sound.preparedBy(List.of(new Placed.Step("contact_wash_neutral", Set.of(soak)))))).isNotEmpty();
        assertThat(Wetting.touchedTooSoon(sound.preparedBy(List.of(new Placed.Step("flood_rinse", Set.of(soak)))))).isEmpty();
        assertThat(Wetting.twice(sound)).isEmpty();
        assertThat(Wetting.twice(sound.preparedBy(List.of(new Placed.Step(soak, Set.of()))))).containsExactly(soak);
        Placed cloth = Placed.plain(UsualSpots.of("coffee_tea", "int_fabric_woven", "P2D", ""));
        assertThat(Wetting.floods(cloth)).isEmpty();
        assertThat(Wetting.floods(cloth.preparedBy(List.of(new Placed.Step("flood_rinse", Set.of()))))).containsExactly("before: flood_rinse");
    }
}
