import { stepOf } from './along-trace.ts';
import type { Mender } from './candidate.ts';
import { textOf } from './trial.ts';

/** Which half of an open connector is moved is for the author to say: one where none is named, the other where one is. */
export const nameSide: Mender = (analysis, finding) => {
  const procedure = analysis.procedure().value;
  const { at, subject } = finding;
  const connector = subject === undefined ? undefined : procedure.connectors.get(subject);
  if (stepOf(procedure, finding)?.verb !== 'wiggle' || connector === undefined) return [];
  const range = analysis.range(at);
  const { id, sides } = connector;
  const written = textOf(analysis).slice(range.from, range.to);
  const halves = sides.map((side) => `${id}.${side}`);
  if (written !== id && !halves.includes(written)) return [];
  return halves
    .filter((half) => half !== written)
    .map((half) => ({
      title: `Change \`${written}\` to \`${half}\``,
      changes: [],
      edits: [{ range, text: half }],
      isChoice: true,
    }));
};
