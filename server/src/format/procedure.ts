import * as z from 'zod';
import * as circuit from './circuit.ts';
import * as parts from './parts.ts';
import { idPattern } from './ids.ts';
import * as instruments from './instruments.ts';
import * as sources from './sources.ts';
import * as steps from './steps.ts';
import { filled, group, id, ids, keyword, list, quantity, text, yes } from './values.ts';
import { neededSections } from './words.ts';
import type { Section } from './words.ts';

/* The whole file, composed of the definitions of its entries. */

const format = group(z.literal(1), '`1`', 'The version of the file format.', 1);

const uses = list(
  'a list of file names',
  'Parts files whose parts, connectors, routines and so on are used here.',
  ['shared/restraint.parts.yaml'],
).optional();

const head = {
  format,
  uses,
  title: text(
    'What the procedure is for, in one line.',
    'Driver front airbag, stage 1 - loop resistance too high',
  ),
  example: yes(
    'The values of this file are invented. A card of it is a draft marked EXAMPLE VALUES. Delete this key once every value is the one that the manufacturer gives.',
  ).optional(),
  'applies-to': text(
    'What the procedure applies to.',
    'Halden V4 parcel van, restraint training rig',
  ).optional(),
  revision: text('The revision of the procedure.', 'B').optional(),
  purpose: text(
    'What the procedure finds or proves.',
    'Find the part of the loop that adds resistance.',
  ).optional(),
  requires: group(
    filled(
      z.strictObject({
        training: list('a list of texts', 'The training that is needed.', ['restraint systems']).optional(),
        protective: list('a list of texts', 'The protective equipment that is needed.', [
          'eye protection',
        ]).optional(),
        information: list('a list of texts', 'The documents that are needed.', [
          "maker's service information",
        ]).optional(),
      }),
    ),
    '`training`, `protective` or `information`',
    'What must be at hand before the work starts.',
    { training: ['restraint systems'], protective: ['eye protection'] },
  ).optional(),
  conditions: group(
    filled(
      z.strictObject({
        ambient: quantity(
          'a temperature with its spread',
          'The temperature of the place. Not stated: 15..35 °C.',
          '10..35 °C',
        ).optional(),
      }),
    ),
    '`ambient`',
    'The conditions under which the readings hold.',
    { ambient: '10..35 °C' },
  ).optional(),
};

const entries = <T extends z.ZodType>(schema: T) => filled(z.record(z.string().regex(idPattern), schema));

const described = {
  sources: ['sources by id', 'Where energy comes from, and how it is taken away.', 'battery'],
  entries: [
    'entries by id',
    'Temperatures that are measured and entered before a reading that depends on them.',
    'coolant',
  ],
  instruments: ['instruments by id', 'What reads the loops.', 'control-unit'],
  loads: ['loads by id', "What is put in a part's place.", 'bench-lamp'],
  parts: ['parts by id', 'What the loops are made of.', 'stage-1'],
  connectors: ['connectors by id', 'Where the loops can be taken apart.', 'K30'],
  assemblies: [
    'assemblies by id',
    'Several things of the file that are one thing in the hand.',
    'driver-module',
  ],
  loops: ['loops by id', 'The circuits, from the monitor that reads them out to their end.', 'stage-1-loop'],
} as const satisfies Readonly<Record<Section, readonly string[]>>;

const examples = {
  sources: { battery: { kind: 'battery', voltage: '12.6 V', feeds: ['control-unit'], wait: '3 min' } },
  entries: { coolant: { ask: 'Coolant temperature at the sensor', range: '15..90 °C', accuracy: '1 °C' } },
  instruments: {
    'control-unit': { kind: 'monitor', range: '0..10 Ω', accuracy: '3 % + 0.1 Ω', resolution: '0.01 Ω' },
  },
  loads: { 'bench-lamp': { kind: 'lamp', resistance: '3.0 Ω ± 5 %' } },
  parts: { 'stage-1': { kind: 'initiator', resistance: '1.7..2.3 Ω', live: true } },
  connectors: { K30: { contact: '2..15 mΩ' } },
  assemblies: { 'driver-module': ['stage-1', 'K30'] },
  loops: { 'stage-1-loop': { path: ['control-unit', 'K30', 'stage-1'] } },
};

function section<T extends z.ZodType>(name: Section, schema: T) {
  const [expected, description] = described[name];
  return group(entries(schema), expected, description, examples[name]);
}

/** What a routine can be given: an id of one of these, or a side of a connector. */
export const needKinds = ['source', 'instrument', 'load', 'part', 'connector', 'side', 'loop'] as const;
export type NeedKind = (typeof needKinds)[number];

const needs = group(
  filled(
    z.record(
      z.string().regex(idPattern),
      keyword(needKinds, 'What is given in its place: an id of this kind, or a side of a connector.', 'side'),
    ),
  ),
  'names and what each stands for',
  'What a call has to give. The names stand in the steps below for what is given.',
  { where: 'side', load: 'load' },
).optional();

/** The definitions of a table, of which there is at least one. */
function all<T>(table: Readonly<Record<string, T>>): [T, ...T[]] {
  return Object.values(table) as [T, ...T[]];
}

