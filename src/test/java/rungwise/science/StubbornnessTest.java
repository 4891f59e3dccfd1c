package rungwise.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Spots that differ, against sums over a fine grid and against tries whose source is known. */
class StubbornnessTest {
    private static final Stubbornness ONE = new Stubbornness(1);

    /** Over a grid of a thousand steps, as nobody would compute it in a program. */
    private static double onGrid(double typical) {
        double sum = 0;
        double all = 0;
        for (double u = -6; u <= 6; u += 0.012) {
            sum += Math.exp(-u * u / 2) / (1 + Math.exp(-typical - u));
            all += Math.exp(-u * u / 2);
        }
        return sum / all;
    }

    @Test
    void five_degrees_give_the_share_of_all_spots_to_a_thousandth() {
        for (double typical = -5; typical <= 5; typical += 0.5) {
            assertThat(ONE.mean(typical)).isCloseTo(onGrid(typical), within(0.001));
        }
    }

    @Test
    void what_clears_a_share_of_all_spots_has_a_typical_logit_that_gives_it_back() {
        for (double mean = 0.005; mean < 1; mean += 0.005) {
            assertThat(ONE.mean(ONE.typical(mean))).isCloseTo(mean, within(1e-9));
        }
    }

    @Test
    void after_a_failure_the_same_works_less_often_and_where_all_are_alike_as_often() {
        double next = 0;
        double left = 0;
        double[] spread = ONE.spread(0.7);
        for (int k = 0; k < Stubbornness.degrees(); k++) {
            left += Stubbornness.share(k) * (1 - spread[k]);
            next += Stubbornness.share(k) * (1 - spread[k]) * spread[k];
        }
        assertThat(left).isCloseTo(0.3, within(1e-9));
        assertThat(next / left).isBetween(0.5, 0.62);
        assertThat(new Stubbornness(0).spread(0.7)).containsOnly(0.7);
        assertThat(ONE.spread(0)).containsOnly(0);
        assertThat(ONE.spread(1)).containsOnly(1);
    }

    /** Exact expected counts of two tries in a row stand for a log without luck. */
    @Test
    void a_fit_finds_what_lies_behind_a_second_try_that_only_sees_what_the_first_left() {
        double first = ONE.typical(0.8);
        double second = ONE.typical(0.5);
        List<RandomIntercept.Spots> seen = new ArrayList<>();
        double cleared = 0;
        double then = 0;
        double never = 0;
        for (int k = 0; k < Stubbornness.degrees(); k++) {
            double a = ONE.chance(first, k);
            double b = ONE.chance(second, k);
            cleared += Stubbornness.share(k) * a;
            then += Stubbornness.share(k) * (1 - a) * b;
            never += Stubbornness.share(k) * (1 - a) * (1 - b);
        }
        seen.add(spots(10_000 * cleared, 1));
        seen.add(spots(10_000 * then, 0, 1));
        seen.add(spots(10_000 * never, 0, 0));
        double[] effects = RandomIntercept.of(seen, new double[] {0.01, 0.01}, ONE);
        assertThat(ONE.mean(effects[0])).isCloseTo(0.8, within(0.005));
        assertThat(ONE.mean(effects[1])).isCloseTo(0.5, within(0.01));
        double[] alike = RandomIntercept.of(seen, new double[] {0.01, 0.01}, new Stubbornness(0));
        assertThat(1 / (1 + Math.exp(-alike[1]))).as("tries taken one by one blame the second method").isLessThan(0.4);
    }

    private static RandomIntercept.Spots spots(double times, double... worked) {
        List<RandomIntercept.Try> tries = new ArrayList<>();
        for (int i = 0; i < worked.length; i++) {
            tries.add(new RandomIntercept.Try(new double[] {0}, new int[][] {{i}}, worked[i]));
        }
        return new RandomIntercept.Spots(new double[] {1}, tries, times);
    }
}
