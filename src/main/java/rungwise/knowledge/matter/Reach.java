package rungwise.knowledge.matter;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rungwise.knowledge.common.Basis;

/**
 * How far a role of a method reaches into each form of a deposit. Where a form is not named the method does nothing to it,
 * whatever its agent takes.
 *
 * @param see what is seen where it works, by form, and by {@link #IN_PILE} for what lies loose in a pile
 */
public record Reach(String id, String says, List<DepositForm> full, List<DepositForm> half, List<DepositForm> little, Map<String, String> see, Basis basis,
                    List<String> sources) {
    private static final String IN_PILE = "in_pile";

    public Reach {
        see = see == null ? Map.of() : Map.copyOf(see);
        full = full == null ? List.of() : List.copyOf(full);
        half = half == null ? List.of() : List.copyOf(half);
        little = little == null ? List.of() : List.copyOf(little);
        sources = sources == null ? List.of() : List.copyOf(sources);
    }

    /** What is seen where it works on what lies so. */
    public Optional<String> seen(DepositForm form, boolean pile) {
        return Optional.ofNullable(see.get(pile && form == DepositForm.LOOSE_DUST && see.containsKey(IN_PILE) ? IN_PILE
                : form.name().toLowerCase(Locale.ROOT)));
    }

    public boolean isInto(DepositForm form) {
        return full.contains(form) || half.contains(form) || little.contains(form);
    }
}
