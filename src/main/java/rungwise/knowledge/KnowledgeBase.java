package rungwise.knowledge;

import java.util.List;
import java.util.Map;
import rungwise.knowledge.chemistry.Solute;
import rungwise.knowledge.chemistry.Substance;
import rungwise.knowledge.common.Word;
import rungwise.knowledge.decision.AssumptionId;
import rungwise.knowledge.decision.Assumptions;
import rungwise.knowledge.decision.Decisions;
import rungwise.knowledge.deposit.BondClass;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.deposit.Observation;
import rungwise.knowledge.deposit.Signs;
import rungwise.knowledge.deposit.Susceptibility;
import rungwise.knowledge.matter.Matter;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Family;
import rungwise.knowledge.method.Gate;
import rungwise.knowledge.method.MechanismWord;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.Tool;
import rungwise.knowledge.product.ProductWords;
import rungwise.knowledge.safety.Exposure;
import rungwise.knowledge.safety.HazardStatement;
import rungwise.knowledge.safety.Permeation;
import rungwise.knowledge.safety.Protective;
import rungwise.knowledge.safety.Respirator;
import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.words.QuestionWords;

/** All that is known, whole and checked, keyed by id in id order. */
public record KnowledgeBase(String revision, Map<String, Contaminant> contaminants, Map<String, Surface> surfaces,
                            Map<String, Method> methods, Map<String, Agent> agents, Map<String, Tool> tools,
                            Map<String, Family> families, Map<String, Gate> gates,
                            Map<String, Circumstance> circumstances, Map<String, Observation> observations,
                            Map<String, Source> sources, Map<String, BondClass> bondClasses,
                            Map<String, MechanismWord> mechanisms, Map<String, Word> wastes,
                            Map<String, Word> levels, Map<String, Protective> ppe, Map<String, Word> notFollowed, Map<String, Word> steps,
                            Map<String, Exposure> exposures, Map<String, Permeation> gloves,
                            Map<String, Respirator> respirators, Map<String, Substance> substances,
                            Map<String, Solute> solutes, Map<String, HazardStatement> hazards, Decisions decisions, Assumptions assumptions,
                            Signs signs, List<Waiver> waivers, QuestionWords questionWords, ProductWords productWords, Matter matter,
                            Map<String, Susceptibility> susceptibilities) {
    public Agent agentOf(Method method) {
        return method.agent().equals("none") ? Agent.NONE : agents.get(method.agent());
    }

    /** What its way of working does. */
    public MechanismWord mechanismOf(Method method) {
        return mechanisms.get(method.mechanism().id());
    }

    public Tool toolOf(Method method) {
        return method.tool().equals("none") ? Tool.NONE : tools.get(method.tool());
    }

    /** Work on a single spot; where only its area counts, on that of a usual one. */
    public double minutesPerSpot(Method method) {
        return method.minutes().perSpot(assumptions.value(AssumptionId.AREA_OF_A_SPOT));
    }

    /** The same but for what is used, as a shop or a test may have it. */
    public KnowledgeBase using(String revision, Map<String, Method> methods, Map<String, Agent> agents,
                               Map<String, Tool> tools) {
        return new KnowledgeBase(revision, contaminants, surfaces, methods, agents, tools, families, gates,
                circumstances, observations, sources, bondClasses, mechanisms, wastes, levels, ppe, notFollowed, steps, exposures, gloves,
                respirators, substances, solutes, hazards, decisions, assumptions, signs, waivers, questionWords, productWords, matter,
                susceptibilities);
    }

    /** The same with what a shop adds and tightens. */
    public KnowledgeBase overlaid(Map<String, Surface> surfaces, Map<String, Method> methods, Map<String, Agent> agents) {
        return new KnowledgeBase(revision, contaminants, surfaces, methods, agents, tools, families, gates,
                circumstances, observations, sources, bondClasses, mechanisms, wastes, levels, ppe, notFollowed, steps, exposures, gloves,
                respirators, substances, solutes, hazards, decisions, assumptions, signs, waivers, questionWords, productWords, matter,
                susceptibilities);
    }

    /** The same with other entries for the contaminants. */
    public KnowledgeBase with(Map<String, Contaminant> others) {
        return new KnowledgeBase(revision, others, surfaces, methods, agents, tools, families, gates, circumstances,
                observations, sources, bondClasses, mechanisms, wastes, levels, ppe, notFollowed, steps, exposures, gloves, respirators,
                substances, solutes, hazards, decisions, assumptions, signs, waivers, questionWords, productWords, matter,
                susceptibilities);
    }
}
