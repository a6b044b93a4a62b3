import { stepNumber } from '../model/where.ts';
import { listed } from '../rules/words.ts';
import type { Analysis } from '../project/analysis.ts';
import { keepAwayFromVoltage, noticeFor, protectFromVoltage } from '../rules/touch/required-notices.ts';
import type { Id, Procedure, Step } from '../model/procedure.ts';
import { isHighVoltage } from '../model/source-kinds.ts';
import { benchAlong, stepOf } from './along-trace.ts';
import type { Candidate, Mender } from './candidate.ts';
import type { NewStep } from './change.ts';

/* Findings that are mended at the step that they are about. */

/** What is said where power comes back to something live. */
export const keepClear =
  'warning: An airbag or belt tensioner that fires can kill. Keep all persons clear of them while power comes back.';

/** A source is taken away with the notice that this asks for. */
export function takenAway({ sources }: Procedure, source: Id): NewStep {
  const line = `disconnect: ${source}`;
  if (!isHighVoltage(sources.get(source))) return { line };
  return { line, below: [`danger: ${protectFromVoltage}`] };
}

/** A source of what is live is given back with a notice, whether one is asked for or not. */
export function givenBack(analysis: Analysis, source: Id): NewStep {
  const line = `reconnect: ${source}`;
  if (isHighVoltage(analysis.procedure().value.sources.get(source)))
    return { line, below: [`danger: ${keepAwayFromVoltage}`] };
  const { hazards } = analysis.circuits();
  return hazards.some(({ sources }) => sources.includes(source)) ? { line, below: [keepClear] } : { line };
}

/** Which words fit is for the author to decide; these are a beginning. */
export const addNotice: Mender = (analysis, finding) => {
  const procedure = analysis.procedure().value;
  const step = stepOf(procedure, finding);
  const notice = step === null ? null : noticeFor(procedure, analysis.circuits(), step);
  if (step === null || notice === null) return [];
  const { signal, says } = notice;
  const title = `Add a ${signal} to step ${stepNumber(step)}`;
  return [
    { title, changes: [{ kind: 'key', index: step.index, line: `${signal}: ${says}` }], isChoice: true },
  ];
};

/** That power comes back there at all is for the author to decide. */
export const addWarning: Mender = (analysis, finding) => {
  const step = stepOf(analysis.procedure().value, finding);
  if (step === null) return [];
  const title = `Add a warning to step ${stepNumber(step)}`;
  return [{ title, changes: [{ kind: 'key', index: step.index, line: keepClear }], isChoice: true }];
};

export const takeStepOut: Mender = (analysis, finding) => {
  const step = stepOf(analysis.procedure().value, finding);
  if (step === null) return [];
  return [{ title: `Take out step ${stepNumber(step)}`, changes: [{ kind: 'take-out', index: step.index }] }];
};

export const leaveLess: Mender = (analysis, { subject, ...finding }) => {
  const step = stepOf(analysis.procedure().value, finding);
  if (step === null || subject === undefined) return [];
  const title = `Take ${subject} out of \`leaves\` of step ${stepNumber(step)}`;
  return [{ title, changes: [{ kind: 'not-left', index: step.index, name: subject }] }];
};

export const ignitionOffFirst: Mender = (analysis, finding) => {
  const step = stepOf(analysis.procedure().value, finding);
  return step === null ? [] : insertedBefore(step, [{ line: 'ignition: off' }]);
};

/** A monitor tells its codes only while it is powered: it is woken for that, and put to sleep again. */
export const readCodesFirst: Mender = (analysis, finding) => {
  const procedure = analysis.procedure().value;
  const step = stepOf(procedure, finding);
  if (step === null || finding.subject === undefined) return [];
  const read = { line: `read-codes: ${finding.subject}` };
  const { ignitionOn } = benchAlong(procedure, finding, 'before').power;
  return insertedBefore(
    step,
    ignitionOn ? [read] : [{ line: 'ignition: on' }, read, { line: 'ignition: off' }],
  );
};

/** Before a step, with the jumps that lead to it or without. */
function insertedBefore(step: Step, steps: readonly NewStep[]): readonly Candidate[] {
  const title = `Insert ${listed(steps.map(({ line }) => line))} before step ${stepNumber(step)}`;
  const ids = step.id === undefined ? [false] : [true, false];
  return ids.map((takesId): Candidate => ({
    title,
    changes: [{ kind: 'before', index: step.index, steps, takesId }],
  }));
}
