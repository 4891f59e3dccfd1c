package rungwise.names;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Listed;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.product.LabelReading;
import rungwise.knowledge.product.ProductFunction;
import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.words.AskedFact;
import rungwise.knowledge.words.IdleWord;
import rungwise.knowledge.words.Spoken;
import rungwise.knowledge.words.SpokenWords;
import rungwise.knowledge.words.WideWord;

/** What everything in a base is called. */
public final class Vocabulary {
    private final KnowledgeBase base;
    private final SpokenWords words;
    private final Spoken spoken;

    public Vocabulary(KnowledgeBase base) {
        this.base = base;
        this.words = base.questionWords().spoken();
        this.spoken = words.spoken();
    }

    public Names of(Sort sort) {
        return switch (sort) {
            case DEPOSITS -> deposits();
            case SURFACES -> surfaces();
            case METHODS -> methods();
            case SIGNS -> signs();
        };
    }

    public Names deposits() {
        return new Names(spoken, base.contaminants().values().stream().map(c -> new Called(c.id(), c.name(), c.alsoCalled(),
                c.recognise().look() + ". " + c.recognise().feel() + ".", c.what() + " " + c.recognise().look())).toList(), words.wideDeposits().values(), words.idle(IdleWord.Beside.DEPOSITS));
    }

    public Names surfaces() {
        return new Names(spoken, base.surfaces().values().stream().map(Vocabulary::called).toList(), words.wideSurfaces().values(),
                words.idle(IdleWord.Beside.SURFACES));
    }

    private static Called called(Surface s) {
        return new Called(s.id(), s.name(), s.alsoCalled(), s.tell().isEmpty() ? s.description() + "." : s.tell(), s.description());
    }

    public Names methods() {
        return new Names(spoken, base.methods().values().stream().map(Vocabulary::called).toList(), words.wideMethods().values());
    }

    private static Called called(Method m) {
        return new Called(m.id(), m.name(), m.alsoCalled(), "", m.inOneGo());
    }

    public Names agents() {
        return new Names(spoken, base.agents().values().stream().map(a -> new Called(a.id(), a.name(), List.of(), "", "")).toList(),
                List.of());
    }

    /** What stands on a shelf is an agent or a tool before it is what a label says it is for, and that before it is a method. */
    public Names shelf() {
        Names tools = new Names(spoken, base.tools().values().stream().map(t -> new Called(t.id(), t.name(), List.of(), "", ""))
                .toList(), List.of());
        return agents().and(tools).and(functions()).and(methods());
    }

    /** What labels say: the one agent that is sold under the words, or the methods that it may be for. */
    private Names functions() {
        List<Called> one = new ArrayList<>();
        List<WideWord> several = new ArrayList<>();
        for (ProductFunction f : base.productWords().functions().values()) {
            List<Method> sold = f.readings().stream().map(LabelReading::method).distinct().map(base.methods()::get).toList();
            List<String> said = Stream.concat(Stream.of(f.name()), f.alsoCalled().stream()).toList();
            if (sold.stream().map(Method::agent).distinct().count() == 1) {
                one.add(new Called(sold.get(0).agent(), f.name(), said, "", ""));
            } else if (!sold.isEmpty()) {
                several.add(new WideWord(f.id(), said, sold.stream().map(Method::id).toList(), false, false));
            }
        }
        return new Names(spoken, one, several);
    }

    /** Methods, and gates by their id. */
    public Names consent() {
        return methods().and(new Names(spoken, base.gates().keySet().stream().map(g -> new Called(g, g, List.of(), "", "")).toList(),
                List.of()));
    }

    /** A sign is called by what it says. */
    public Names signs() {
        return new Names(spoken, base.observations().values().stream().map(o -> new Called(o.id(), o.says(), List.of(), "", ""))
                .toList(), List.of());
    }

    /** What may be replied to a question. */
    public Names replies(List<AskedFact.Reply> replies) {
        return new Names(spoken, replies.stream().map(r -> new Called(r.id(), r.says(), r.alsoCalled(), "", "")).toList(), List.of());
    }

    /** Places on the vehicle. */
    public Names places() {
        return listed(base.questionWords().places().values(), words.idle(IdleWord.Beside.SURFACES));
    }

    /** How a try may have ended. */
    public Names outcomes() {
        return listed(base.questionWords().outcomes().values(), Set.of());
    }

    /** What people reach for before anybody is asked. */
    public Names everydayProducts() {
        return listed(base.questionWords().everydayProducts().values(), words.idle(IdleWord.Beside.SURFACES));
    }

    private Names listed(Collection<? extends Listed> list, Set<String> idle) {
        return new Names(spoken, list.stream().map(w -> new Called(w.id(), w.name(), w.alsoCalled(), "", "")).toList(), List.of(), idle);
    }

    public PlainAges ages() {
        return new PlainAges(spoken, words.times().values());
    }
}
