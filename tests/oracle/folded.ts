import { stringify } from 'yaml';
import { chanceFrom } from './chance.ts';
import type { Chance } from './chance.ts';
import type { PlainProcedure, PlainStep } from './plain-procedure.ts';
import { randomProcedure } from './random-procedure.ts';

/*
 * A random procedure in two forms: with a passage written in a routine that is called several times, and as the flat list
 * that whoever works by it goes through. The flat one comes first, so that nobody has to expand anything.
 */

export interface Folded {
  readonly flat: PlainProcedure;
  readonly text: string;
  /** By step of the flat form where it is written, and its number as it is printed. */
  readonly written: readonly {
    readonly place: string;
    readonly printed: string;
    readonly calls: readonly Call[];
  }[];
}

export interface Call {
  readonly place: string;
  readonly printed: string;
}

const handled = ['unlock', 'unplug', 'plug'] as const;
const connectorOf = (step: PlainStep): unknown => handled.map((verb) => step[verb]).find(Boolean);

function given(step: PlainStep, from: string, to: string): PlainStep {
  return Object.fromEntries(
    Object.entries(step).map(([key, value]) => [
      key,
      handled.some((verb) => verb === key) && value === from ? to : value,
    ]),
  );
}

const targetsOf = (step: PlainStep): string[] => {
  const leaves = (value: unknown): string[] =>
    typeof value === 'string'
      ? [value]
      : typeof value === 'object' && value !== null
        ? Object.values(value).flatMap(leaves)
        : [];
  return [...leaves(step.go), ...leaves(step.outcomes)].filter((name) => name !== 'next');
};

/** Whether no jump leads into a passage or out of it, and none is in it. */
const isPassage = (steps: readonly PlainStep[]): boolean =>
  steps.every((step) => step.id === undefined && targetsOf(step).length === 0);

function passageIn(chance: Chance, steps: readonly PlainStep[]): [number, number] | null {
  for (let tries = 0; tries < 12; tries += 1) {
    const from = chance.whole(0, steps.length - 1);
    const to = Math.min(steps.length, from + chance.whole(1, 5));
    if (isPassage(steps.slice(from, to))) return [from, to];
  }
  return null;
}

/** null where no passage of the procedure can stand in a routine. */
export function foldedProcedure(seed: number): Folded | null {
  const chance = chanceFrom(seed + 77_000);
  const procedure = randomProcedure(seed);
  const steps = procedure.steps.filter((step) => !('section' in step));
  const found = passageIn(chance, steps);
  if (found === null) return null;
  const [from, to] = found;
  const passage = steps.slice(from, to);
  const inner = chance.happens(0.5) ? chance.whole(0, passage.length - 1) : passage.length;
  const connectors = steps.map(connectorOf).filter((id) => typeof id === 'string');
  const needed = passage
    .slice(0, inner)
    .map(connectorOf)
    .find((id) => typeof id === 'string');
  const needs = needed !== undefined && chance.happens(0.7) ? needed : null;

  const list: (PlainStep | { readonly given: string | null })[] = [
    ...steps.slice(0, from),
    { given: needs },
    ...steps.slice(to),
  ];
  for (let more = chance.whole(1, 2); more > 0; more -= 1)
    list.splice(chance.whole(0, list.length), 0, { given: needs === null ? null : chance.pick(connectors) });

  const flat: PlainStep[] = [];
  const written: Folded['written'][number][] = [];
  const calls: PlainStep[] = list.map((step, at): PlainStep => {
    const call = { place: `steps/${at}`, printed: String(at + 1) };
    if (!isCall(step)) {
      flat.push(step);
      written.push({ ...call, calls: [] });
      return step;
    }
    for (const [index, one] of passage.entries()) {
      flat.push(index < inner && needs !== null && step.given !== null ? given(one, needs, step.given) : one);
      const nested = { place: `routines/outer/steps/${inner}`, printed: `${call.printed}.${inner + 1}` };
      written.push(
        index < inner
          ? { place: `routines/outer/steps/${index}`, printed: `${call.printed}.${index + 1}`, calls: [call] }
          : {
              place: `routines/inner/steps/${index - inner}`,
              printed: `${nested.printed}.${index - inner + 1}`,
              calls: [call, nested],
            },
      );
    }
    return step.given === null ? { run: 'outer' } : { run: 'outer', given: { where: step.given } };
  });
  const outer = passage.slice(0, inner).map((step) => (needs === null ? step : given(step, needs, 'where')));
  const routines = {
    outer: {
      ...(needs === null ? {} : { needs: { where: 'connector' } }),
      steps: inner < passage.length ? [...outer, { run: 'inner' }] : outer,
    },
    ...(inner < passage.length ? { inner: { steps: passage.slice(inner) } } : {}),
  };
  const plain = { ...procedure, routines, steps: calls };
  const text = stringify(plain, { lineWidth: 0, aliasDuplicateObjects: false });
  return { flat: { ...procedure, steps: flat }, text, written };
}

function isCall(step: object): step is { readonly given: string | null } {
  return 'given' in step;
}
