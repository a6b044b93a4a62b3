import { stringify } from 'yaml';
import { chanceFrom } from './chance.ts';
import type { Chance } from './chance.ts';
import type { PlainProcedure, PlainStep } from './plain-procedure.ts';
import { pathOf, randomCircuit, through } from './random-circuit.ts';
import { sidesIn, withWiggles } from './with-wiggles.ts';
import type { PlainCircuit } from './random-circuit.ts';

/*
 * Random procedures: a sensible one is drawn first, then spoiled by a few changes (none, for about two fifths), so that
 * each rule is broken often and clean ones still happen. Outcomes name a place of the list by its key, and get a step
 * id in the end.
 */

type Draft = Record<string, unknown>;

const WAITS = ['30 s', '60 s', '90 s', '3 min', '10 min'];

function placeOn(chance: Chance, circuit: PlainCircuit): { at: string; loop?: string } {
  const connector = chance.pick(
    Object.keys(circuit.connectors).filter((id) => through(circuit, id).length > 0),
  );
  const at = `${connector}.${chance.pick(['monitor', 'monitor', 'end'])}`;
  const loops = through(circuit, connector);
  return loops.length > 1 || (loops.length === 1 && chance.happens(0.2))
    ? { at, loop: chance.pick(loops) }
    : { at };
}

const forms: readonly (readonly string[])[] = [
  ['within', 'else'],
  ['within', 'else'],
  ['within', 'outside'],
  ['within', 'below', 'above', 'open'],
  ['within', 'below', 'above', 'open', 'leak'],
  ['within', 'above', 'else'],
  ['within', 'open'],
  ['below', 'above', 'open'],
  ['outside', 'else'],
  ['below', 'above', 'open', 'else'],
  ['below', 'above', 'open', 'leak', 'else'],
];

/** `*` stands for a target that is drawn when all steps are there. */
function readOutcomes(chance: Chance): Draft {
  return Object.fromEntries(chance.pick(forms).map((name) => [name, '*']));
}

function randomRead(chance: Chance, circuit: PlainCircuit): Draft {
  const loops = Object.keys(circuit.loops);
  if (loops.length > 1 && chance.happens(0.35)) {
    const read = chance.happens(0.7) ? loops : loops.slice(0, 2);
    if (chance.happens(0.25)) return { read };
    const outcomes: Draft = {};
    for (const loop of chance.some(read, 0.5)) {
      const named = readOutcomes(chance);
      delete named.else;
      outcomes[loop] = named;
    }
    if (chance.happens(0.7)) outcomes.within = '*';
    if (chance.happens(0.6) || Object.keys(outcomes).length === 0) outcomes.else = '*';
    return { read, outcomes };
  }
  const step: Draft = { read: chance.pick(loops) };
  if (chance.happens(0.25))
    step.expect = chance.pick([
      '1.5..4.0 Ω',
      '0..3.2 Ω',
      '1.2..2.9 Ω',
      '0.3..3.5 Ω',
      'below 5 Ω',
      'above 1 Ω',
      'open',
      '2.0..12 Ω',
    ]);
  if (chance.happens(0.75)) step.outcomes = readOutcomes(chance);
  return step;
}

/** Where hands are in a step in words: at these things, at nothing, or nobody says. */
function handsAt(chance: Chance, at: readonly string[]): { at?: readonly string[] | 'nothing' } {
  return chance.happens(0.5) ? { at } : chance.happens(0.5) ? { at: 'nothing' } : {};
}

/** Words of a note: at times a command, at times nothing but a mention. */
function said(chance: Chance, circuit: PlainCircuit): string {
  const { connectors, parts, instruments, sources, loads } = circuit;
  const id = chance.pick(
    [connectors, parts, instruments, sources, loads].flatMap((each) => Object.keys(each)),
  );
  const word = chance.pick([
    'unplug',
    'Plug',
    'disconnect',
    'Fit',
    'remove',
    'Replace',
    'wiggle',
    'Measure',
    'Look at',
  ]);
  return chance.pick([
    `${word} ${id}.`,
    `First ${word} ${id} with care.`,
    `Wait, then you must ${word} the seat of ${id}.`,
    `Do not ${word} ${id}.`,
    `It was so when they came to ${word} ${id}.`,
    `${word} ${id} is how it is called.`,
    `${word} it and look at ${id}.`,
    `${id} stays as it is: ${word} nothing.`,
  ]);
}

