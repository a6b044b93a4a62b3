import type { Analysis } from '../project/analysis.ts';
import { touchesOf } from '../bench/touch.ts';
import { formatWait } from '../quantity/quantity.ts';
import { listed } from '../rules/words.ts';
import type { Finding } from '../model/finding.ts';
import type { Id, Procedure, Step } from '../model/procedure.ts';
import { stepNumber } from '../model/where.ts';
import type { Path } from '../model/where.ts';
import { missingAlong } from './along.ts';
import type { Missing } from './along.ts';
import { givenBack, keepClear, takenAway } from './at-step.ts';
import { callsToGiveBack, callsToMakeSafe } from './by-routine.ts';
import { proofSteps } from './proof.ts';
import type { Candidate } from './candidate.ts';
import type { NewStep } from './change.ts';

/**
 * Ways to make a touch safe: what is missing is put before one of the steps on the path to it, or a wait on the path is
 * made longer; the shortest ways come first. Whether one of them holds on every path is for a trial to say.
 */
export function waysToMakeSafe(analysis: Analysis, finding: Finding): readonly Candidate[] {
  const procedure = analysis.procedure().value;
  const along = missingAlong(analysis, finding);
  const last = along.at(-1);
  if (last === undefined) return [];
  const nearest = along.toReversed().slice(0, 24);
  const found = [
    ...longerWaits(procedure, along, last),
    ...nearest.flatMap((place) => {
      const waited = waitedFrom(procedure, along, place);
      const safe = safeWays(analysis, finding, place);
      return [
        ...safe.flatMap((steps) => putBefore(procedure, place, steps, waited)),
        ...(place === last ? safe.flatMap((steps) => putAround(analysis, place, steps)) : []),
        ...safe.flatMap((steps) => detour(procedure, along, place, steps)),
      ];
    }),
  ];
  return found.toSorted((a, b) => sizeOf(a) - sizeOf(b));
}

/** Whether nothing but the touch stands at the end of the steps: a draft that is still being written. */
export function endsWithTouch({ steps }: Procedure, finding: Finding): boolean {
  return finding.trace?.hops.at(-1)?.index === steps.length - 1;
}

function sizeOf({ changes }: Candidate): number {
  return changes.reduce((sum, change) => sum + ('steps' in change ? change.steps.length : 0), 0);
}

/** Each wait on the path by which some of it has been waited already. */
function longerWaits(procedure: Procedure, along: readonly Missing[], last: Missing): readonly Candidate[] {
  if (last.ignitionIsOn || last.connected.length > 0) return [];
  return along.toReversed().flatMap(({ index }) => {
    const step = procedure.steps[index];
    if (step?.verb !== 'wait') return [];
    const seconds = step.seconds + last.owed;
    const title = `Wait ${formatWait(seconds)} in step ${stepNumber(step)}, not ${formatWait(step.seconds)}`;
    return [{ title, changes: [{ kind: 'wait', index, seconds }] }];
  });
}

/** What the path waits between a place and the touch, in seconds. */
function waitedFrom(procedure: Procedure, along: readonly Missing[], place: Missing): number {
  return along.slice(along.indexOf(place)).reduce((sum, { index }) => {
    const step = procedure.steps[index];
    return step?.verb === 'wait' ? sum + step.seconds : sum;
  }, 0);
}

function putBefore(
  procedure: Procedure,
  place: Missing,
  steps: readonly NewStep[],
  waited: number,
): readonly Candidate[] {
  const step = procedure.steps[place.index];
  if (step === undefined || steps.length === 0) return [];
  const isOn = place.ignitionIsOn || place.connected.length > 0;
  const withoutWait = isOn && waited > 0 ? [steps.filter(({ line }) => !line.startsWith('wait:'))] : [];
  return [...withoutWait, steps].flatMap((chosen) => {
    const title = `Insert ${named(chosen)} before step ${stepNumber(step)}`;
    const ids = step.id === undefined ? [false] : [true, false];
    return ids.map((takesId): Candidate => ({
      title,
      changes: [{ kind: 'before', index: place.index, steps: chosen, takesId }],
    }));
  });
}

/** Power is taken away before the touch and given back behind the last touch that follows it. */
function putAround(analysis: Analysis, place: Missing, before: readonly NewStep[]): readonly Candidate[] {
  const procedure = analysis.procedure().value;
  const step = procedure.steps[place.index];
  if (step === undefined) return [];
  const steps = powerBack(analysis, place);
  if (before.length === 0 || steps.length === 0) return [];
  const backs = [...callsToGiveBack(procedure, place).map((call) => [call]), steps];
  const ways = endsOfWork(procedure.steps, place.index).flatMap((end) =>
    backs.map((after) => ({ end, after })),
  );
  return ways.flatMap(({ end, after }) => {
    const title = `Insert ${named(before)} before step ${stepNumber(step)}, and give power back after step ${numberAt(procedure, end)}`;
    const ids = step.id === undefined ? [false] : [true, false];
    return ids.map((takesId): Candidate => ({
      title,
      changes: [
        { kind: 'before', index: place.index, steps: before, takesId },
        { kind: 'after', index: end, steps: after },
      ],
    }));
  });
}

