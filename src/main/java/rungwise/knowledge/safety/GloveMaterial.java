package rungwise.knowledge.safety;

/** What a glove is made of, in the order in which a shop reaches for them. */
import java.util.Locale;
import rungwise.text.Texts;

public enum GloveMaterial {
    /** Disposable, about 0.1 mm. */
    NITRILE_THIN,
    NITRILE,
    NEOPRENE,
    BUTYL,
    NATURAL_RUBBER,
    VINYL,
    LAMINATE;

    public String words() {
        return Texts.said("glove." + name().toLowerCase(Locale.ROOT));
    }
}
