package rungwise.knowledge.product;

import java.util.List;
import java.util.Set;
import rungwise.knowledge.chemistry.Reactive;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.common.Listed;
import rungwise.knowledge.common.Sorted;

/**
 * What a sheet may name that is no solvent and has no entry among what is breathed.
 *
 * @param reactive    reactive groups that it stands for
 * @param sensitisers what a sensitised worker may react to
 * @param neutral     whether it takes no part in the pH
 */
public record SheetPart(String id, String name, String meaning, List<String> alsoCalled, Set<Reactive> reactive,
                        Set<String> sensitisers, boolean neutral, Basis basis, List<String> sources) implements Listed {
    public SheetPart {
        alsoCalled = alsoCalled == null ? List.of() : List.copyOf(alsoCalled);
        reactive = Sorted.set(reactive);
        sensitisers = Sorted.set(sensitisers);
        sources = sources == null ? List.of() : List.copyOf(sources);
    }
}
