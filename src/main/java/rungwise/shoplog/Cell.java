package rungwise.shoplog;

import rungwise.knowledge.surface.SurfaceKind;

/**
 * What a chance belongs to.
 *
 * @param bond     bond class in that state
 * @param hardened the state of the deposit; else fresh
 * @param surface  family of surfaces
 */
record Cell(String method, String bond, boolean hardened, SurfaceKind surface) {
    String state() {
        return hardened ? "hardened" : "fresh";
    }
}
