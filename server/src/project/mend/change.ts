import { formatWait } from '../../quantity/quantity.ts';
import type { Id } from '../../text/procedure.ts';
import type { Path } from '../../text/where.ts';
import type { Analysis } from '../analysis.ts';
import type { Edit } from '../edit.ts';
import { textOf } from './trial.ts';

/** A step to be written: its verb with what follows, and the keys below it. */
export interface NewStep {
  readonly line: string;
  readonly below?: readonly string[];
}

/** A change of the steps, by index. */
export type Change =
  | {
      readonly kind: 'before';
      readonly index: number;
      readonly steps: readonly NewStep[];
      /** Whether jumps to the step lead to the new ones too: its id moves to the first of them. */
      readonly takesId: boolean;
    }
  | {
      readonly kind: 'after';
      readonly index: number;
      readonly steps: readonly NewStep[];
      /** Of the first of them. */
      readonly id?: Id;
    }
  | { readonly kind: 'wait'; readonly index: number; readonly seconds: number }
  /** Leads an outcome or a `go` to another id. */
  | { readonly kind: 'lead'; readonly index: number; readonly path: Path; readonly to: Id };

/** The edits that make the changes; null where the steps are not written so that they can be made. */
export function editsFor(analysis: Analysis, changes: readonly Change[]): readonly Edit[] | null {
  const edits: Edit[] = [];
  for (const change of changes) {
    const made = editsForOne(analysis, change);
    if (made === null) return null;
    edits.push(...made);
  }
  return edits;
}

function editsForOne(analysis: Analysis, change: Change): readonly Edit[] | null {
  const step = analysis.procedure().value.steps[change.index];
  const lines = step === undefined ? null : analysis.stepLines(step);
  if (step === undefined || lines === null) return null;
  const text = textOf(analysis);
  const lineBreak = text.includes('\r\n') ? '\r\n' : '\n';
  switch (change.kind) {
    case 'wait':
      return lines.wait === null ? null : [{ range: lines.wait, text: formatWait(change.seconds) }];
    case 'before': {
      const id = change.takesId ? (step.id ?? null) : null;
      if (change.takesId && (id === null || lines.idLine === null)) return null;
      const written = change.steps.map((one, at) =>
        linesOf(one, lines.indent, at === 0 ? id : null, lineBreak),
      );
      const inserted = { range: { from: lines.from, to: lines.from }, text: written.join('') };
      return change.takesId && lines.idLine !== null
        ? [inserted, { range: lines.idLine, text: '' }]
        : [inserted];
    }
    case 'lead':
      return [
        { range: analysis.range({ file: analysis.file, path: change.path, part: 'value' }), text: change.to },
      ];
    case 'after': {
      const id = change.id ?? null;
      const written = change.steps
        .map((one, at) => linesOf(one, lines.indent, at === 0 ? id : null, lineBreak))
        .join('');
      const endsOpen = !text.slice(0, lines.to).endsWith('\n');
      return [{ range: { from: lines.to, to: lines.to }, text: endsOpen ? lineBreak + written : written }];
    }
  }
}

function linesOf(step: NewStep, indent: string, id: string | null, lineBreak: string): string {
  const below = [...(id === null ? [] : [`id: ${id}`]), ...(step.below ?? [])];
  return [`${indent}- ${step.line}`, ...below.map((line) => `${indent}  ${line}`)]
    .map((line) => line + lineBreak)
    .join('');
}
