package rungwise.http;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import rungwise.text.Texts;

/** The kinds of problem. Each has a page that the service serves itself, so that the type of a problem leads somewhere. */
enum Kind {
    UNREADABLE(400), NOT_FOUND(404), WRONG_METHOD(405), TOO_SLOW(408), TOO_LARGE(413), NOT_JSON(415),
    WRONG_HOST(421), WRONG_QUESTION(422), WRONG_ATTEMPT(422), NOT_UNDONE(422), KEY_REUSED(422), REFUSED(400), FAILED(500),
    NOT_READY(503), NO_LOG(503), LOG_UNREACHABLE(503), LOG_FULL(507);

    private final int status;

    Kind(int status) {
        this.status = status;
    }

    int status() {
        return status;
    }

    String title() {
        return Texts.said("refused." + id());
    }

    String remedy() {
        return Texts.said("refused." + id() + ".do");
    }

    String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Optional<Kind> byId(String id) {
        return Arrays.stream(values()).filter(k -> k.id().equals(id)).findFirst();
    }

    /** The kind for a status that the server below chose; its own status is kept in the answer. */
    static Kind of(int status) {
        return Arrays.stream(values()).filter(k -> k.status == status).findFirst()
                .orElse(status >= 500 ? FAILED : REFUSED);
    }
}
