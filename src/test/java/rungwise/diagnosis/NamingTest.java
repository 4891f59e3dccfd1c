package rungwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rungwise.Base;

/** How well a deposit is named by the words of somebody who looks and errs, and how honest the doubt is. */
class NamingTest {
    private static final int SPOTS = 2000;
    private static final Identifier IDENTIFIER = new Identifier(Base.advisor());

    /**
     * What came of many spots.
     *
     * @param offBy distance between what was said and what came true, over ten bins
     * @param sure  share of spots of which nine in ten or more was said
     * @param borne share of these that were right
     */
    private record Score(double first, double three, double offBy, double sure, double borne) {
    }

    private static Score score(String name, double errs, boolean byLookAlike, boolean onSurface, int fewest, int most) {
        Observer observer = new Observer(20_260_101, errs, byLookAlike);
        Random many = new Random(1);
        int first = 0;
        int three = 0;
        int sure = 0;
        int borne = 0;
        double[] said = new double[10];
        double[] right = new double[10];
        for (int i = 0; i < SPOTS; i++) {
            Observer.Seen seen = observer.look(fewest + many.nextInt(most - fewest + 1), onSurface);
            Map<String, Double> belief = IDENTIFIER.belief(seen.spot());
            double truth = belief.get(seen.deposit().id());
            // of several that are alike likely, the truth is none
            long likelier = belief.entrySet().stream().filter(e -> e.getValue() >= truth && !e.getKey().equals(seen.deposit().id())).count();
            double top = belief.values().stream().mapToDouble(p -> p).max().orElseThrow();
            first += likelier == 0 ? 1 : 0;
            three += likelier < 3 ? 1 : 0;
            sure += top >= 0.9 ? 1 : 0;
            borne += top >= 0.9 && likelier == 0 ? 1 : 0;
            int bin = Math.min(9, (int) (top * 10));
            said[bin] += top;
            right[bin] += likelier == 0 ? 1 : 0;
        }
        double offBy = 0;
        for (int i = 0; i < 10; i++) {
            offBy += Math.abs(said[i] - right[i]) / SPOTS;
        }
        Score score = new Score((double) first / SPOTS, (double) three / SPOTS, offBy, (double) sure / SPOTS, sure == 0 ? 1 : (double) borne / sure);
        System.out.printf(Locale.ROOT, "naming, %s: right first %.1f %%, in three %.1f %%, said off by %.3f, nine in ten said of %.1f %% and right in %.1f %%%n",
                name, 100 * score.first(), 100 * score.three(), score.offBy(), 100 * score.sure(), 100 * score.borne());
        return score;
    }

    @Test
    void who_errs_once_in_five_by_what_it_is_taken_for_gets_the_right_name_and_an_honest_doubt() {
        holds(score("all kinds, one in five taken for another", 0.2, true, false, 6, 6));
    }

    @Test
    void who_errs_once_in_five_by_any_word_gets_the_right_name_and_an_honest_doubt() {
        holds(score("all kinds, one in five any word", 0.2, false, false, 6, 6));
    }

    @Test
    void the_surface_tells_of_the_deposit_too() {
        Score told = score("all kinds and the surface, one in five any word", 0.2, false, true, 6, 6);
        holds(told);
        assertThat(told.first()).isGreaterThanOrEqualTo(0.89);
    }

    private static void holds(Score score) {
        assertThat(score.first()).isGreaterThanOrEqualTo(0.83);
        assertThat(score.offBy()).isLessThanOrEqualTo(0.05);
        assertThat(score.sure()).isGreaterThanOrEqualTo(0.5);
        assertThat(score.borne()).isGreaterThanOrEqualTo(0.97);
    }

    @Test
    void two_or_three_words_and_the_surface_name_two_in_three() {
        Score told = score("two or three kinds and the surface, one in five any word", 0.2, false, true, 2, 3);
        Score alike = score("two or three kinds and the surface, one in five taken for another", 0.2, true, true, 2, 3);
        Score untold = score("two or three kinds, one in five any word", 0.2, false, false, 2, 3);
        assertThat(told.first()).isGreaterThanOrEqualTo(0.66).isGreaterThan(untold.first() + 0.05);
        assertThat(alike.first()).isGreaterThanOrEqualTo(0.66);
        assertThat(told.offBy()).isLessThanOrEqualTo(0.05);
        // of so few words that are all its own or its look-alike's too little is made, not too much
        assertThat(alike.offBy()).isLessThanOrEqualTo(0.07);
    }

    @Test
    void true_words_are_not_doubted_much_and_bad_ones_not_trusted() {
        Score good = score("all kinds, no error", 0, false, false, 6, 6);
        Score bad = score("all kinds, three in ten any word", 0.3, false, false, 6, 6);
        assertThat(good.first()).isGreaterThanOrEqualTo(0.93);
        assertThat(good.offBy()).isLessThanOrEqualTo(0.05);
        assertThat(bad.first()).isGreaterThanOrEqualTo(0.70).isLessThan(good.first());
        assertThat(bad.offBy()).isLessThanOrEqualTo(0.05);
    }
}
