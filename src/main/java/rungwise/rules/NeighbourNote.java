package rungwise.rules;

/** What a method would do to the surface next door, and how it is kept from it. */
public record NeighbourNote(String surface, String method, String action, String figures) implements Conclusion {
    @Override
    public String key() {
        return surface + " " + method + " " + action + " " + figures;
    }
}
