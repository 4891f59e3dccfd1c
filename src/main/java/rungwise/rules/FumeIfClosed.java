package rungwise.rules;

import rungwise.knowledge.Respirator;

/** A gas that would gather in a closed bay, where nobody told where the work is. */
public record FumeIfClosed(Fume closed) {
    public String method() {
        return closed.method();
    }

    public boolean hasCartridge() {
        return closed.hasCartridge();
    }

    public Respirator respirator() {
        return closed.respirator();
    }

    public String figures() {
        return "outdoors or indoors not told; if closed, " + closed.figures();
    }
}
