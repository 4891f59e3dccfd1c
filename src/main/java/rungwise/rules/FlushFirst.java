package rungwise.rules;

/** Minutes count: this comes before everything, whatever the temperature and the ranking. */
public record FlushFirst(String method, String why, String figures) implements Conclusion {
}
