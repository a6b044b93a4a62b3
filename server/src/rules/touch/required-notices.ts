import { changesTo } from '../../bench/changes.ts';
import type { Circuits } from '../../bench/circuits.ts';
import { touchesOf } from '../../bench/touch.ts';
import type { Touch } from '../../bench/touch.ts';
import { isStage } from '../../model/part-kinds.ts';
import type { Id, Procedure, Step } from '../../model/procedure.ts';
import { isHighVoltage } from '../../model/source-kinds.ts';

/*
 * Which steps have to carry a notice, by what they do and to what. Signal words as in ANSI Z535.6, from memory: DANGER
 * where somebody will be killed or gravely hurt if it is not heeded, WARNING where somebody could be. Which hazards these
 * are is common practice, no source. Power that returns to an open live circuit is not listed: a rule of its own guards it.
 */

export type LeastSignal = 'warning' | 'danger';

export interface RequiredNotice {
  readonly signal: LeastSignal;
  /** `first`: once on each path, where the hazard is come to for the first time. */
  readonly often: 'first' | 'every';
  /** What can hurt: stages, or sources. */
  readonly hazards: (procedure: Procedure) => readonly Id[];
  /** Whether a step does what brings people to it. */
  readonly isMet: (circuits: Circuits, step: Step, hazard: Id) => boolean;
  /** What is to be said, and why, in words that the message begins with. */
  readonly asks: (hazard: Id) => string;
  /** Words that say it, to begin with. */
  readonly says: string;
}

/** What is said where high voltage is come near. */
export const protectFromVoltage =
  "High voltage causes death on contact. Wear the protective equipment that the maker's service information asks for until the circuit is verified to be without voltage.";

/** What is said where high voltage comes back. */
export const keepAwayFromVoltage =
  "High voltage comes back and causes death on contact. Keep all persons away from its parts, and go by the maker's service information.";

/** What is said where a load goes in beside the pins of high voltage. */
export const besidesVoltage =
  'The load closes the interlock circuit, so the interlock no longer protects you. Keep all persons away while the ignition is on. High-voltage pins sit beside the pins of the loop. Use the pins of the loop alone, and keep the protective equipment on.';

export const requiredNotices: readonly RequiredNotice[] = [
  {
    signal: 'warning',
    often: 'every',
    hazards: liveStages,
    isMet: (_, step, stage) => touched(step).some(({ id, inHands }) => inHands && id === stage),
    asks: (stage) => `${stage} is in the hands here, and can still fire`,
    says: "A stage can still fire. Carry and lay it down as the maker's service information says, its front away from people.",
  },
  {
    signal: 'warning',
    often: 'first',
    hazards: liveStages,
    isMet: ({ holding }, step, stage) =>
      touched(step).some(({ id }) => holding(id).some(({ members }) => members.has(stage))),
    asks: (stage) => `Hands come to the circuit of ${stage} here for the first time`,
    says: "Touch bare metal first, so that you carry no static charge, and stay clear of the front of the stage. Go by the maker's service information.",
  },
  {
    signal: 'danger',
    often: 'first',
    hazards: highVoltage,
    isMet: (_, step, source) =>
      switches(step, source, false) || (step.verb === 'prove-dead' && step.source === source),
    asks: (source) =>
      `Hands come near ${source} here for the first time, before its circuit is verified to be without voltage`,
    says: protectFromVoltage,
  },
  {
    signal: 'danger',
    often: 'first',
    hazards: highVoltage,
    isMet: (_, step, source) => switches(step, source, true),
    asks: (source) => `${source} comes back here for the first time`,
    says: keepAwayFromVoltage,
  },
  {
    signal: 'danger',
    often: 'every',
    hazards: highVoltage,
    isMet: fitsBesides,
    asks: (source) => `The load goes into a loop whose connectors lead ${source} beside its own pins`,
    says: besidesVoltage,
  },
];

/** Whether a load is fitted in a loop through a connector that carries a source, or isolates it. */
function fitsBesides({ all, hazardsAt }: Circuits, step: Step, source: Id): boolean {
  return changesTo('load', step).some(({ at }) => {
    const loop = all.find((circuit) => at !== null && circuit.loop !== null && circuit.id === at.loop);
    return (
      loop?.connectors.some((id) =>
        hazardsAt(id).some((hazard) => hazard.id === source && !hazard.isLoop),
      ) === true
    );
  });
}

function highVoltage({ sources }: Procedure): readonly Id[] {
  return [...sources.values()].filter(isHighVoltage).map(({ id }) => id);
}

function liveStages({ parts }: Procedure): readonly Id[] {
  return [...parts.values()].flatMap((part) => (isStage(part) && part.live ? [part.id] : []));
}

/** A load that comes off was fitted by hands that were there before. */
function touched(step: Step): readonly Touch[] {
  return touchesOf(step, () => undefined);
}

function switches(step: Step, source: Id, on: boolean): boolean {
  return changesTo('source', step).some(({ id, isConnected }) => id === source && isConnected === on);
}

/** Whether a step carries a notice of this signal word, or of a graver one. */
export function carries({ warning, danger }: Step, signal: LeastSignal): boolean {
  return danger !== undefined || (signal === 'warning' && warning !== undefined);
}

/** The notice that a step asks for and does not carry; null: it asks for none. */
export function noticeFor(procedure: Procedure, circuits: Circuits, step: Step): RequiredNotice | null {
  const found = requiredNotices.find(
    ({ signal, hazards, isMet }) =>
      !carries(step, signal) && hazards(procedure).some((hazard) => isMet(circuits, step, hazard)),
  );
  return found ?? null;
}
