import { changesTo } from '../../bench/changes.ts';
import { drawsArcs, energyKey, energyOf, owesAsMuch } from '../../bench/energy.ts';
import type { Energy, EnergyOf, Tested } from '../../bench/energy.ts';
import type { Watcher } from '../../paths/explore.ts';
import { fragmentsOf, probed } from '../../bench/fragments.ts';
import type { FragmentIndex, Fragments } from '../../bench/fragments.ts';
import type { Issue } from '../../paths/issue.ts';
import type { Hardware } from '../../bench/hardware.ts';
import { fragmentsMoved, isOpenAsAWhole, movedBy } from '../../bench/moved.ts';
import { running } from '../../paths/run.ts';
import { touchesOf } from '../../bench/touch.ts';
import type { Touch } from '../../bench/touch.ts';
import { zonesOf } from '../../bench/supplies.ts';
import type { Zone } from '../../bench/supplies.ts';
import { askedBy } from '../../bench/asked.ts';
import type { Measuring } from '../../bench/asked.ts';
import { partFacts } from '../../model/part-kinds.ts';
import { membersOf } from '../../model/mentioned.ts';
import type { Id, Moved, Procedure, Step } from '../../model/procedure.ts';
import { quantityFacts } from '../../model/quantity-kinds.ts';
import { movedWithStage } from './moved-words.ts';
import type { Context, Finder } from '../rule.ts';
import { stagesIn } from './stages-in.ts';
import {
  arcAtContacts,
  chargedMeasurement,
  chargedOpening,
  initiatorProbed,
  poweredMeasurement,
  replacedUnderPower,
  stillTested,
  testedElectronics,
  testedSomewhere,
} from './under-power-words.ts';

/*
 * What is measured, opened or replaced on a piece that is powered, still charged, or holds an initiator. One automaton
 * for each zone: fragments that can come to hang together.
 */

export const underPower: Finder = {
  watch: (context) =>
    zonesOf(context.procedure)
      .filter((zone) => isAsked(context, zone))
      .map((zone) => running(watchZone(context, zone))),
};

/** Whether anything that the rules ask of can happen in a zone. */
function isAsked({ procedure, graph }: Context, zone: Zone): boolean {
  const isPowered = [...zone.supplies.values()].some((supplies) => supplies.length > 0);
  const inside = new Set(zone.fragments);
  const fragments = fragmentsOf(procedure);
  return graph.steps.some(
    (step) =>
      [...probed(fragments, step), ...movedIn(fragments, step)].some((index) => inside.has(index)) ||
      (isPowered && worked(step).some((id) => fragments.of(id).some((index) => inside.has(index)))),
  );
}

function watchZone(context: Context, zone: Zone): Watcher<Energy> {
  const energy = energyOf(context.procedure, zone);
  const judge = judgeOf(context, zone, energy);
  return {
    watches: `what is powered or charged around ${nameOf(context.procedure, zone)}`,
    start: energy.start,
    key: energyKey,
    covers: owesAsMuch,
    step: (state, step, report) => {
      for (const issue of judge(state, step)) report(issue);
      // One mistake, one finding: what was touched in spite of it counts as discharged from there on.
      return energy.after(testTouched(context.procedure, energy, state, step).left, step);
    },
    take: (state, step, { taken }) => energy.taken(state, step, taken),
  };
}

function movedIn(fragments: Fragments, step: Step): readonly FragmentIndex[] {
  return movedBy(step).flatMap((moved) => fragmentsMoved(fragments, moved));
}

/** Connectors, loads and things that a step works at. */
function worked(step: Step): readonly Id[] {
  return [
    ...changesTo('connector', step).map(({ id }) => id),
    ...changesTo('things', step).flatMap(({ replaced }) => membersOf(replaced)),
    ...changesTo('load', step).flatMap(({ at }) => (at === null ? [] : [at.connector])),
  ];
}

