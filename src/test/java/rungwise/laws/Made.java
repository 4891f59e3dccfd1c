package rungwise.laws;

import java.util.List;
import java.util.Optional;
import rungwise.question.Question;

/** A question like another but for one thing. */
final class Made {
    private Question q;

    Made(Question question) {
        this.q = question;
    }

    Question made() {
        return q;
    }

    Made contaminant(String id) {
        return set(Optional.of(id), q.age(), q.surface(), q.facts(), q.circumstances(), q.neighbours(), q.setting(),
                q.shelf(), q.consent(), q.wanted(), q.tried());
    }

    Made age(String age) {
        return set(q.contaminant(), age, q.surface(), q.facts(), q.circumstances(), q.neighbours(), q.setting(),
                q.shelf(), q.consent(), q.wanted(), q.tried());
    }

    Made surface(List<String> surface) {
        return set(q.contaminant(), q.age(), surface, q.facts(), q.circumstances(), q.neighbours(), q.setting(),
                q.shelf(), q.consent(), q.wanted(), q.tried());
    }

    Made facts(Question.Facts facts) {
        return set(q.contaminant(), q.age(), q.surface(), facts, q.circumstances(), q.neighbours(), q.setting(),
                q.shelf(), q.consent(), q.wanted(), q.tried());
    }

    Made circumstances(List<String> circumstances) {
        return set(q.contaminant(), q.age(), q.surface(), q.facts(), circumstances, q.neighbours(), q.setting(),
                q.shelf(), q.consent(), q.wanted(), q.tried());
    }

    Made neighbours(List<String> neighbours) {
        return set(q.contaminant(), q.age(), q.surface(), q.facts(), q.circumstances(), neighbours, q.setting(),
                q.shelf(), q.consent(), q.wanted(), q.tried());
    }

    Made setting(Question.Setting setting) {
        return set(q.contaminant(), q.age(), q.surface(), q.facts(), q.circumstances(), q.neighbours(), setting,
                q.shelf(), q.consent(), q.wanted(), q.tried());
    }

    Made shelf(Optional<List<String>> shelf) {
        return set(q.contaminant(), q.age(), q.surface(), q.facts(), q.circumstances(), q.neighbours(), q.setting(),
                shelf, q.consent(), q.wanted(), q.tried());
    }

    Made consent(Question.Consent consent) {
        return set(q.contaminant(), q.age(), q.surface(), q.facts(), q.circumstances(), q.neighbours(), q.setting(),
                q.shelf(), consent, q.wanted(), q.tried());
    }

    Made wanted(List<String> wanted) {
        return set(q.contaminant(), q.age(), q.surface(), q.facts(), q.circumstances(), q.neighbours(), q.setting(),
                q.shelf(), q.consent(), wanted, q.tried());
    }

    Made tried(List<Question.Tried> tried) {
        return set(q.contaminant(), q.age(), q.surface(), q.facts(), q.circumstances(), q.neighbours(), q.setting(),
                q.shelf(), q.consent(), q.wanted(), tried);
    }

    private Made set(Optional<String> contaminant, String age, List<String> surface, Question.Facts facts,
                     List<String> circumstances, List<String> neighbours, Question.Setting setting,
                     Optional<List<String>> shelf, Question.Consent consent, List<String> wanted,
                     List<Question.Tried> tried) {
        q = new Question(contaminant, q.observations(), q.notSeen(), age, q.extent(), surface, facts, circumstances, neighbours,
                setting, q.workers(), shelf, q.shelfStrict(), consent, q.done(), q.canWaitMinutes(), q.passedTests(),
                wanted, tried, q.mixing());
        return this;
    }
}
