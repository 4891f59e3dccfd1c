package rungwise.rules.said;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import rungwise.text.Figure;

/**
 * Why a conclusion stands: a reason, with what was found here.
 *
 * @param sources published sources of what was found, beside those of the reason itself
 */
public record Because(Reason reason, @JsonInclude(JsonInclude.Include.NON_EMPTY) List<Figure> figures,
                      @JsonInclude(JsonInclude.Include.NON_EMPTY) List<String> sources) {
    public Because {
        figures = List.copyOf(figures);
        sources = List.copyOf(sources);
    }

    public static Because of(Reason reason, List<Figure> figures) {
        return new Because(reason, figures, List.of());
    }

    public static Because of(Reason reason, String found) {
        return of(reason, Figure.said(found));
    }

    /** Published sources of the reason and of what was found. */
    public List<String> allSources() {
        return java.util.stream.Stream.concat(reason.sources().stream(), sources.stream()).distinct().toList();
    }

    public String id() {
        return reason.id();
    }

    /** The id of its reason among its like. */
    public String name() {
        return reason.name();
    }

    public String says() {
        return reason.says();
    }

    public String cause() {
        return reason.cause();
    }
}
