import type { Id, Part, PartKind, Procedure } from '../../model/procedure.ts';
import { isHighVoltage } from '../../model/source-kinds.ts';

/*
 * Names in a sentence. Ids are found in any case, with spaces, hyphens or underscores or without; and what people call
 * such a thing counts like its id where the file has one: `airbag` of an initiator, `harness` of a cable. English.
 */

/** What a name in a sentence can mean. */
export interface Meaning {
  /** `id`: an id of the file. `people`: what people call things of a kind. `supply`: a source that no file has. */
  readonly as: 'id' | 'people' | 'supply';
  /** The things that are meant, in the order of the file; of a `supply` none. */
  readonly ids: readonly Id[];
}

/** A piece of a text: a name or a word, or null where a mark ends a clause. */
export type Piece = { readonly spelled: string; readonly meaning: Meaning | null } | null;

/** What breaks a text down into pieces, names first. */
export type Pieces = (text: string) => readonly Piece[];

interface Node {
  readonly next: Map<string, Node>;
  meaning: Meaning | null;
}

/** An id of more runs of letters and digits than this is found as it is written only. */
const mostRuns = 24;

export function piecesBy(procedure: Procedure): Pieces {
  const { connectors, parts, monitors, assemblies, sources, loads } = procedure;
  const things = [connectors, parts, monitors, assemblies, sources, loads].flatMap((one) => [...one.keys()]);
  const exact = new Map<string, Meaning | null>();
  // A loop or a step may carry the name of a thing in its own: as it is written it is no name of that.
  for (const id of procedure.loops.keys()) exact.set(id, null);
  for (const { id } of procedure.steps) if (id !== undefined) exact.set(id, null);
  for (const id of things) exact.set(id, { as: 'id', ids: [id] });
  const root: Node = { next: new Map(), meaning: null };
  for (const [names, ids] of peoplesNames(procedure))
    for (const name of names.split(',')) addName(root, name.trim(), 'people', ids);
  for (const name of namesOfOthers) addName(root, name, 'people', []);
  if (sources.size > 0) for (const name of supplies) addName(root, name, 'supply', []);
  for (const id of things) addName(root, id, 'id', [id]);
  return (text) => broken(text, exact, root);
}

function addName(root: Node, name: string, as: Meaning['as'], ids: readonly Id[]): void {
  const runs = runsOf(name);
  if (runs.length > mostRuns) return;
  let node = root;
  for (const run of runs) {
    const next: Node = node.next.get(run) ?? { next: new Map(), meaning: null };
    node.next.set(run, next);
    node = next;
  }
  const known = node.meaning;
  node.meaning = { as, ids: known?.as === as ? [...new Set([...known.ids, ...ids])] : ids };
}

function runsOf(name: string): readonly string[] {
  return name.toLowerCase().match(/[a-z]+|\d+/g) ?? [];
}

