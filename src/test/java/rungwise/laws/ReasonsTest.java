package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.decision.Decision;
import rungwise.knowledge.decision.Stage;
import rungwise.rules.said.Because;
import rungwise.rules.said.Reason;
import rungwise.text.Figure;

/** What is held of reasons over the whole sweep sees a break where there is one. */
class ReasonsTest {
    private static final Placed GLUE = Placed.named(UsualSpots.of("adhesive_residue", "clear_2k_sound", "P12D", "done: [washed, dried], "
            + "facts: {refinished: false, paintAgeDays: 2900}"));

    private static Placed with(Placed answer, Placed.Offer rung) {
        return answer.with(answer.rungs().stream().map(r -> r.method().equals(rung.method()) ? rung : r).toList());
    }

    @Test
    void a_reason_that_no_book_knows_is_seen() {
        assertThat(Reasons.unresolved(GLUE)).isEmpty();
        Because invented = Because.of(Reason.decision(new Decision("as-we-always-did", "So it has always been done.", "", Stage.WORTH, 0, "step",
                Basis.COMMON_PRACTICE, List.of())), List.of());
        List<Placed.Said> said = new ArrayList<>(GLUE.said());
        said.add(new Placed.Said("rung", List.of(invented)));
        assertThat(Reasons.unresolved(GLUE.saying(said))).containsExactly("decisions/as-we-always-did");
    }

    /** The first rung as if it waited for the last, with a reason of order that names what is given; none where nothing is. */
    private static Placed waiting(String... named) {
        Placed.Offer last = GLUE.rungs().get(GLUE.rungs().size() - 1);
        Placed.Offer first = GLUE.rungs().get(0);
        Because order = Placed.named(UsualSpots.of("fallout_iron", "clear_2k_sound", "P90D", "done: [washed, dried]")).rungs().stream()
                .flatMap(r -> r.because().stream()).filter(Reasons::isOfOrder).findFirst().orElseThrow();
        List<Because> because = new ArrayList<>(first.because().stream().filter(b -> !Reasons.isOfOrder(b)).toList());
        if (named.length > 0) {
            because.add(new Because(order.reason(), List.of(Figure.of("after", String.join(" ", named))), List.of()));
        }
        return with(GLUE, first.sortedBy(last.key()).reasoned(because));
    }

    @Test
    void a_rung_that_waits_without_saying_for_which_is_seen() {
        String first = GLUE.ids().get(0);
        String last = GLUE.ids().get(GLUE.ids().size() - 1);
        assertThat(GLUE.ids()).hasSizeGreaterThan(2);
        assertThat(Reasons.silentWaits(waiting())).anyMatch(w -> w.startsWith(first + " waits for " + last));
        assertThat(Reasons.silentWaits(waiting(last))).noneMatch(w -> w.startsWith(first + " "));
        assertThat(Reasons.silentWaits(waiting(last, "before", first))).as("names itself too").noneMatch(w -> w.startsWith(first + " "));
        // who names everybody has named nobody, and another one is not the one that it waits for
        assertThat(Reasons.silentWaits(waiting(GLUE.ids().toArray(String[]::new)))).anyMatch(w -> w.startsWith(first + " "));
        assertThat(Reasons.silentWaits(waiting("ozone"))).anyMatch(w -> w.startsWith(first + " "));
    }

    @Test
    void a_key_that_was_raised_under_its_own_name_is_seen() {
        Placed.Offer first = GLUE.rungs().get(0);
        List<Object> raised = new ArrayList<>(first.key());
        raised.set(1, 9);
        assertThat(Reasons.moved(GLUE)).noneMatch(r -> r.method().equals(first.method()));
        assertThat(Reasons.moved(with(GLUE, first.sortedBy(raised)))).anyMatch(r -> r.method().equals(first.method()));
    }

    @Test
    void a_method_left_out_for_the_sake_of_one_that_is_gone_is_seen() {
        Placed.Left twin = Reasons.again(GLUE).stream().filter(l -> l.because().stream().flatMap(b -> Placed.named(b).stream())
                .anyMatch(GLUE.ids()::contains)).findFirst().orElseThrow();
        assertThat(Reasons.absentTwins(GLUE.leaving(List.of(twin)))).isEmpty();
        assertThat(Reasons.absentTwins(GLUE.leaving(List.of(twin)).with(List.of()))).hasSize(1).first().asString()
                .startsWith(twin.method() + " is left out for ");
    }
}
