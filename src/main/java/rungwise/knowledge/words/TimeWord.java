package rungwise.knowledge.words;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * A word by which people say how old something is; one that is no unit, no moment and no number says nothing and is passed by.
 *
 * @param unitHours hours of one such unit
 * @param hoursAgo  hours since such a moment
 * @param ahead     whether it is said as well of the time to come
 * @param times     how many it means
 */
public record TimeWord(String id, OptionalDouble unitHours, OptionalDouble hoursAgo, boolean ahead, OptionalDouble times, List<String> alsoCalled) {
    public TimeWord {
        unitHours = unitHours == null ? OptionalDouble.empty() : unitHours;
        hoursAgo = hoursAgo == null ? OptionalDouble.empty() : hoursAgo;
        times = times == null ? OptionalDouble.empty() : times;
        alsoCalled = alsoCalled == null ? List.of() : List.copyOf(alsoCalled);
    }

    /** Every way to say it. */
    public Stream<String> said() {
        return Stream.concat(Stream.of(id), alsoCalled.stream());
    }

    public boolean saysNothing() {
        return unitHours.isEmpty() && hoursAgo.isEmpty() && times.isEmpty();
    }
}
