import { stringify } from 'yaml';
import { chanceFrom } from './chance.ts';
import type { Chance } from './chance.ts';
import type { PlainStep } from './plain-procedure.ts';
import { pathOf, through } from './random-circuit.ts';
import type { PlainCircuit } from './random-circuit.ts';
import { randomProcedure } from './random-procedure.ts';
import type { Called, PlainRoutine } from './walk.ts';

/*
 * Random procedures with two or three routines: calls in calls, jumps and stops inside of them, calls that jumps lead to,
 * and needs of every kind that a step can name. The steps are those of a random procedure.
 */

type Kind = 'source' | 'load' | 'connector' | 'side' | 'loop';

/** A key of a step that names something of this kind, as it is written. */
function namedIn(step: PlainStep): readonly (readonly [key: string, kind: Kind])[] {
  const found: [string, Kind][] = [];
  for (const key of ['unlock', 'unplug', 'plug']) if (key in step) found.push([key, 'connector']);
  for (const key of ['disconnect', 'reconnect']) if (key in step) found.push([key, 'source']);
  for (const key of ['fit', 'remove', 'move']) if (key in step) found.push([key, 'load']);
  if ('fit' in step && !('loop' in step)) found.push(['at', 'side']);
  if ('move' in step && !('loop' in step)) found.push(['to', 'side']);
  if (typeof step.read === 'string') found.push(['read', 'loop']);
  return found;
}

/** Sides where it is plain in which loop a load sits. */
function plainSides(circuit: PlainCircuit): readonly string[] {
  return Object.keys(circuit.connectors)
    .filter((id) => through(circuit, id).length === 1)
    .flatMap((id) => [`${id}.monitor`, `${id}.end`]);
}

function othersOf(circuit: PlainCircuit, kind: Kind): readonly string[] {
  const isolators = Object.values(circuit.sources).map((source) => source['isolated-by']);
  switch (kind) {
    case 'source':
      return Object.keys(circuit.sources);
    case 'load':
      return Object.keys(circuit.loads);
    case 'connector':
      return Object.keys(circuit.connectors).filter((id) => !isolators.includes(id));
    case 'side':
      return plainSides(circuit).filter((side) => !isolators.includes(side.split('.')[0]));
    case 'loop':
      return Object.keys(circuit.loops).filter((loop) => pathOf(circuit, loop).length > 0);
  }
}

interface Made {
  readonly routine: PlainRoutine;
  /** What a need stood for where the steps come from. */
  readonly usual: Readonly<Record<string, { readonly kind: Kind; readonly what: string }>>;
}

/** Leads the jumps of a step to ids of its own list, or on. */
function ledWithin(chance: Chance, step: PlainStep, ids: readonly string[]): PlainStep {
  const target = (): string => (chance.happens(0.5) ? 'next' : chance.pick(ids));
  const led = (to: unknown): unknown =>
    typeof to === 'string'
      ? target()
      : Object.fromEntries(Object.entries(to as object).map(([name, one]) => [name, led(one)]));
  return {
    ...step,
    ...('go' in step ? { go: chance.pick(ids) } : {}),
    ...('outcomes' in step ? { outcomes: led(step.outcomes) } : {}),
  };
}

function routineOf(
  chance: Chance,
  circuit: PlainCircuit,
  material: readonly PlainStep[],
  inner: { readonly name: string; readonly made: Made } | null,
): Made {
  const from = chance.whole(0, Math.max(0, material.length - 2));
  const picked = material.slice(from, from + chance.whole(1, 4));
  const ids = picked.map((_, at) => `own-${at}`);
  let steps: PlainStep[] = picked.map((step, at) => {
    return { ...ledWithin(chance, step, ids), id: `own-${at}` };
  });
  const usual: Record<string, { kind: Kind; what: string }> = {};
  for (const kind of ['source', 'load', 'connector', 'side', 'loop'] as const) {
    const first = steps
      .flatMap((step) => namedIn(step).map(([key, of]) => ({ of, what: step[key] })))
      .find(({ of, what }) => of === kind && othersOf(circuit, kind).includes(String(what)));
    if (first === undefined || chance.happens(0.3)) continue;
    const name = `the-${kind}`;
    usual[name] = { kind, what: String(first.what) };
    steps = steps.map((step) => ({
      ...step,
      ...Object.fromEntries(
        namedIn(step).flatMap(([key, of]) => (of === kind && step[key] === first.what ? [[key, name]] : [])),
      ),
    }));
  }
  if (inner !== null) {
    const call = callOf(chance, circuit, inner.name, inner.made, usual);
    steps.splice(chance.whole(0, steps.length), 0, call);
  }
  const needs = Object.fromEntries(Object.entries(usual).map(([name, { kind }]) => [name, kind]));
  const routine = Object.keys(needs).length === 0 ? { steps } : { needs, steps };
  return { routine, usual };
}

function callOf(
  chance: Chance,
  circuit: PlainCircuit,
  name: string,
  { usual }: Made,
  around: Made['usual'] = {},
): PlainStep {
  const given = Object.entries(usual).map(([need, { kind, what }]) => {
    const passedOn = Object.entries(around).find(([, one]) => one.kind === kind)?.[0];
    if (passedOn !== undefined && chance.happens(0.5)) return [need, passedOn];
    return [need, chance.happens(0.5) ? what : chance.pick(othersOf(circuit, kind))];
  });
  return given.length === 0 ? { run: name } : { run: name, given: Object.fromEntries(given) as unknown };
}

/** The same for the same seed. */
export function calledProcedure(seed: number): { readonly procedure: Called; readonly text: string } {
  const chance = chanceFrom(seed + 991_000);
  const { steps: all, ...circuit } = randomProcedure(seed);
  const material = all.filter((step) => !('section' in step));
  const routines: Record<string, PlainRoutine> = {};
  const made: { name: string; made: Made }[] = [];
  for (let left = chance.whole(2, 3); left > 0; left -= 1) {
    const inner = made.length > 0 && chance.happens(0.6) ? chance.pick(made) : null;
    const name = `routine-${left}`;
    const one = routineOf(chance, circuit, material, inner);
    routines[name] = one.routine;
    made.push({ name, made: one });
  }
  const steps: PlainStep[] = material.slice(0, 14).map((step) => ({ ...step }));
  for (let calls = chance.whole(2, 4); calls > 0; calls -= 1) {
    const { name, made: one } = chance.pick(made);
    const call = callOf(chance, circuit, name, one);
    steps.splice(
      chance.whole(0, steps.length),
      0,
      chance.happens(0.5) ? { ...call, id: `call-${calls}` } : call,
    );
  }
  const ids = steps.flatMap(({ id }) => (typeof id === 'string' ? [id] : []));
  // Some targets were cut off; some jumps are to lead to calls.
  const led = steps.map((step) => {
    const again = (to: unknown): unknown => {
      if (typeof to === 'object' && to !== null)
        return Object.fromEntries(Object.entries(to).map(([name, one]) => [name, again(one)]));
      const isKnown = to === 'next' || ids.includes(String(to));
      return isKnown && chance.happens(0.8) ? to : ids.length > 0 ? chance.pick(ids) : 'next';
    };
    return {
      ...step,
      ...('go' in step ? { go: ids.includes(String(step.go)) ? step.go : (ids[0] ?? 'none-left') } : {}),
      ...('outcomes' in step ? { outcomes: again(step.outcomes) } : {}),
    };
  });
  const procedure: Called = { ...circuit, routines, steps: led };
  return { procedure, text: stringify(procedure, { lineWidth: 0, aliasDuplicateObjects: false }) };
}