/** What hands touch although an insulation tester left its voltage there. */
interface TestTouched {
  readonly touch: Touch;
  readonly test: Tested;
}

/** Each piece once, and what is left where those that are touched count as discharged. */
function testTouched(
  procedure: Procedure,
  energy: EnergyOf,
  state: Energy,
  step: Step,
): { readonly found: readonly TestTouched[]; readonly left: Energy } {
  const found: TestTouched[] = [];
  if (state.tested.every(({ volts }) => volts === 0)) return { found, left: state };
  const fragments = fragmentsOf(procedure);
  let left = state;
  for (const touch of touchesOf(step, (load) => state.hardware.loads.get(load))) {
    const { id, side } = touch;
    const at = side === undefined ? fragments.of(id) : fragments.onSide(id, side);
    const test = energy.tested(left, at);
    if (test.volts === 0) continue;
    found.push({ touch, test });
    left = energy.withoutTest(left, at);
  }
  return { found, left };
}

function judgeOf(
  { procedure, circuits }: Context,
  zone: Zone,
  energy: EnergyOf,
): (state: Energy, step: Step) => readonly Issue[] {
  const fragments = fragmentsOf(procedure);
  const inside = new Set(zone.fragments);
  const here = (some: readonly FragmentIndex[]): readonly FragmentIndex[] =>
    some.filter((index) => inside.has(index));

  const measuring = (state: Energy, step: Measuring): readonly Issue[] => {
    const piece = energy.piecesWith(state, here(probed(fragments, step)));
    const stages = stagesIn(procedure, piece);
    const issues: Issue[] = stages.length > 0 ? [initiatorProbed(step, stages)] : [];
    // An initiator there is told of already, and is the graver.
    if (step.tester !== null && stages.length === 0) {
      const weak = notBearing(procedure, piece, state.hardware, step.tester.volts);
      if (weak.length > 0) issues.push(testedElectronics(step, step.tester.volts, weak));
    }
    if (!quantityFacts[step.quantity].byOwnCurrent || piece.length === 0) return issues;
    const on = energy.poweredBy(state, piece);
    if (on.length > 0) issues.push(poweredMeasurement(procedure, step, on, state.power));
    else {
      const { owed, whole } = energy.charge(state, piece, 'charges');
      if (owed > 0) issues.push(chargedMeasurement(step, owed, whole));
    }
    return issues;
  };

  /** What is moved can part, and touch what it should not, where it is at fault. */
  const moving = (state: Energy, step: Step, moved: Moved): readonly Issue[] => {
    const at = fragmentsMoved(fragments, moved);
    if (isOpenAsAWhole(moved, state.hardware)) return [];
    const stages = stagesIn(procedure, energy.piecesWith(state, here(at)));
    const issues = stages.length === 0 ? [] : [movedWithStage(procedure, state.hardware, moved, stages)];
    const arcing = opening(state, step, moved.id, at);
    return [...issues, ...arcing].map((issue) => ({ ...issue, underline: moved.place }));
  };

  /** Contacts that part, or meet, above the voltage at which they draw an arc. */
  const opening = (
    state: Energy,
    step: Step,
    subject: Id,
    at: readonly FragmentIndex[],
  ): readonly Issue[] => {
    const piece = energy.piecesWith(state, here(at));
    const arcing = energy.poweredBy(state, piece).filter(drawsArcs);
    if (arcing.length > 0) return [arcAtContacts(procedure, step, subject, arcing, state.power)];
    const { owed, whole } = energy.charge(state, piece, 'arcs');
    return owed > 0 ? [chargedOpening(step, subject, owed, whole)] : [];
  };

  const replacing = (state: Energy, step: Step): readonly Issue[] =>
    changesTo('things', step).flatMap(({ replaced }) =>
      replaced.flatMap(({ members, place }) =>
        members.flatMap((id): readonly Issue[] => {
          // What must be dead before hands go there is guarded by a rule of its own.
          if (circuits.hazardsAt(id).length > 0) return [];
          const piece = energy.piecesWith(state, here(fragments.of(id)));
          const on = energy.poweredBy(state, piece);
          if (on.length === 0) {
            const { owed, whole } = energy.charge(state, piece, 'arcs');
            return owed > 0 ? [{ ...chargedOpening(step, id, owed, whole), underline: place }] : [];
          }
          const counts =
            state.power.ignitionOn ||
            on.some(drawsArcs) ||
            !(isMadeToBeChanged(procedure, id) || on.every(({ feedsMonitor }) => feedsMonitor));
          return counts ? [replacedUnderPower(procedure, id, place, on, state.power)] : [];
        }),
      ),
    );

  return (state, step) => {
    const { found } = testTouched(procedure, energy, state, step);
    const issues = [
      ...found.map(({ touch, test }) => stillTested(step, touch, test)),
      ...handsNotSaid(energy.tested(state, zone.fragments), step),
    ];
    const asked = askedBy(step);
    const ofMoved = movedBy(step).flatMap((moved) => moving(state, step, moved));
    if (asked?.of === 'points') return [...issues, ...measuring(state, asked.step), ...ofMoved];
    const ofConnectors = changesTo('connector', step)
      .filter(({ to, source }) => to !== 'unlocked' && source === null)
      .flatMap(({ id }) => opening(state, step, id, fragments.of(id)));
    const ofLoads = changesTo('load', step).flatMap(({ id, at }) => {
      const from = state.hardware.loads.get(id);
      // A load that is fitted elsewhere cannot be fitted: nobody comes to where it sits.
      const left = from === undefined || step.verb === 'fit' ? [] : [from];
      const places = [...left, ...(at === null ? [] : [at])];
      return opening(state, step, id, places.flatMap(fragments.under));
    });
    return [...issues, ...ofMoved, ...ofConnectors, ...ofLoads, ...replacing(state, step)];
  };
}