const isHigh = (circuit: PlainCircuit, source: string): boolean =>
  circuit.sources[source]?.kind === 'high-voltage';

const monitorsIn = ({ instruments }: PlainCircuit): string[] =>
  Object.keys(instruments).filter((id) => instruments[id]?.kind === 'monitor');

/** Connectors that take no source away: only these are unplugged. */
const plainConnectors = ({ connectors }: PlainCircuit): string[] =>
  Object.keys(connectors).filter((id) => !id.startsWith('S'));

/** Mostly at the plug of the source, which it surely reaches. */
function randomProof(chance: Chance, circuit: PlainCircuit, source: string): Draft {
  const plug = circuit.sources[source]?.['isolated-by'] as string;
  const side = (id: string): string => `${id}.${chance.pick(['monitor', 'end'])}`;
  const place = side(chance.happens(0.7) ? plug : chance.pick(Object.keys(circuit.connectors)));
  const outcomes = chance.pick<Draft | null>([
    null,
    null,
    { dead: '*' },
    { live: '*' },
    { dead: 'next', live: '*' },
    { live: '*', dead: '*' },
  ]);
  return {
    'prove-dead': source,
    at: chance.happens(0.3) ? [`${place}.1`, `${place}.2`] : place,
    with: 'meter',
    known: 'battery',
    ...(outcomes === null ? {} : { outcomes }),
  };
}

function randomStep(chance: Chance, circuit: PlainCircuit): Draft {
  const high = Object.keys(circuit.sources).filter((source) => isHigh(circuit, source));
  if (high.length > 0 && chance.happens(0.15)) return randomProof(chance, circuit, chance.pick(high));
  const connectors = plainConnectors(circuit);
  const monitors = monitorsIn(circuit);
  const sources = Object.keys(circuit.sources);
  const loads = Object.keys(circuit.loads);
  const handled = [...Object.keys(circuit.connectors), ...Object.keys(circuit.parts), ...monitors];
  const warned = chance.happens(0.3) ? { warning: 'Nobody in front of it.' } : {};
  switch (chance.whole(0, 19)) {
    case 0:
      return { ignition: chance.pick(['on', 'off', 'cycle']), ...warned };
    case 1:
      return { disconnect: chance.pick(sources) };
    case 2:
      return { reconnect: chance.pick(sources), ...warned };
    case 3:
      return { wait: chance.pick(WAITS) };
    case 4:
      return { unlock: chance.pick(connectors) };
    case 5:
      return { unplug: chance.pick(connectors) };
    case 6:
      return { plug: chance.pick(connectors) };
    case 7:
      return { fit: chance.pick(loads), ...placeOn(chance, circuit) };
    case 8:
      return { remove: chance.pick(loads) };
    case 9: {
      const { at, ...loop } = placeOn(chance, circuit);
      return { move: chance.pick(loads), to: at, ...loop };
    }
    case 10:
    case 11:
      return randomRead(chance, circuit);
    case 12: {
      const outcomes = chance.pick([
        { none: '*', stored: '*', present: '*' },
        { present: '*', else: '*' },
        { none: '*' },
      ]);
      return { 'read-codes': chance.pick(monitors), ...(chance.happens(0.5) ? { outcomes } : {}) };
    }
    case 13:
      return { 'clear-codes': chance.pick(monitors) };
    case 14: {
      const outcomes = chance.pick([{ ok: '*', defect: '*' }, { defect: '*' }, { ok: '*', else: '*' }]);
      return {
        inspect: chance.pick(['Look for corrosion.', `Look at ${chance.pick(handled)}, for corrosion.`]),
        ...handsAt(chance, [chance.pick(handled)]),
        ...(chance.happens(0.3) ? { of: chance.pick(handled) } : {}),
        ...(chance.happens(0.6) ? { outcomes } : {}),
      };
    }
    case 15: {
      const at = [...new Set([chance.pick(handled), chance.pick(handled)])];
      return {
        do: chance.pick(['Take the cover off.', `Clean ${chance.pick(handled)}.`]),
        ...handsAt(chance, at),
        ...(chance.happens(0.3) ? { of: [chance.pick(handled)] } : {}),
      };
    }
    case 16:
      return {
        replace: chance.happens(0.7)
          ? chance.pick(handled)
          : [...new Set([chance.pick(handled), chance.pick(handled)])],
      };
    case 17:
      return { conclude: chance.pick(['none', ...handled]) };
    case 18:
      return { go: '*' };
    default:
      return {
        stop: chance.happens(0.3) ? said(chance, circuit) : 'It ends here.',
        leaves: leaves(chance, circuit, 0.3),
      };
  }
}

