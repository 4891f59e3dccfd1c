package rungwise.knowledge.method;

/**
 * How harsh a method is on the reference surface (sound, cured, gloss two-component clear).
 *
 * @param mechanical   0–10 anchored grade
 * @param chemical     0–10 anchored grade
 * @param thermal      0–10 anchored grade
 * @param filmMicrons  clear removed by a full set of passes
 */
public record Severity(int mechanical, int chemical, int thermal, double filmMicrons) {
    public int worst() {
        return Math.max(mechanical, Math.max(chemical, thermal));
    }
}
