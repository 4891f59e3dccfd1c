package rungwise.ask;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwise.knowledge.KnowledgeBase;
import rungwise.names.Called;
import rungwise.names.Names;
import rungwise.names.Vocabulary;
import rungwise.names.Whereabouts;
import rungwise.question.PlainText;
import rungwise.text.Texts;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Keeps what was said before it was asked, so that only what is missing is asked. */
final class Overheard {
    private static final String PLACE = "place";
    private static final String AGE = "age";

    private final KnowledgeBase base;
    private final Vocabulary vocabulary;
    private final Trials trials;
    private final Voice voice;
    private final Listener listener;
    private final TriesTold tries;

    Overheard(KnowledgeBase base, Vocabulary vocabulary, Trials trials, Voice voice) {
        this.base = base;
        this.vocabulary = vocabulary;
        this.trials = trials;
        this.voice = voice;
        this.listener = new Listener(base, vocabulary);
        this.tries = new TriesTold(vocabulary);
    }

    /**
     * What a line added.
     *
     * @param told what is known with it; empty where it added nothing that is settled
     * @param open words by what they name that may still mean several things
     */
    record Found(Optional<Told> told, Map<String, String> open) {
    }

    /** What a line tells of everything that was not asked yet. */
    Found in(String line, String asked, Told told) {
        TriesTold.Heard tried = tries.in(line);
        Listener.Heard heard = listener.hear(tried.rest(), asked.equals(Told.SURFACE));
        List<String> kept = new ArrayList<>();
        Map<String, String> open = new HashMap<>();
        Told known = tried(tried, facts(heard, told, kept), kept);
        known = thing(Told.SURFACE, heard.surface(), known, kept, open);
        known = thing(Told.DEPOSIT, heard.deposit(), known, kept, open);
        if (asked.equals(Told.DEPOSIT) && !known.wasAsked(Told.DEPOSIT) && open.isEmpty() && !heard.signs().isEmpty()) {
            known = signs(heard, known, kept).unknown(Told.DEPOSIT);
        }
        List<String> said = new ArrayList<>(kept);
        open.entrySet().stream().filter(e -> !e.getKey().equals(asked)).forEach(e -> said.add(e.getValue()));
        repeat(said);
        return new Found(kept.isEmpty() ? Optional.empty() : Optional.of(known), open);
    }

    /** Whether a reply to what was tried says how each try ended. */
    boolean tellsOutcome(String said) {
        return tries.asked(said).stream().allMatch(one -> one.outcome().isPresent());
    }

    /** How a try ended, in whatever words. */
    Optional<String> ended(String said) {
        return tries.ended(said);
    }

    /** The same answer with what its sentence told besides of age and place. */
    Told beside(String line, Told told) {
        List<String> kept = new ArrayList<>();
        TriesTold.Heard tried = tries.in(line);
        Told known = tried(tried, facts(listener.beside(tried.rest()), told, kept), kept);
        repeat(kept);
        return known;
    }

    private Told tried(TriesTold.Heard tried, Told told, List<String> kept) {
        if (told.wasAsked(Told.TRIED) || tried.tries().isEmpty() && !tried.none()) {
            return told;
        }
        tried.tries().forEach(one -> kept.add(Texts.said(one.outcome().isPresent() ? "ask.heard-try" : "ask.heard-try-open", "tried", one.text(),
                "outcome", one.outcome().map(o -> base.questionWords().outcomes().get(o).name()).orElse(""))));
        if (tried.none()) {
            kept.add(Texts.said("ask.heard-no-try"));
        }
        return told.trying(tried.tries());
    }

    private void repeat(List<String> heard) {
        if (!heard.isEmpty()) {
            voice.say(Texts.said("ask.heard", "heard", PlainText.shown(String.join("; ", heard))));
        }
    }

    /** A word that is too wide for a surface may still be a place: "door"; "glass" is none, as it may lie on either side. */
    Told placeOf(String said, Told told, Names names) {
        return told.wasAsked(PLACE) ? told : Hearing.ways(said).stream().filter(w -> !names.mayBe(w).isEmpty())
                .flatMap(w -> vocabulary.places().id(w).filter(id -> isOneSided(id, names.mayBe(w))).stream()).findFirst()
                .map(id -> told.hearing(PLACE, place(id))).orElse(told);
    }

    private boolean isOneSided(String place, List<Called> mayBe) {
        return new Whereabouts(List.of(), Optional.of(place), base).surfaces(mayBe).size() == mayBe.size();
    }

    /** Of what a wide word may mean, what may be meant where the spot is. */
    List<Called> here(String id, String word, Names names, Told told) {
        Whereabouts where = trials.whereabouts(told);
        return names.mayBe(word, all -> id.equals(Told.DEPOSIT) ? where.deposits(all) : where.surfaces(all));
    }

    private Told facts(Listener.Heard heard, Told told, List<String> kept) {
        Told known = told;
        if (heard.age().isPresent() && !known.tree().has(AGE)) {
            known = known.hearing(AGE, Told.field(AGE, List.of(heard.age().get())));
            kept.add(Texts.said("ask.heard-age", "age", heard.age().get()));
        }
        boolean wide = heard.surface().isPresent() && !vocabulary.surfaces().mayBe(heard.surface().get()).isEmpty();
        if (heard.place().isPresent() && !known.tree().path("facts").has(PLACE)
                && (!wide || isOneSided(heard.place().get(), vocabulary.surfaces().mayBe(heard.surface().get())))) {
            known = known.hearing(PLACE, place(heard.place().get()));
            kept.add(Texts.said("ask.heard-place", "place", base.questionWords().places().get(heard.place().get()).name()));
        }
        for (var one : heard.facts().entrySet()) {
            if (!known.wasAsked(one.getKey().id()) && !(one.getKey().id().equals(AGE) && known.tree().has(AGE))) {
                known = known.hearing(one.getKey().id(), Trials.gives(one.getValue()));
                kept.add(one.getValue().says());
            }
        }
        return known;
    }

    private static Told signs(Listener.Heard heard, Told told, List<String> kept) {
        Told known = told;
        for (var one : heard.signs().entrySet()) {
            known = known.hearing(one.getKey().id(), Trials.gives(one.getValue()));
            kept.add(one.getValue().says());
        }
        return known;
    }

    private Told thing(String id, Optional<String> said, Told told, List<String> kept, Map<String, String> open) {
        if (said.isEmpty() || told.wasAsked(id)) {
            return told;
        }
        Names names = id.equals(Told.DEPOSIT) ? vocabulary.deposits() : vocabulary.surfaces();
        List<Called> mayBe = here(id, said.get(), names, told);
        Optional<Called> meant = names.id(said.get()).map(names::called).or(() -> mayBe.size() == 1 ? Optional.of(mayBe.get(0)) : Optional.empty());
        if (meant.isEmpty()) {
            open.put(id, said.get());
            return told;
        }
        kept.add(meant.get().name());
        return told.hearing(id, Told.field(id, List.of(meant.get().id())));
    }

    private static ObjectNode place(String id) {
        ObjectNode place = JsonNodeFactory.instance.objectNode();
        place.putObject("facts").put(PLACE, id);
        return place;
    }
}
