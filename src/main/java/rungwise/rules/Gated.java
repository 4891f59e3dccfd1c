package rungwise.rules;

/** A method may be used once a gate is open. */
public record Gated(String method, String gate, String figures) implements Conclusion {
    @Override
    public String key() {
        return method + " " + gate + " " + figures;
    }
}
