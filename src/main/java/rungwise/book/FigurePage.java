package rungwise.book;

import java.util.Optional;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.decision.Assumption;
import rungwise.knowledge.decision.Decision;
import rungwise.knowledge.decision.Stage;
import rungwise.text.Texts;

/** A figure at which something is decided, or that counts where nobody told: how much it is, why, and where it counts. */
final class FigurePage {
    private final Links links;

    FigurePage(Links links) {
        this.links = links;
    }

    Page of(Decision one) {
        String value = one.isStep() ? "" : Words.exact(one.value()) + " " + one.unit();
        return sheet(one.says(), one.cause(), value, one.stage(), one.basis(), one.sources())
                .page(Chapter.DECISION.path(one.id()), Texts.said("book.decision", "id", one.id()));
    }

    Page of(Assumption one) {
        Optional<String> number = one.value().isPresent()
                ? Optional.of(Words.exact(one.value().getAsDouble()) + one.unit().map(u -> " " + u).orElse("")) : Optional.empty();
        return sheet(one.says(), one.cause(), number.or(one::word).orElse(""), one.stage(), one.basis(), one.sources())
                .page(Chapter.ASSUMPTION.path(one.id()), Texts.said("book.assumption", "id", one.id()));
    }

    private Sheet sheet(String says, String cause, String value, Stage stage, Basis basis, java.util.List<String> sources) {
        return new Sheet().say(says).fact("cause", cause).fact("value", value)
                .fact("counts-for", Texts.said("stage." + stage.name().toLowerCase(java.util.Locale.ROOT)))
                .fact("basis", links.basis(basis, sources));
    }
}
