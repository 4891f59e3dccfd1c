package rungwise.workup;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.matter.Makeup;
import rungwise.knowledge.method.Method;
import rungwise.text.Figure;
import rungwise.text.Texts;

/** What a method takes of a deposit, part by part: the reason of its chance. */
public final class Taking {
    private Taking() {
    }

    /** Empty where nobody said what it is made of. */
    public static Optional<Figure> of(Method method, Contaminant deposit, boolean hardened) {
        return deposit.makeupFor(method).filter(m -> !m.parts(hardened).isEmpty())
                .map(m -> Figure.of("ofDeposit", words(m, method, hardened)));
    }

    private static String words(Makeup makeup, Method method, boolean hardened) {
        if (!makeup.reaches(method, hardened)) {
            return Texts.said("taking.unreached", "form",
                    Texts.said("form." + makeup.lies(hardened).name().toLowerCase(Locale.ROOT)));
        }
        List<String> words = new ArrayList<>();
        makeup.taken(method, hardened).forEach((grade, parts) -> words.add(Texts.said(
                "taking." + grade.name().toLowerCase(Locale.ROOT), "parts", String.join(Texts.said("taking.and"), parts))));
        return String.join(Texts.said("taking.then"), words);
    }
}
