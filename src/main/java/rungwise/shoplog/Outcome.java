package rungwise.shoplog;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What came of an attempt. */
public enum Outcome {
    CLEARED,
    /** The deposit is off, and a mark is left beneath. */
    MARKED,
    PARTLY, NO_CHANGE, HARM;

    /** As questions, logs and the database write it. */
    @JsonValue
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Optional<Outcome> of(String word) {
        return Arrays.stream(values()).filter(o -> o.word().equals(word)).findFirst();
    }

    static List<String> words() {
        return Arrays.stream(values()).map(Outcome::word).toList();
    }
}
