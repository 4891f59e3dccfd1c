package rungwise.knowledge.check;

import java.util.Locale;

/** How a check is called where a person or a waiver names it. */
public final class CheckId {
    private CheckId() {
    }

    /** Its class in small letters: {@code DuplicateIdCheck} is {@code duplicate-id}, {@code NoRung} is {@code no-rung}. */
    public static String of(Class<?> check) {
        return check.getSimpleName().replaceAll("Check$", "").replaceAll("(?<=[a-z])(?=[A-Z])", "-")
                .toLowerCase(Locale.ROOT);
    }
}
