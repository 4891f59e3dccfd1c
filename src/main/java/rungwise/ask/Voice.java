package rungwise.ask;

import java.util.Optional;

/** Whoever stands at the vehicle. */
public interface Voice {
    void say(String line);

    /** One of several things that may be said, by its letter. */
    void offer(String letter, String says);

    /** The next line that is said; empty where nobody is there any more. */
    Optional<String> hear();
}
