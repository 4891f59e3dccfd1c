package rungwise.knowledge.product;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwise.knowledge.chemistry.Reactive;
import rungwise.knowledge.chemistry.Solvent;
import rungwise.knowledge.common.Range;
import rungwise.knowledge.common.Sorted;
import rungwise.knowledge.method.Form;

/**
 * One thing that is sold under a word, and what the sheet must say for it to be that.
 *
 * @param method     what it then is
 * @param technique  how it is worked, where not as the method
 * @param acidity    pH in use, within which the whole range of the sheet lies
 * @param form       where it must be of one
 * @param holds      reactive groups that it must hold
 * @param solvents   percent in use by kind
 * @param beside     percent that any other kind of solvent stays under or at; left out: less than counts as a solvent
 * @param asStrictAs methods whose grades, gates and limits count as well
 */
public record LabelReading(String method, Optional<String> technique, Optional<Range> acidity, Optional<Form> form,
                           Set<Reactive> holds, Map<Solvent, Range> solvents, Optional<Double> beside, List<String> asStrictAs) {
    public LabelReading {
        technique = technique == null ? Optional.empty() : technique;
        acidity = acidity == null ? Optional.empty() : acidity;
        form = form == null ? Optional.empty() : form;
        holds = Sorted.set(holds);
        solvents = Sorted.map(solvents);
        beside = beside == null ? Optional.empty() : beside;
        asStrictAs = asStrictAs == null ? List.of() : List.copyOf(asStrictAs);
    }
}
