package rungwise.workup;

import java.util.List;
import rungwise.rules.said.Because;

/**
 * How long it stays wet here.
 *
 * @param basis  computed from agent, panel and air, or table: the dwell, as too little is known
 * @param atOnce what may be wetted at once and still be wiped before it dries or has stayed too long
 */
public record Wet(double fromSeconds, double toSeconds, String basis, AtOnce atOnce, List<Because> because) {
    private static final String COMPUTED = "computed";

    /** Whether it was reckoned for this panel and this air. */
    public boolean computed() {
        return basis.equals(COMPUTED);
    }
}
