package rungwise.book;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.common.Word;
import rungwise.knowledge.method.Chance;
import rungwise.text.Texts;

/** Ids, enums and figures as a reader expects them. */
final class Words {
    private Words() {
    }

    static String of(String id) {
        return id.replace('_', ' ').replace('-', ' ');
    }

    static String of(Enum<?> one) {
        return of(one.name().toLowerCase(Locale.ROOT));
    }

    static String meaning(Map<String, Word> words, String id) {
        return words.containsKey(id) ? words.get(id).meaning() : of(id);
    }

    static String percent(double share) {
        return Figures.text(Math.round(share * 100)) + " %";
    }

    static String of(Chance chance) {
        return Texts.said("book.chance." + chance.name().toLowerCase(Locale.ROOT), "percent", percent(chance.probability()));
    }

    /** All of its decimals, as a threshold is compared with. */
    static String exact(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    static String yes(boolean is) {
        return Texts.said(is ? "book.yes" : "book.no");
    }

    /** Minutes from and to, said once where they are the same. */
    static String span(double from, double to) {
        return from == to ? Figures.text(from) : Figures.text(from) + "–" + Figures.text(to);
    }
}
