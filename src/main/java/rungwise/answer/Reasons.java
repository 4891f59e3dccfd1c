package rungwise.answer;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rungwise.rules.said.Because;
import rungwise.rules.said.Reason;

/** Finds every reason that an answer refers to, so that each is written out once. */
final class Reasons {
    private final Map<String, Answer.Explained> found = new TreeMap<>();

    private Reasons() {
    }

    static Map<String, Answer.Explained> in(Answer answer) {
        Reasons reasons = new Reasons();
        reasons.look(answer);
        return reasons.found;
    }

    private void look(Object part) {
        if (part instanceof Because because) {
            Reason reason = because.reason();
            found.putIfAbsent(reason.id(), new Answer.Explained(reason.says(), reason.cause(), reason.basis(), reason.sources()));
        } else if (part instanceof Collection<?> many) {
            many.forEach(this::look);
        } else if (part instanceof Optional<?> maybe) {
            maybe.ifPresent(this::look);
        } else if (part instanceof Record && part.getClass().getName().startsWith("rungwise.")
                && !part.getClass().getName().startsWith("rungwise.question.")) {
            for (RecordComponent component : part.getClass().getRecordComponents()) {
                look(value(part, component));
            }
        }
    }

    private static Object value(Object part, RecordComponent component) {
        try {
            return component.getAccessor().invoke(part);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(e);
        }
    }
}