/** A step in words that does not say where hands are, while a tester's voltage is left somewhere. */
function handsNotSaid({ volts }: Tested, step: Step): readonly Issue[] {
  const isSilent = (step.verb === 'do' || step.verb === 'inspect') && step.at === 'not said';
  return isSilent && volts > 0 ? [testedSomewhere(volts)] : [];
}

/** What hangs in a piece and does not bear so many volts of an insulation tester; electronics and sources bear none. */
function notBearing(
  procedure: Procedure,
  piece: readonly FragmentIndex[],
  { loads }: Hardware,
  volts: number,
): readonly Id[] {
  const { parts, connectors, monitors, sources, regulated } = procedure;
  const fragments = fragmentsOf(procedure);
  const inside = new Set(piece);
  const members = piece.flatMap((index) => [...(fragments.all[index]?.members ?? [])]);
  const fitted = [...loads].flatMap(([id, place]) =>
    fragments.under(place).some((index) => inside.has(index)) ? [id] : [],
  );
  const bears = (id: Id): boolean => {
    if (monitors.has(id) || sources.has(id) || regulated.has(id)) return false;
    const thing = parts.get(id) ?? connectors.get(id) ?? procedure.loads.get(id);
    return thing === undefined || (thing.withstands ?? 0) >= volts;
  };
  return [...new Set([...members, ...fitted])].filter((id) => !bears(id));
}

function isMadeToBeChanged({ parts }: Procedure, id: Id): boolean {
  const part = parts.get(id);
  return part !== undefined && partFacts[part.kind].changedWith === 'ignition off';
}

/** A name for people: a source, control unit or part of the zone. */
function nameOf(procedure: Procedure, { sources, fragments }: Zone): string {
  const { all } = fragmentsOf(procedure);
  return sources[0] ?? [...(all[fragments[0] ?? -1]?.members ?? [])][0] ?? 'the probes';
}
