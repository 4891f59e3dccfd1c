package rungwise.names;

import java.util.List;
import java.util.stream.Stream;

/**
 * An entry by all that it is called.
 *
 * @param tell  how to tell it from what it is taken for; empty where nothing says
 * @param about more of what it is, in which a word may turn up that nobody calls it
 */
public record Called(String id, String name, List<String> alsoCalled, String tell, String about) {
    public Called {
        alsoCalled = List.copyOf(alsoCalled);
    }

    /** Every way to say it. */
    Stream<String> said() {
        return Stream.concat(Stream.of(id, name), alsoCalled.stream());
    }

    /** Its id, with its name for whoever does not know it. */
    public String shown() {
        return id + " (" + name + ")";
    }
}
