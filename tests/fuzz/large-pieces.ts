import { readFileSync } from 'node:fs';

/*
 * Texts that are as large as a file may be, each of one thing again and again: whatever takes a time that grows faster
 * than the text takes it here.
 */

export interface LargeText {
  readonly name: string;
  readonly make: (size: number) => string;
}

export const shipped = readFileSync('procedures/driver-airbag-resistance.procedure.yaml', 'utf8');
const stepsAt = shipped.indexOf('\nsteps:\n') + '\nsteps:\n'.length;
export const [head, steps] = [shipped.slice(0, stepsAt), shipped.slice(stepsAt)];
export const withoutOutcomes = steps
  .replaceAll(/^ +(?:id|outcomes): .*\n/gm, '')
  .replaceAll(/^ {2}- go: .*\n/gm, '');

export const circuit = `format: 1
title: Large
sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [unit], wait: 1 min }
instruments:
  unit: { kind: monitor, range: 0..10 Ω, accuracy: 3 % + 0.1 Ω, resolution: 0.01 Ω }
`;
export const loop = `connectors:
  K1: { contact: 2 mΩ }
parts:
  stage: { kind: initiator, resistance: 2 Ω, no-fire: 400 mA, live: true }
loops:
  first: { path: [unit, K1, stage] }
`;

/** One thing until the text is full. */
export function filled(start: string, size: number, piece: (at: number) => string, end = ''): string {
  const pieces = [start];
  let length = start.length + end.length;
  for (let at = 0; ; at += 1) {
    const next = piece(at);
    if (length + next.length > size) return pieces.join('') + end;
    pieces.push(next);
    length += next.length;
  }
}

export function of(name: string, piece: string, start = '', end = ''): LargeText {
  return { name, make: (size) => filled(start, size, () => piece, end) };
}

/** The shipped procedure with its steps again and again. */
export const good: LargeText = of('the steps of the shipped procedure', withoutOutcomes, head);

export function each(name: string, piece: (at: number) => string, start = '', end = ''): LargeText {
  return { name, make: (size) => filled(start, size, piece, end) };
}
