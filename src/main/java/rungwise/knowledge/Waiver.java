package rungwise.knowledge;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A finding that stands, and why. It counts for one check and one entry or rule.
 *
 * @param entry what the check names: an entry or a rule
 * @param about what else it names: a surface, a method or another rule; empty = all that it says of the entry
 * @param date  when somebody decided it
 * @param until the day on which it is looked at again; empty = when something changes
 */
public record Waiver(String check, String entry, Optional<String> about, String reason, LocalDate date,
                     Optional<LocalDate> until) {
    public Waiver {
        about = about == null ? Optional.empty() : about;
        until = until == null ? Optional.empty() : until;
    }

    public boolean isOver(LocalDate today) {
        return until.filter(today::isAfter).isPresent();
    }
}
