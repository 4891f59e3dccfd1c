package rungwise.rules.said;

import java.util.List;

/** What one run of the rules concluded, in an order that does not depend on firing order. */
public record Conclusions(List<Concluded<? extends Conclusion>> all) {
    public Conclusions {
        all = List.copyOf(all);
    }

    @SuppressWarnings("unchecked")
    public <C extends Conclusion> List<Concluded<C>> of(Class<C> kind) {
        return (List<Concluded<C>>) (List<?>) all.stream().filter(c -> kind.isInstance(c.conclusion())).toList();
    }
}
