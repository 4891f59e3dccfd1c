package rungwise.rules;

/** Yes, but. */
public record Caution(String method, String text, String figures) implements Conclusion {
    @Override
    public String key() {
        return method + " " + text + " " + figures;
    }
}
