package rungwise.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.ladder.Choice;
import rungwise.ladder.Ladder;
import rungwise.ladder.Likely;
import rungwise.rules.said.Because;
import rungwise.rules.said.Reason;
import rungwise.text.Figure;
import rungwise.text.Texts;
import rungwise.workup.Taking;
import rungwise.workup.Working;

/** What a product does to this deposit on this surface, and why it stands before the next one. */
final class PositiveReasons {
    private final Ladder ladder;
    private final KnowledgeBase base;

    PositiveReasons(Ladder ladder, KnowledgeBase base) {
        this.ladder = ladder;
        this.base = base;
    }

    List<Because> of(Choice choice, Optional<Choice> next) {
        List<Because> reasons = new ArrayList<>();
        List<String> suspects = List.copyOf(ladder.belief().keySet());
        for (int i = 0; i < suspects.size(); i++) {
            reasons.add(takes(choice, suspects.get(i), choice.likely().get(i), suspects.size() > 1));
        }
        next.ifPresent(n -> reasons.add(gentler(choice, n)));
        return reasons;
    }

    private Because takes(Choice choice, String suspect, Likely likely, boolean open) {
        Contaminant contaminant = base.contaminants().get(suspect).on(ladder.situation().asked());
        List<Figure> figures = new ArrayList<>();
        if (likely.learned()) {
            figures.add(Figure.of("deposit", contaminant.name()));
        }
        if (open) {
            figures.add(Figure.of("belief", Figures.thousandths(ladder.belief().get(suspect))));
        }
        Optional<Contaminant.Remark> remark = contaminant.remark(choice.id()).filter(r -> contaminant.makeupFor(choice.method()).isEmpty());
        String bond = ladder.hardened() > 0.5 ? contaminant.bond().hardened() : contaminant.bond().fresh();
        Because works = remark.map(r -> Because.of(Reason.remark(contaminant, r), List.of()))
                .orElseGet(() -> Working.of(base, choice.use(), contaminant, bond));
        figures.addAll(works.figures());
        Taking.of(choice.method(), contaminant, ladder.hardened() > 0.5).ifPresent(figures::add);
        figures.add(Figure.of("chanceFresh", Figures.thousandths(likely.ifFresh())));
        figures.add(Figure.of("chanceHardened", Figures.thousandths(likely.ifHardened())));
        if (likely.learned()) {
            figures.add(Figure.of("tries", Figures.thousandths(likely.triesFresh() + likely.triesHardened())));
        }
        return new Because(likely.learned() ? Reason.decision(base.decisions().of(DecisionId.LEARNT_HERE)) : works.reason(), figures,
                works.sources());
    }

    /** The first field of the order in which the two differ. */
    private Because gentler(Choice choice, Choice next) {
        List<Object> mine = choice.carried().fields();
        List<Object> theirs = next.carried().fields();
        List<String> names = List.of("takesFilm", "worstGrade", "chemicalGrade", "mechanicalGrade", "thermalGrade", "filmTaken",
                "marring");
        List<Figure> figures = new ArrayList<>(List.of(Figure.of("comesBefore", next.method().name())));
        for (int i = 0; i < names.size(); i++) {
            if (!mine.get(i).equals(theirs.get(i))) {
                figures.add(mine.get(i) instanceof Number ? Figure.against(names.get(i), mine.get(i), i == 5 ? "µm" : i == 6 ? "%" : "", theirs.get(i))
                        : Figure.of(names.get(i),
                                ((Boolean) theirs.get(i)) ? Texts.said("figure.only-the-next") : Texts.said("figure.only-this")));
                break;
            }
        }
        return Because.of(Reason.decision(base.decisions().of(DecisionId.GENTLER_FIRST)), figures);
    }
}