function leaves(chance: Chance, circuit: PlainCircuit, share: number): string[] {
  const nameable = [
    ...[circuit.sources, circuit.loads].flatMap((each) => Object.keys(each)),
    ...plainConnectors(circuit),
  ];
  return chance.some([...nameable, 'codes', 'repair'], share);
}

/** A sound course of work with everything in its order: complaint, make safe, substitute, put back, verify. */
function sensible(chance: Chance, circuit: PlainCircuit): Draft[] {
  const sources = Object.keys(circuit.sources);
  const monitors = monitorsIn(circuit);
  const loops = Object.keys(circuit.loops);
  const plug = (source: string): string => `${String(circuit.sources[source]?.['isolated-by'])}.end`;
  const dead = [
    { ignition: 'off' },
    ...sources.map((disconnect) => ({ disconnect })),
    { wait: '10 min' },
    ...sources
      .filter((source) => isHigh(circuit, source))
      .map((source) => ({ 'prove-dead': source, at: plug(source), with: 'meter', known: 'battery' })),
  ];
  const powered = [
    ...sources.map((reconnect) => ({
      reconnect,
      [isHigh(circuit, reconnect) ? 'danger' : 'warning']: 'Nobody in front of it.',
    })),
    { ignition: 'on' },
  ];
  const loop = chance.pick(loops);
  const passed = pathOf(circuit, loop).filter((id) => plainConnectors(circuit).includes(id));
  const connector = passed.length > 0 ? chance.pick(passed) : null;
  const load = chance.pick(Object.keys(circuit.loads));
  const at = `${connector ?? ''}.${chance.pick(['monitor', 'end'])}`;
  const fit = {
    fit: load,
    at,
    ...(connector !== null && through(circuit, connector).length > 1 ? { loop } : {}),
  };
  const goesOn = (bad: string): Draft =>
    chance.happens(0.5) ? { read: loop } : { read: loop, outcomes: { within: 'next', else: bad } };
  const way: Draft[] = [{ ignition: 'on' }, ...monitors.map((id) => ({ 'read-codes': id }))];
  if (chance.happens(0.6)) way.push(goesOn('give-up'));
  const opens = connector !== null && chance.happens(0.7);
  const repairs = chance.happens(0.4);
  if (opens || repairs) way.push(...dead);
  if (opens)
    way.push(
      ...chance.pick<Draft[]>([[{ unplug: connector }], [{ unlock: connector }, { unplug: connector }]]),
    );
  if (opens && chance.happens(0.5)) {
    way.push(fit);
    if (chance.happens(0.5)) way.push(...powered, goesOn('*'), ...dead);
    if (chance.happens(0.9)) way.push({ remove: load });
  }
  if (repairs) way.push({ replace: chance.pick(pathOf(circuit, loop)) });
  if (opens) way.push({ plug: connector });
  if (opens || repairs) way.push(...powered);
  const verify = loops.length > 1 ? { read: loops } : { read: loop };
  const decided = [
    { within: 'next', else: 'give-up' },
    ...(loops.length > 1 ? [] : [{ outside: 'give-up', else: 'next' }]),
  ];
  way.push({ ...verify, outcomes: chance.pick(decided) });
  for (const id of monitors) way.push({ 'clear-codes': id });
  way.push({ stop: 'Done.' });
  const left = ['codes', ...(opens || repairs ? ['repair'] : [])];
  way.push({ stop: 'Ask for help.', id: 'give-up', leaves: left });
  return way;
}

