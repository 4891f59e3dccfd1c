package rungwise.knowledge.safety;

import java.util.List;
import rungwise.knowledge.common.Basis;

/**
 * How much may be in the air.
 *
 * @param setBy who set it
 */
public record AirLimit(Over over, double value, Unit unit, String setBy, Basis basis, List<String> sources) {
    /** Over what time. SHIFT is a mean over eight hours, SHORT over fifteen minutes; DANGEROUS is where people leave. */
    public enum Over { SHIFT, SHORT, CEILING, DANGEROUS }

    /** In what it is given. */
    public enum Unit { PPM, MG_M3 }

    public AirLimit {
        sources = sources == null ? List.of() : List.copyOf(sources);
    }
}
