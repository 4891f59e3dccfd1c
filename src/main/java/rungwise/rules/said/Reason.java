package rungwise.rules.said;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.List;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.decision.Assumption;
import rungwise.knowledge.decision.Decision;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.MechanismWord;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.surface.Surface;

/**
 * Something that can stand behind a conclusion: a rule of the rule book or an entry of knowledge, and nothing else. Its id
 * is where it is found below {@code /v1/}, so that every reason of an answer leads somewhere.
 */
public sealed interface Reason permits KnownReason {
    @JsonValue
    String id();

    /** The sentence a person reads. */
    String says();

    /** What lies beneath it; may be empty. */
    String cause();

    List<String> sources();

    Basis basis();

    /** Its last part: the id among its like. */
    default String name() {
        return id().substring(id().lastIndexOf('/') + 1);
    }

    static Reason rule(String id, String says, String cause, List<String> sources, Basis basis) {
        return new KnownReason("rules/" + id, says, cause, sources, basis);
    }

    static Reason decision(Decision decision) {
        return new KnownReason("decisions/" + decision.id(), decision.says(), decision.cause(), decision.sources(), decision.basis());
    }

    static Reason assumption(Assumption assumption) {
        return new KnownReason("assumptions/" + assumption.id(), assumption.says(), assumption.cause(), assumption.sources(),
                assumption.basis());
    }

    /** The sentence has places for the agent, the tool and the deposit. */
    static Reason mechanism(MechanismWord mechanism) {
        return new KnownReason("mechanisms/" + mechanism.id(), mechanism.says(), mechanism.cause(), mechanism.sources(), mechanism.basis());
    }

    static Reason method(Method method) {
        return new KnownReason("methods/" + method.id(), method.inOneGo(), "", method.sources(), method.basis());
    }

    static Reason agent(Agent agent) {
        return new KnownReason("agents/" + agent.id(), agent.name(), "", agent.sources(), agent.basis());
    }

    static Reason surface(Surface surface) {
        return new KnownReason("surfaces/" + surface.id(), surface.name(), "", surface.sources(), surface.basis());
    }

    static Reason remark(Contaminant contaminant, Contaminant.Remark remark) {
        return new KnownReason("contaminants/" + contaminant.id(), remark.why(), "", remark.sources(), remark.basis());
    }

    static Reason contaminant(Contaminant contaminant) {
        return new KnownReason("contaminants/" + contaminant.id(), contaminant.what(), contaminant.ageing(), contaminant.sources(),
                contaminant.basis());
    }
}
