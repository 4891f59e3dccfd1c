package rungwise.answer;

import java.util.OptionalDouble;
import java.util.Random;
import rungwise.knowledge.common.Minutes;
import rungwise.knowledge.method.Method;

/** The same method with minutes up to a fifth shorter or longer. */
final class Shaken {
    private Shaken() {
    }

    static Method minutes(Method m, Random random) {
        double by = 0.8 + 0.4 * random.nextDouble();
        Minutes minutes = new Minutes(times(m.minutes().spot(), by), times(m.minutes().squareMetre(), by));
        return new Method(m.id(), m.name(), m.kind(), m.family(), m.mechanism(), m.role(), m.works(), m.worksLess(), m.agent(), m.tool(), m.madeFor(), m.floods(),
                m.technique(), m.dwell(), m.tries(), m.window(), m.contactC(), m.pressureBar(), m.standOffCm(), m.severity(),
                m.marringPercent(), minutes, m.level(), m.chances(), m.softens(), m.needsSoftener(), m.doneBy(),
                m.stopSigns(), m.afterwards(), m.correction(), m.gates(), m.waste(), m.ppe(), m.risks(), m.note(),
                m.basis(), m.sources(), m.alsoCalled());
    }

    private static OptionalDouble times(OptionalDouble value, double by) {
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * by) : value;
    }
}
