package rungwise.http;

import java.util.Arrays;
import java.util.Optional;

/** The kinds of problem. Each has a page that the service serves itself, so that the type of a problem leads somewhere. */
enum Kind {
    UNREADABLE(400, "The request cannot be read", "Send one JSON document in UTF-8: at most 20 levels deep, no field "
            + "twice, nothing after its end. Query parameters must be ones the service knows."),
    NOT_FOUND(404, "There is nothing here", "Look in /openapi.json for the paths, and in the lists for the ids."),
    WRONG_METHOD(405, "This path does not take that method", "Use one of the methods in the Allow header."),
    TOO_SLOW(408, "The request took too long to arrive", "Send the whole body within ten seconds."),
    TOO_LARGE(413, "The request is too large", "A question is short. Keep the body under one million bytes."),
    NOT_JSON(415, "The body is not JSON", "Send the question with Content-Type: application/json."),
    WRONG_HOST(421, "This service does not answer to that name",
            "Use the address that was printed when the service started. The check keeps web pages elsewhere from "
                    + "reaching it under a name of their own."),
    WRONG_QUESTION(422, "The question can be read but not answered",
            "Each entry of errors points to a field, says what is wrong with it and what to do."),
    WRONG_ATTEMPT(422, "The attempt can be read but not kept",
            "Each entry of errors points to a field, says what is wrong with it and what to do."),
    KEY_REUSED(422, "The Idempotency-Key stands for another attempt",
            "Send the same body again to hear the first answer, or take a new key for a new attempt."),
    REFUSED(400, "The request was refused", "Compare it with /openapi.json."),
    FAILED(500, "The service failed", "The fault is not in the request. The log of the service has it."),
    NOT_READY(503, "The service is not ready", "It is stopping. Ask again when it has been started anew."),
    NO_LOG(503, "No log is open here", "Start the service with --data and a folder, or the address of a database."),
    LOG_UNREACHABLE(503, "The log cannot be used now",
            "The request was not acknowledged; if the database was lost at that moment, it may have been kept whole. Send it "
                    + "again, with the same Idempotency-Key, when the log is back: it is kept once."),
    LOG_FULL(507, "The disk of the log is full",
            "The request was not acknowledged. Make room, then send it again with the same Idempotency-Key: it is kept once.");

    private final int status;
    private final String title;
    private final String remedy;

    Kind(int status, String title, String remedy) {
        this.status = status;
        this.title = title;
        this.remedy = remedy;
    }

    int status() {
        return status;
    }

    String title() {
        return title;
    }

    String remedy() {
        return remedy;
    }

    String id() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
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
