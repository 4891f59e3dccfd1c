package rungwise.science;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class LeastCostSubsetTest {
    @Property(tries = 200, seed = "7")
    void the_search_costs_what_trying_every_subset_costs(@ForAll long seed, @ForAll @IntRange(min = 1, max = 9) int n,
                                                         @ForAll @DoubleRange(min = 0, max = 1) double hardened) {
        java.util.Random random = new java.util.Random(seed);
        List<ExpectedCost.Try> tries = new ArrayList<>();
        long[] needs = new long[n];
        for (int i = 0; i < n; i++) {
            tries.add(new ExpectedCost.Try(random.nextDouble() * 60, random.nextDouble() * 0.9,
                    random.nextDouble() * 0.9, "f" + random.nextInt(3)));
            needs[i] = random.nextInt(4) == 0 && i > 0 ? 1L << random.nextInt(i) : 0;
        }
        Belief belief = new Belief(hardened);
        double least = Double.POSITIVE_INFINITY;
        for (long set = 0; set < 1L << n; set++) {
            if (holds(set, needs)) {
                least = Math.min(least, ExpectedCost.of(of(tries, set), belief, 240));
            }
        }
        long found = LeastCostSubset.of(tries, 0, needs, belief, 240);
        assertThat(holds(found, needs)).isTrue();
        assertThat(ExpectedCost.of(of(tries, found), belief, 240)).isCloseTo(least,
                org.assertj.core.data.Offset.offset(1e-6));
    }

    private static boolean holds(long set, long[] needs) {
        for (int i = 0; i < needs.length; i++) {
            if ((set & 1L << i) != 0 && (set & needs[i]) != needs[i]) {
                return false;
            }
        }
        return true;
    }

    private static List<ExpectedCost.Try> of(List<ExpectedCost.Try> tries, long set) {
        List<ExpectedCost.Try> some = new ArrayList<>();
        for (int i = 0; i < tries.size(); i++) {
            if ((set & 1L << i) != 0) {
                some.add(tries.get(i));
            }
        }
        return some;
    }
}
