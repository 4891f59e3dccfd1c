package rungwise.science;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Why fresh and hardened deposits share one set of spheres: what is published of both either measures something else once
 * it has cured, or does not agree which way age moves it. Entries of Hansen's table (hansen-polymers). Should one of these change, two
 * sets may be worth having.
 */
class AgedSpheresTest {
    /** Entry 217, dark extracted pine resin; entry 187, ester gum, stands among the spheres of rosin. */
    private static final Sphere DARK_PINE_RESIN = new Sphere(new Hansen(17.4, 10, 13), 10.5);

    private static double nearest(String substance, String material) {
        return Solubility.interval(Published.substance(substance).hansen(), Published.spheres(material)).low();
    }

    /** Of the cured resin only attack was measured: taken for dissolution, curing would make solvents work better. */
    @Test
    void cured_epoxy_is_attacked_where_uncured_epoxy_dissolves_no_better() {
        for (String solvent : List.of("acetone", "n_butyl_acetate", "ethyl_acetate", "butoxyethanol")) {
            assertThat(nearest(solvent, "epoxy_cured")).as(solvent).isLessThan(nearest(solvent, "epoxy_uncured"));
        }
    }

    /** One candidate for aged resin leaves alcohol outside, the other well inside: no sign, let alone a figure. */
    @Test
    void the_candidates_for_aged_tree_resin_disagree_on_alcohol() {
        for (String alcohol : List.of("ethanol", "isopropanol")) {
            Hansen solvent = Published.substance(alcohol).hansen();
            assertThat(Solubility.band(Solubility.red(solvent, DARK_PINE_RESIN))).isEqualTo(Solubility.Band.DISSOLVES);
            assertThat(Published.spheres("rosin")).anyMatch(s -> Solubility.red(solvent, s) > 1);
        }
    }
}