function stepList<T extends z.ZodType>(schema: T) {
  return group(
    z.array(schema).min(1),
    'a list of steps',
    'What is done, in order. Each item is one verb, or a `section` heading.',
    [{ ignition: 'off' }, { disconnect: 'battery' }, { wait: '3 min' }],
  );
}

export const step = z.union([...all(steps.stepDefinitions), steps.section]);

/** Steps that are written once and run from several places. */
const routine = z
  .strictObject({ needs, steps: stepList(step) })
  .meta({ id: 'routine', description: 'Steps that are written once and run from several places.' });

/** The same with its steps left open. */
export const routineShell = z.strictObject({ needs, steps: stepList(z.unknown()) });

const routines = <T extends z.ZodType>(schema: T) =>
  group(
    entries(schema),
    'routines by id',
    'Steps that are written once and run from several places with `run`.',
    { 'make-safe': { steps: [{ ignition: 'off' }, { disconnect: 'battery' }, { wait: '3 min' }] } },
  ).optional();

const assembly = ids('a list of ids', 'The parts and connectors that it is made of.', ['stage-1', 'K30']);

/** A finding that the author takes upon himself. */
export const waiver = z
  .strictObject({
    rule: text('The rule whose finding is waived, as `ohmwright rules` lists it.', 'repeats'),
    step: id(
      'a step id',
      'The step that the finding is about. Without it: findings about no step.',
      'final',
    ).optional(),
    routine: id('a routine id', 'The routine that the step stands in.', 'make-safe').optional(),
    reason: text('Why it may stay. It is printed on the card.', 'The class reads it twice on purpose.'),
  })
  .meta({ id: 'waiver', description: 'A finding that the author takes upon himself.' });

const waivers = <T extends z.ZodType>(schema: T) =>
  group(
    z.array(schema).min(1),
    'a list of waivers',
    'Findings that the author takes upon himself, each with the reason. Rules that guard live stages cannot be waived.',
    [{ rule: 'repeats', step: 'final', reason: 'The class reads it twice on purpose.' }],
  ).optional();

const part = z.union(all(parts.partDefinitions));

const network = <T extends z.ZodType>(schema: T) =>
  group(
    z.array(schema).min(1),
    'a list of elements',
    'Circuits that are not loops: two-terminal elements between named nodes. `ground` is a node of that name.',
    [
      { source: 'battery', between: ['plus', 'ground'] },
      { connector: 'K4', pin: 1, between: ['plus', 'feed'] },
      { part: 'pump', between: ['feed', 'ground'] },
    ],
  ).optional();

const networkElement = z.union([circuit.networkPart, circuit.networkConnector, circuit.networkSource]);

const whole = {
  sources: section('sources', z.discriminatedUnion('kind', all(sources.sourceDefinitions))),
  entries: section('entries', circuit.entry).optional(),
  instruments: section('instruments', z.discriminatedUnion('kind', all(instruments.instrumentDefinitions))),
  loads: section('loads', z.union(all(parts.loadDefinitions))).optional(),
  parts: section('parts', part),
  connectors: section('connectors', circuit.connector).optional(),
  assemblies: section('assemblies', assembly).optional(),
  loops: section('loops', circuit.loop).optional(),
  routines: routines(routine),
};

const usable = {
  ...whole,
  sources: whole.sources.optional(),
  instruments: whole.instruments.optional(),
  parts: whole.parts.optional(),
};

/** A whole procedure file. What it needs may also stand in the parts files that it uses. */
export const procedure = z
  .strictObject({
    ...head,
    ...usable,
    network: network(networkElement),
    waivers: waivers(waiver),
    steps: stepList(step),
  })
  .refine(
    (file) =>
      file.uses !== undefined ||
      (neededSections.every((name) => file[name] !== undefined) &&
        (file.loops !== undefined || file.network !== undefined)),
  );

/** A parts file: definitions that several procedures share. */
export const partsFile = z.strictObject({
  format,
  title: text('What the parts belong to, in one line.', 'Halden V4, restraint system').optional(),
  uses,
  ...usable,
});

/*
 * The same with the entries left open: they are checked one by one, so that one mistake gives one message.
 */

const open = {
  sources: section('sources', z.unknown()),
  entries: section('entries', z.unknown()).optional(),
  instruments: section('instruments', z.unknown()),
  loads: section('loads', z.unknown()).optional(),
  parts: section('parts', z.unknown()),
  connectors: section('connectors', z.unknown()).optional(),
  assemblies: whole.assemblies,
  loops: section('loops', z.unknown()).optional(),
  routines: routines(z.unknown()),
};

/** A procedure together with the parts files that it uses. */
export const shell = z.strictObject({
  ...head,
  ...open,
  network: network(z.unknown()),
  waivers: waivers(z.unknown()),
  steps: stepList(z.unknown()),
});

/** A parts file by itself. */
export const partsShell = z.strictObject({
  ...partsFile.shape,
  ...open,
  sources: open.sources.optional(),
  instruments: open.instruments.optional(),
  parts: open.parts.optional(),
});
