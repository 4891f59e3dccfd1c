package rungwise.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class EvidenceTest {
    @Test
    void one_sign_counts_in_full_and_a_second_of_its_kind_half() {
        assertThat(Evidence.ofAGroup(new double[]{Math.log(8)}, 1000)).isCloseTo(Math.log(8), within(1e-12));
        assertThat(Evidence.ofAGroup(new double[]{Math.log(4), Math.log(8)}, 1000))
                .isCloseTo(Math.log(8 * 2), within(1e-12));
    }

    @Test
    void for_and_against_are_taken_apart_and_cancel() {
        assertThat(Evidence.ofAGroup(new double[]{Math.log(8), -Math.log(8)}, 50)).isCloseTo(0, within(1e-12));
    }

    @Test
    void a_group_never_exceeds_its_cap_either_way() {
        assertThat(Evidence.ofAGroup(new double[]{9, 9, 9}, 5)).isCloseTo(Math.log(5), within(1e-12));
        assertThat(Evidence.ofAGroup(new double[]{-9, -9}, 5)).isCloseTo(-Math.log(5), within(1e-12));
        assertThatThrownBy(() -> Evidence.ofAGroup(new double[0], 0.5)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void probabilities_sum_to_one_also_from_huge_weights() {
        double[] p = Evidence.probabilities(new double[]{1000, 1000 + Math.log(3)});
        assertThat(p[0]).isCloseTo(0.25, within(1e-12));
        assertThat(p[1]).isCloseTo(0.75, within(1e-12));
    }

    @Test
    void over_two_states_the_mixture_chooses_what_the_two_state_search_chooses() {
        java.util.Random random = new java.util.Random(5);
        for (int round = 0; round < 200; round++) {
            int n = 1 + random.nextInt(8);
            List<ExpectedCost.Try> two = new java.util.ArrayList<>();
            List<LeastCostMix.Try> many = new java.util.ArrayList<>();
            for (int i = 0; i < n; i++) {
                double cost = random.nextDouble() * 60;
                double fresh = random.nextDouble();
                double hard = random.nextDouble();
                String family = "f" + random.nextInt(3);
                two.add(new ExpectedCost.Try(cost, fresh, hard, family));
                many.add(new LeastCostMix.Try(cost, List.of(fresh, hard), family));
            }
            Belief belief = new Belief(random.nextDouble());
            LeastCostMix.Chosen chosen = LeastCostMix.of(many, 0, new long[n],
                    new double[]{belief.fresh(), belief.hardened()}, 240);
            assertThat(chosen.mask()).isEqualTo(LeastCostSubset.of(two, 0, new long[n], belief, 240));
        }
    }
}