/** Steps behind which power may come back: the touch itself, and each one after it before power is needed again. */
function endsOfWork(steps: readonly Step[], from: number): readonly number[] {
  const ends = [from];
  for (let index = from + 1; index < steps.length; index++) {
    const step = steps[index];
    if (step === undefined || needsPower(step)) break;
    if (touchesOf(step, () => ({ connector: '', side: 'monitor', loop: null })).length > 0) ends.push(index);
  }
  return ends.toReversed();
}

/**
 * Where a jump leads to a step that other paths reach safely, the missing steps are put on the way of that jump alone:
 * behind a step that nothing falls through, with a `go` to where the jump led.
 */
function detour(
  procedure: Procedure,
  along: readonly Missing[],
  place: Missing,
  steps: readonly NewStep[],
): readonly Candidate[] {
  const before = along[along.indexOf(place) - 1];
  const target = procedure.steps[place.index];
  const from = before === undefined ? undefined : procedure.steps[before.index];
  if (before === undefined || from === undefined || target?.id === undefined) return [];
  const behind = procedure.steps.findLastIndex(({ verb }) => verb === 'go' || verb === 'stop');
  if (steps.length === 0 || behind === -1) return [];
  const id = freshId(procedure);
  return jumps(from, place.index).map((path) => ({
    title: `Insert ${named(steps)} on the way from step ${stepNumber(from)} to step ${stepNumber(target)}`,
    changes: [
      { kind: 'lead', index: before.index, path, to: id },
      { kind: 'after', index: behind, steps: [...steps, { line: `go: ${target.id ?? ''}` }], id },
    ],
  }));
}

/** Where a step names the one at this index as its target. */
function jumps(step: Step, to: number): readonly Path[] {
  if (step.verb === 'go') return step.to === to ? [[...step.path, 'go']] : [];
  const outcomes = 'outcomes' in step ? (step.outcomes ?? []) : [];
  return outcomes.filter(({ target }) => target === to).map(({ path }) => path);
}

function freshId(procedure: Procedure): Id {
  const taken = new Set(procedure.steps.map(({ id }) => id));
  for (let count = 1; ; count++) {
    const id = count === 1 ? 'make-safe-first' : `make-safe-first-${count}`;
    if (!taken.has(id)) return id;
  }
}

function numberAt({ steps }: Procedure, index: number): string {
  const step = steps[index];
  return step === undefined ? '' : stepNumber(step);
}

/** Whether power has to be back before a step: it needs a monitor, switches power itself, or leads away. */
function needsPower(step: Step): boolean {
  switch (step.verb) {
    case 'read':
    case 'read-codes':
    case 'clear-codes':
    case 'reconnect':
    case 'ignition':
    case 'stop':
    case 'go':
      return true;
    case 'wiggle':
      return step.by === 'monitor';
    case 'disconnect':
    case 'wait':
    case 'prove-dead':
    case 'unlock':
    case 'unplug':
    case 'plug':
    case 'fit':
    case 'move':
    case 'remove':
    case 'measure':
    case 'inspect':
    case 'do':
    case 'replace':
    case 'conclude':
    case 'run':
    case 'broken':
      return false;
  }
}

/** The steps that make the touch safe: calls of routines that may do it, and all of them written out. */
function safeWays(analysis: Analysis, finding: Finding, place: Missing): readonly (readonly NewStep[])[] {
  const procedure = analysis.procedure().value;
  const written = safeSteps(analysis, finding, place);
  if (written.length === 0) return [];
  const codes = written.slice(0, written.findLastIndex(({ line }) => line.startsWith('read-codes:')) + 1);
  return [...callsToMakeSafe(procedure, finding.subject, place).map((call) => [...codes, call]), written];
}

function safeSteps(
  analysis: Analysis,
  { subject }: Finding,
  { ignitionIsOn, connected, owed, unread, unproven }: Missing,
): readonly NewStep[] {
  const procedure = analysis.procedure().value;
  const wakes = unread.length > 0 && !ignitionIsOn;
  return [
    ...(wakes ? [{ line: 'ignition: on' }] : []),
    ...unread.map((monitor) => ({ line: `read-codes: ${monitor}` })),
    ...(ignitionIsOn || wakes ? [{ line: 'ignition: off' }] : []),
    ...connected.map((source) => takenAway(procedure, source)),
    ...(owed > 0 ? [{ line: `wait: ${formatWait(owed)}` }] : []),
    // A proof that comes too early is there already.
    ...unproven
      .filter(({ source }) => source !== subject)
      .flatMap((lacking) => proofSteps(analysis, lacking, subject)),
  ];
}

/** Whichever brings the power back comes with a warning. */
function powerBack(analysis: Analysis, { ignitionIsOn, connected }: Missing): readonly NewStep[] {
  const isLast = connected.length === 0;
  return [
    ...connected.map((source) => givenBack(analysis, source)),
    ...(ignitionIsOn ? [{ line: 'ignition: on', ...(isLast ? { below: [keepClear] } : {}) }] : []),
  ];
}

function named(steps: readonly NewStep[]): string {
  return listed(steps.map(({ line }) => line));
}
