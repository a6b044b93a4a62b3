import { changesTo } from '../bench/changes.ts';
import { drawsArcs, energyKey, energyOf, owesAsMuch } from '../bench/energy.ts';
import type { Energy, EnergyOf } from '../bench/energy.ts';
import type { Watcher } from '../bench/explore.ts';
import { fragmentsOf } from '../bench/fragments.ts';
import type { FragmentIndex, Fragments } from '../bench/fragments.ts';
import type { Issue } from '../bench/issue.ts';
import { running } from '../bench/run.ts';
import { nodeOf } from '../bench/same-nodes.ts';
import { zonesOf } from '../bench/supplies.ts';
import type { Zone } from '../bench/supplies.ts';
import { askedBy } from '../bench/asked.ts';
import type { Measuring } from '../bench/asked.ts';
import { isStage, partFacts } from '../text/part-kinds.ts';
import { membersOf } from '../text/mentioned.ts';
import type { Id, Procedure, Step } from '../text/procedure.ts';
import { quantityFacts } from '../text/quantity-kinds.ts';
import type { Context, Finder } from './rule.ts';
import {
  arcAtContacts,
  chargedMeasurement,
  chargedOpening,
  initiatorProbed,
  poweredMeasurement,
  replacedUnderPower,
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
      probed(fragments, step).some((index) => inside.has(index)) ||
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
      return energy.after(state, step);
    },
  };
}

/** Where probes touch by hand, ground aside. */
function probed(fragments: Fragments, step: Step): readonly FragmentIndex[] {
  const asked = askedBy(step);
  if (asked?.of !== 'points') return [];
  return asked.step.across.map((probe) => fragments.at(nodeOf(probe))).filter((index) => index !== null);
}

/** Connectors, loads and things that a step works at. */
function worked(step: Step): readonly Id[] {
  return [
    ...changesTo('connector', step).map(({ id }) => id),
    ...changesTo('things', step).flatMap(({ replaced }) => membersOf(replaced)),
    ...changesTo('load', step).flatMap(({ at }) => (at === null ? [] : [at.connector])),
  ];
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
    const stages = piece
      .flatMap((index) => fragments.all[index]?.parts ?? [])
      .filter((id) => isStage(procedure.parts.get(id)));
    const issues: Issue[] = stages.length > 0 ? [initiatorProbed(step, [...new Set(stages)])] : [];
    if (!quantityFacts[step.quantity].byOwnCurrent || piece.length === 0) return issues;
    const on = energy.poweredBy(state, piece);
    if (on.length > 0) issues.push(poweredMeasurement(procedure, step, on, state.power));
    else {
      const { owed, whole } = energy.charge(state, piece, 'charges');
      if (owed > 0) issues.push(chargedMeasurement(step, owed, whole));
    }
    return issues;
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
          const on = energy.poweredBy(state, energy.piecesWith(state, here(fragments.of(id))));
          const counts =
            state.power.ignitionOn ||
            !(isMadeToBeChanged(procedure, id) || on.every(({ feedsMonitor }) => feedsMonitor));
          return counts && on.length > 0 ? [replacedUnderPower(procedure, id, place, on, state.power)] : [];
        }),
      ),
    );

  return (state, step) => {
    const asked = askedBy(step);
    if (asked?.of === 'points') return measuring(state, asked.step);
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
    return [...ofConnectors, ...ofLoads, ...replacing(state, step)];
  };
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