function spoil(chance: Chance, circuit: PlainCircuit, way: Draft[]): void {
  const at = chance.whole(0, way.length - 1);
  switch (chance.whole(0, 6)) {
    case 0:
    case 1:
      way.splice(at, 1);
      break;
    case 2:
      way.splice(at, 2, ...way.slice(at, at + 2).reverse());
      break;
    case 3:
      way.splice(chance.whole(0, way.length), 0, { ...way[at] });
      break;
    case 4:
      way[at] = {
        ...way[at],
        [chance.pick(['note', 'why', 'caution', 'warning', 'danger', 'danger'])]: said(chance, circuit),
      };
      break;
    default:
      way.splice(at, 0, randomStep(chance, circuit));
  }
}

/** Draws the targets that stand open, and gives ids to the steps that they name. */
function withTargets(chance: Chance, way: readonly Draft[]): PlainStep[] {
  const giveUp = way.findLastIndex((step) => step.id === 'give-up');
  const targeted = new Set<number>();
  const target = (from: number, open: unknown, needsStep: boolean): string => {
    if (open === 'next') return 'next';
    let to = chance.whole(0, way.length - 1);
    if (open === 'give-up' && giveUp >= 0) to = giveUp;
    else if (!needsStep && chance.happens(0.5)) return 'next';
    else if (chance.happens(0.75)) to = chance.whole(Math.min(from + 1, way.length - 1), way.length - 1);
    targeted.add(to);
    return `at-${to}`;
  };
  const steps = way.map((step, from): Draft => {
    const drawn = (open: unknown): unknown =>
      typeof open === 'object' && open !== null
        ? Object.fromEntries(Object.entries(open).map(([name, to]) => [name, drawn(to)]))
        : target(from, open, false);
    const { leaves: left, ...rest } = step;
    delete rest.id;
    return {
      ...rest,
      ...('go' in step ? { go: target(from, step.go, true) } : {}),
      ...('outcomes' in step ? { outcomes: drawn(step.outcomes) } : {}),
      ...(Array.isArray(left) && left.length > 0 ? { leaves: left } : {}),
    };
  });
  const named = steps.map((step, at) => (targeted.has(at) ? { ...step, id: `at-${at}` } : step));
  return named.flatMap((step) => (chance.happens(0.05) ? [{ section: 'A heading' }, step] : [step]));
}

/** A random procedure of at most 24 steps, the same for the same seed. */
export function randomProcedure(seed: number): PlainProcedure {
  const chance = chanceFrom(seed);
  const circuit = randomCircuit(chance);
  const way = chance.happens(0.8) ? sensible(chance, circuit) : [];
  const spoiled = way.length === 0 || chance.happens(0.6);
  for (const least = chance.whole(6, 18); way.length < Math.min(least, spoiled ? 18 : 6);)
    way.push(randomStep(chance, circuit));
  if (spoiled) for (let left = chance.whole(1, 8); left > 0; left -= 1) spoil(chance, circuit, way);
  while (spoiled && way.length > 20) way.splice(chance.whole(0, way.length - 1), 1);
  if (way.length === 0) way.push(randomStep(chance, circuit));
  const { connectors, parts } = circuit;
  const movable = [...Object.keys(parts), ...Object.keys(connectors), ...sidesIn(connectors)];
  return { ...circuit, steps: withWiggles(seed, 0.3, movable, withTargets(chance, way)) };
}

/** The same as the text of a file. */
export function randomText(seed: number): string {
  return stringify(randomProcedure(seed), { lineWidth: 0, aliasDuplicateObjects: false });
}
