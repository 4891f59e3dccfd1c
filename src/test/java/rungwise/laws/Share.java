package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;

/** Counts the tries in which a law had something to hold for: a law that is never put to the test proves nothing. */
final class Share {
    private static final int LEAST_PERCENT = 30;
    private int tries;
    private int real;
    private final List<String> breaches = new ArrayList<>();

    /** Every breach is kept, so that one run shows all kinds of them. */
    void breach(String what) {
        breaches.add(what);
    }

    void count(boolean wasReal) {
        tries++;
        real += wasReal ? 1 : 0;
    }

    void isEnough(String law) {
        int percent = tries == 0 ? 0 : 100 * real / tries;
        System.out.println("law share: " + law + ": " + real + " of " + tries + " tries, " + percent + " %");
        assertThat(breaches).as(law).isEmpty();
        assertThat(percent).as("tries of \"%s\" that put the law to the test, in percent", law)
                .isGreaterThanOrEqualTo(LEAST_PERCENT);
    }
}