const hidden = /[\u00AD\u200B-\u200D\u2060\uFEFF]/g;
const wordOrMark = /[\p{L}\p{N}]+(?:['’_-][\p{L}\p{N}]+)*|\n|[^\s\p{L}\p{N}]/gu;
const isWord = /^[\p{L}\p{N}]/u;
/** Marks that end no clause. */
const inside = new Set(['-', '_', '`', "'", '’', '*', '%', '°', '±', '+', '=', '~', '&', '#']);

function broken(written: string, exact: ReadonlyMap<string, Meaning | null>, root: Node): readonly Piece[] {
  const text = written.normalize('NFKC').replace(hidden, '');
  const pieces: Piece[] = [];
  let end = 0;
  for (const { 0: spelled, index } of text.matchAll(wordOrMark)) {
    if (index < end) continue;
    if (!isWord.test(spelled)) {
      // A point between letters or digits stands in `K30.monitor` or 1.5.
      const isInName = spelled === '.' && isWord.test(text.charAt(index + 1)) && index > 0;
      if (!inside.has(spelled) && !isInName) pieces.push(null);
      continue;
    }
    const known = exact.get(spelled);
    if (known !== undefined) pieces.push({ spelled, meaning: known });
    else {
      const found = nameAt(text, index, root);
      pieces.push(
        found === null
          ? { spelled, meaning: null }
          : { spelled: found.spelled, meaning: told(found.meaning) },
      );
      if (found !== null) end = found.end;
    }
  }
  return pieces;
}

function told(meaning: Meaning): Meaning | null {
  return meaning.ids.length === 0 && meaning.as !== 'supply' ? null : meaning;
}

interface Found {
  readonly spelled: string;
  readonly meaning: Meaning;
  readonly end: number;
}

/** The longest name that starts here and ends with a word. */
function nameAt(text: string, from: number, root: Node): Found | null {
  let node: Node | undefined = root;
  let at = from;
  let found: Found | null = null;
  for (;;) {
    const run = /^(?:[a-z]+|\d+)/i.exec(text.slice(at, at + longestRun))?.[0];
    if (run === undefined) return found;
    node = node.next.get(run.toLowerCase());
    if (node === undefined) return found;
    at += run.length;
    if (node.meaning !== null && !isWord.test(text.charAt(at)))
      found = { spelled: text.slice(from, at), meaning: node.meaning, end: at };
    at += /^[-_\s]{0,2}/.exec(text.slice(at, at + 2))?.[0].length ?? 0;
  }
}

const longestRun = 200;

/** What people call things, and the ids of such things in the file. Common practice, no source. */
function peoplesNames(procedure: Procedure): readonly (readonly [names: string, ids: readonly Id[]])[] {
  const { connectors, loads, monitors, sources } = procedure;
  const parts = [...procedure.parts.values()];
  const of = (...kinds: readonly PartKind[]): readonly Id[] =>
    parts.filter(({ kind }: Part) => kinds.includes(kind)).map(({ id }) => id);
  const lamps = [...loads.values()].filter(({ kind }) => kind === 'lamp').map(({ id }) => id);
  const highVoltage = [...sources.values()].filter(isHighVoltage).map(({ id }) => id);
  const batteries = [...sources.values()].filter(({ kind }) => kind === 'battery').map(({ id }) => id);
  const everyConnector = [...connectors.keys()];
  const named: [string, readonly Id[]][] = [
    [
      'airbag, airbags, air bag, initiator, initiators, squib, squibs, igniter, igniters, ignitor, stage, stages, ' +
        'pretensioner, tensioner, inflator, gas generator, airbag module, airbag lead, airbag connector, module, modules',
      of('initiator'),
    ],
    [
      'connector, connectors, coupler, socket, pin, pins, terminal, terminals, contact, contacts',
      everyConnector,
    ],
    [
      'harness, harnesses, wire, wires, wiring, cable, cables, lead, leads, loom',
      [...of('cable'), ...everyConnector],
    ],
    ['control unit, control units, ecu', [...monitors.keys()]],
    ['sensor, sensors', of('thermistor', 'rtd')],
    ['coil, relay, solenoid', of('coil')],
    ['lamp, bulb, lamps, bulbs', [...of('lamp'), ...lamps]],
    ['heater', of('heater')],
    ['resistor, terminating resistor', of('resistor')],
    ['coupling, rotary coupling, clock spring', of('rotary-coupling')],
    ['inverter, converter, capacitor', of('hv-section')],
    ['battery, batteries, accumulator', batteries],
    ['high voltage, traction battery, high voltage battery', highVoltage],
  ];
  return named.filter(([, ids]) => ids.length > 0);
}

/** These hold the name of such a thing and are another: nothing of the file. */
const namesOfOthers: readonly string[] = [
  'airbag lamp',
  'airbag light',
  'airbag warning lamp',
  'airbag warning light',
  'battery lamp',
  'battery light',
  'stage of the work',
];

/** Sources that people bring along, and what takes one away without being in the file. */
const supplies: readonly string[] = [
  'memory keeper',
  'memory saver',
  'charger',
  'battery charger',
  'jump starter',
  'booster',
  'power supply',
  'power pack',
  'lighter socket',
  'cigarette lighter',
  '12 V socket',
  'fuse',
  'fuses',
];
