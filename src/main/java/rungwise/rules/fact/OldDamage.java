package rungwise.rules.fact;

import java.util.List;
import java.util.Optional;
import rungwise.knowledge.words.PriorDamage;
import rungwise.knowledge.words.Weakness;
import rungwise.text.Figure;

/** Damage that was there before the work. */
public record OldDamage(PriorDamage damage) {
    public boolean is(Weakness weakness) {
        return damage.is(weakness);
    }

    public String name() {
        return damage.name();
    }

    public Optional<String> treatAs() {
        return damage.treatAs();
    }

    public List<Figure> figures() {
        return List.of(Figure.of("oldDamage", damage.name()));
    }
}
