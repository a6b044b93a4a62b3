import type { Analysis } from '../project/analysis.ts';
import { isolatedBy } from '../bench/hazards.ts';
import { listed } from '../rules/words.ts';
import type { Id, Procedure, Step } from '../model/procedure.ts';
import { stepNumber } from '../model/where.ts';
import { benchAlong, lastStep, stepOf } from './along-trace.ts';
import type { BenchThen } from './along-trace.ts';
import { givenBack, takenAway } from './at-step.ts';
import type { Candidate, Mender } from './candidate.ts';
import type { NewStep } from './change.ts';

/* What a path leaves behind where it ends: put right behind the last step, or named at a stop. */

export const restore: Mender = (analysis, finding) => {
  const procedure = analysis.procedure().value;
  const step = stepOf(procedure, finding);
  if (step === null || finding.subject === undefined) return [];
  const bench = benchAlong(procedure, finding);
  if (step.verb === 'stop')
    return finding.severity === 'error'
      ? powerTakenFirst(procedure, step, bench)
      : leaves(step, finding.subject);
  const steps = restoring(analysis, bench);
  return appended(procedure, steps.length > 1 && bench.power.ignitionOn ? [off, ...steps] : steps);
};

export const clearCodes: Mender = (analysis, finding) => {
  const procedure = analysis.procedure().value;
  const step = stepOf(procedure, finding);
  if (step === null || finding.subject === undefined) return [];
  if (step.verb === 'stop') return leaves(step, 'codes');
  const { ignitionOn } = benchAlong(procedure, finding).power;
  const clear = { line: `clear-codes: ${finding.subject}` };
  const read = { line: `read-codes: ${finding.subject}` };
  const wake = ignitionOn ? [] : [on];
  return [...appended(procedure, [...wake, clear]), ...appended(procedure, [...wake, read, clear])];
};

/** The loops that a repair or an opening concerns are read, and what the reading shows decides. */
export const verify: Mender = (analysis, finding) => {
  const procedure = analysis.procedure().value;
  const step = stepOf(procedure, finding);
  if (step === null || finding.subject === undefined) return [];
  if (step.verb === 'stop') return leaves(step, 'repair');
  const concerned = loopsOf(procedure, finding.subject);
  const wake = benchAlong(procedure, finding).power.ignitionOn ? [] : [on];
  return concerned.flatMap((loop) =>
    appended(procedure, [...wake, ...readAndDecide(loop, freshStop(procedure))]),
  );
};

const on: NewStep = { line: 'ignition: on' };
const off: NewStep = { line: 'ignition: off' };

function readAndDecide(loop: Id, notSound: Id): readonly NewStep[] {
  return [
    { line: `read: ${loop}`, below: [`outcomes: { within: next, else: ${notSound} }`] },
    { line: `stop: ${loop} is sound.` },
    {
      line: `stop: ${loop} is not sound. Ask whoever leads the work.`,
      below: [`id: ${notSound}`, 'leaves: [repair]'],
    },
  ];
}

function loopsOf({ loops }: Procedure, subject: Id): readonly Id[] {
  const named = [...loops.values()].filter(
    ({ id, monitor, elements }) =>
      id === subject || monitor === subject || elements.some((one) => one.id === subject),
  );
  return named.map(({ id }) => id);
}

function freshStop({ steps }: Procedure): Id {
  const taken = new Set(steps.map(({ id }) => id));
  for (let count = 1; ; count++) {
    const id = count === 1 ? 'not-sound' : `not-sound-${count}`;
    if (!taken.has(id)) return id;
  }
}

/** Loads come off before their connector is mated, and power comes last. */
function restoring(analysis: Analysis, { power, hardware }: BenchThen): readonly NewStep[] {
  return [
    ...[...hardware.loads.keys()].map((load) => ({ line: `remove: ${load}` })),
    ...[...hardware.connectors.keys()]
      .filter((id) => isolatedBy(analysis.procedure().value, id) === null)
      .map((id) => ({ line: `plug: ${id}` })),
    ...power.disconnected.map((source) => givenBack(analysis, source)),
  ];
}

/** A live circuit may stay open at a stop, but never under power. */
function powerTakenFirst(procedure: Procedure, step: Step, { power }: BenchThen): readonly Candidate[] {
  const taken = [...procedure.sources.keys()].filter((source) => !power.disconnected.includes(source));
  const steps = [...(power.ignitionOn ? [off] : []), ...taken.map((id) => takenAway(procedure, id))];
  if (steps.length === 0) return [];
  const title = `Insert ${listed(steps.map(({ line }) => line))} before step ${stepNumber(step)}`;
  const ids = step.id === undefined ? [false] : [true, false];
  return ids.map((takesId): Candidate => ({
    title,
    changes: [
      { kind: 'before', index: step.index, steps, takesId },
      ...taken.map((name) => ({ kind: 'leave', index: step.index, name }) as const),
    ],
  }));
}

/** Whether it may stay so is for the author to decide. */
function leaves(step: Step, name: string): readonly Candidate[] {
  const title = `Name ${name} in \`leaves\` of step ${stepNumber(step)}`;
  return [{ title, changes: [{ kind: 'leave', index: step.index, name }], isChoice: true }];
}

function appended(procedure: Procedure, steps: readonly NewStep[]): readonly Candidate[] {
  const last = lastStep(procedure);
  if (last === null || steps.length === 0) return [];
  const title = `Add ${listed(steps.map(({ line }) => line))} at the end`;
  return [{ title, changes: [{ kind: 'after', index: last.index, steps }] }];
}
