import { TextDocument } from 'vscode-languageserver-textdocument';
import type { Analysis } from '../project/analysis.ts';
import type { Taken } from '../model/finding.ts';
import { withUnseen } from '../model/printable.ts';
import type { FileId, StepRef, Where } from '../model/where.ts';

/* The pieces that the machine formats share: positions from 0 in UTF-16 units, numbers of 12 significant digits. */

export interface Places {
  readonly document: (file: FileId) => TextDocument;
  readonly range: (where: Where) => JsonRange;
  readonly step: (step: StepRef) => JsonStep;
}

interface JsonPosition {
  readonly line: number;
  readonly character: number;
}

export interface JsonRange {
  readonly start: JsonPosition;
  readonly end: JsonPosition;
}

export interface JsonStep {
  readonly number: number;
  readonly id: string | null;
  readonly routine: string | null;
  /** Outermost first: those before one of them are its own calls. */
  readonly calls: readonly Omit<JsonStep, 'calls'>[];
  readonly line: number;
}

export function placesOf(analysis: Analysis): Places {
  const documents = new Map<FileId, TextDocument>();
  const document = (file: FileId): TextDocument => {
    const known = documents.get(file);
    if (known !== undefined) return known;
    const text =
      file === analysis.file ? analysis.snapshot.files.get(file)?.text : textOfUsed(analysis, file);
    const opened = TextDocument.create(file, 'yaml', 0, text ?? '');
    documents.set(file, opened);
    return opened;
  };
  const range = (where: Where): JsonRange => {
    const { from, to } = analysis.range(where);
    const text = document(where.file);
    return { start: text.positionAt(from), end: text.positionAt(to) };
  };
  const bare = ({ number, id, routine, file, path }: StepRef): Omit<JsonStep, 'calls'> => ({
    number,
    id: id ?? null,
    routine: routine ?? null,
    line: range({ file, path, part: 'value' }).start.line,
  });
  /** Many paths lead over the same step. */
  const steps = new Map<StepRef, JsonStep>();
  const step = (ref: StepRef): JsonStep => {
    const known = steps.get(ref) ?? { ...bare(ref), calls: ref.calls.map(bare) };
    steps.set(ref, known);
    return known;
  };
  return { document, range, step };
}

function textOfUsed(analysis: Analysis, file: FileId): string | undefined {
  return analysis.used().find(({ id }) => id === file)?.text;
}

/** SI base units, at most 12 significant digits; null where there is no number. */
export function jsonNumber(value: number | null): number | null {
  return value === null || !Number.isFinite(value) ? null : Number(value.toPrecision(12));
}

export function jsonTaken(taken: Taken | null): Record<string, unknown> {
  if (taken === null) return { taken: null };
  if (taken.kind !== 'outcome') return { taken: taken.kind };
  return {
    taken: 'outcome',
    outcome: taken.window ?? taken.outcome,
    ...(taken.of === undefined ? {} : { of: taken.of }),
  };
}

export function printJson(document: unknown): string {
  return `${jsonText(document, 2)}\n`;
}

/** As JSON. What is not seen is escaped in it: a program gets it as it was written, and no terminal is steered by it. */
export function jsonText(value: unknown, indent = 0): string {
  return withUnseen(JSON.stringify(value, null, indent), escapeOf);
}

function escapeOf(character: string): string {
  const units = Array.from({ length: character.length }, (_, index) => character.charCodeAt(index));
  return units.map((unit) => `\\u${unit.toString(16).padStart(4, '0')}`).join('');
}

/**
 * A list whose items are written one by one: all of them in one text may be more than a text can hold. An item that
 * cannot be written, null, is left out.
 */
export function* jsonList<T>(items: Iterable<T>, write: (item: T) => string | null): Generator<string> {
  yield '[';
  let separator = '\n';
  for (const item of items) {
    const written = write(item);
    if (written === null) continue;
    yield separator + written;
    separator = ',\n';
  }
  yield ']';
}
