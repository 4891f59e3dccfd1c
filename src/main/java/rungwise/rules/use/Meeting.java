package rungwise.rules.use;

import java.util.List;
import rungwise.knowledge.chemistry.Reactive;
import rungwise.knowledge.method.Agent;
import rungwise.text.Figure;

/** Two agents that follow one another on one spot. */
public record Meeting(Agent first, Agent then) {
    public boolean of(Reactive one, Reactive two) {
        return first.holds(one) && then.holds(two);
    }

    public boolean either(Reactive one, Reactive two) {
        return of(one, two) || of(two, one);
    }

    public List<Figure> figures() {
        return List.of(Figure.against("meets", first.name(), "", then.name()));
    }
}
