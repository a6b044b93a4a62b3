import { stepGraph } from '../../server/src/paths/graph.ts';
import type { Finding } from '../../server/src/model/finding.ts';
import type {
  Action,
  Connector,
  Id,
  Loop,
  Mentioned,
  Outcome,
  Part,
  Procedure,
  Step,
  Written,
} from '../../server/src/model/procedure.ts';
import type { Resistance } from '../../server/src/model/resistance.ts';
import type { CardInput } from '../../server/src/card/model.ts';
import type { Span } from '../../server/src/quantity/span.ts';

/*
 * An invented job in an invented van: the driver front airbag of a Halden V4 has two stages on one control unit, and one
 * of them reads too high. Every verb occurs once at least. The figures are of the usual size, no more.
 */

export const exact = (value: number): Span => ({ least: value, nominal: value, most: value });
export const range = (least: number, most: number): Span => ({
  least,
  nominal: Number(((least + most) / 2).toPrecision(12)),
  most,
});

export function stated(least: number, most: number): Resistance {
  return { kind: 'stated', resistance: range(least, most) };
}

type Extras = Partial<Omit<Written, 'number' | 'path'>>;

const file = 'halden-v4-driver-airbag.procedure.yaml';

/** Things that are named by themselves. */
const things = (key: string, ...ids: readonly string[]): readonly Mentioned[] =>
  ids.map((id, index) => ({ id, members: [id], place: [key, index] }));

/** Numbers and places steps in the order in which they are written. */
export function numbered(list: readonly (Action & Extras)[]): readonly Step[] {
  return list.map((step, index) => ({
    ...step,
    number: index + 1,
    path: ['steps', index],
    index,
    file,
    calls: [],
  }));
}

/** Outcomes by name; the target is the number on the card. */
export function ways(targets: Readonly<Record<string, number | 'end'>>, of?: Id): readonly Outcome[] {
  return Object.entries(targets).map(([name, to]) => ({
    name: name as Outcome['name'],
    ...(of === undefined ? {} : { of }),
    target: to === 'end' ? to : to - 1,
    path: [],
  }));
}

const byId = <T extends { readonly id: Id }>(things: readonly T[]): ReadonlyMap<Id, T> =>
  new Map(things.map((thing) => [thing.id, thing]));

export function connector(id: Id, shortingBar: Connector['shortingBar'] = null): Connector {
  return {
    id,
    path: ['connectors', id],
    contact: range(0.002, 0.015),
    shortingBar,
    sides: ['monitor', 'end'],
    carries: [],
    withstands: null,
  };
}

export function part(id: Id, kind: Part['kind'], resistance: Part['resistance'], live = false): Part {
  const form = kind === 'initiator' || kind === 'resistor' || kind === 'lamp' ? 'end' : 'two-conductor';
  return {
    ...{ id, path: ['parts', id], kind, form, resistance, live },
    ...{ statedInert: false, noFire: null, voltage: null, draws: null, wiper: null, withstands: null },
  };
}

export function loop(
  id: Id,
  monitor: Id,
  path: readonly Id[],
  pins: Readonly<Record<Id, readonly [string, string]>>,
): Loop {
  return {
    id,
    path: ['loops', id],
    monitor,
    elements: path.map((element) => ({ kind: element in pins ? 'connector' : 'part', id: element })),
    complete: true,
    pins: new Map(Object.entries(pins)),
  };
}

const bar = (pins: readonly [string, string] | null): Connector['shortingBar'] => ({
  side: 'end',
  closes: 'unlocked',
  resistance: range(0.2, 0.4),
  pins,
});

const atStage = { connector: 'K30', side: 'monitor', loop: 'stage-1-loop' } as const;
const atColumn = { connector: 'K21', side: 'monitor', loop: 'stage-1-loop' } as const;

const steps = numbered([
  {
    section: 'Confirm the complaint',
    verb: 'do',
    text: 'Put the seat fully back and the steering wheel straight ahead.',
    at: 'nothing',
    of: [],
    note: 'The coupling has its full length only with the wheel straight ahead.',
  },
  { section: 'Confirm the complaint', verb: 'ignition', to: 'on' },
  {
    section: 'Confirm the complaint',
    verb: 'read-codes',
    monitor: 'control-unit',
    outcomes: ways({ none: 4, stored: 4, present: 4 }),
  },
  {
    section: 'Confirm the complaint',
    id: 'complaint',
    verb: 'read',
    loops: ['stage-1-loop', 'stage-2-loop'],
    expect: null,
    windows: [],
    outcomes: [
      ...ways({ within: 28 }),
      ...ways({ outside: 27 }, 'stage-2-loop'),
      ...ways({ below: 27, leak: 27 }, 'stage-1-loop'),
      ...ways({ else: 5 }),
    ],
    why: 'A fault that is not there now cannot be found by substitution.',
  },
  { section: 'Make safe', verb: 'ignition', to: 'off' },
  {
    section: 'Make safe',
    verb: 'disconnect',
    source: 'battery',
    connector: null,
    notice: 'The radio and the clock lose their settings.',
  },
  {
    section: 'Make safe',
    verb: 'wait',
    seconds: 180,
    danger: 'The control unit holds enough charge to fire both stages until this wait is over.',
    minutes: 3,
  },
  {
    section: 'Substitute at the stage',
    verb: 'unlock',
    connector: 'K30',
    note: 'Slide the yellow lock, do not lever it.',
    warning: 'Keep your head and your arms out of the way of the airbag.',
  },
  { section: 'Substitute at the stage', verb: 'unplug', connector: 'K30' },
  {
    section: 'Substitute at the stage',
    verb: 'inspect',
    text: 'Pins and sockets of K30: bent, loose, green or burnt',
    at: things('at', 'K30'),
    of: things('of', 'stage-1'),
    outcomes: ways({ ok: 11, defect: 24 }),
  },
  { section: 'Substitute at the stage', verb: 'fit', load: 'bench-lamp', at: atStage },
  {
    section: 'Substitute at the stage',
    verb: 'reconnect',
    source: 'battery',
    connector: null,
    warning: 'Nobody in front of the airbag while power comes back.',
  },
  { section: 'Substitute at the stage', verb: 'ignition', to: 'on' },
  {
    section: 'Substitute at the stage',
    id: 'lamp-at-stage',
    verb: 'read',
    loops: ['stage-1-loop'],
    expect: null,
    windows: [],
    outcomes: ways({ within: 21, else: 15 }),
    see: "maker's wiring diagram, sheet 12",
  },
  { section: 'Substitute one connector back', verb: 'ignition', to: 'off' },
  { section: 'Substitute one connector back', verb: 'disconnect', source: 'battery', connector: null },
  { section: 'Substitute one connector back', verb: 'wait', seconds: 180 },
  { section: 'Substitute one connector back', verb: 'move', load: 'bench-lamp', to: atColumn },
  { section: 'Substitute one connector back', verb: 'ignition', to: 'cycle' },
  {
    section: 'Substitute one connector back',
    verb: 'read',
    loops: ['stage-1-loop'],
    expect: range(2.4, 3.6),
    windows: [],
    outcomes: ways({ within: 22, below: 27, above: 23, open: 23 }),
  },
  { section: 'Repair', verb: 'conclude', what: things('conclude', 'stage-1') },
  { section: 'Repair', verb: 'conclude', what: things('conclude', 'coil-coupling', 'K30') },
  { section: 'Repair', verb: 'replace', what: things('replace', 'coil-coupling', 'K30') },
  { section: 'Repair', verb: 'remove', load: 'bench-lamp' },
  { section: 'Repair', verb: 'plug', connector: 'K30' },
  { section: 'Repair', verb: 'go', to: 3 },
  {
    section: 'Finish',
    verb: 'stop',
    text: 'The fault is not in the stage 1 loop between K30 and the control unit. Hand over to the diagnosis bench',
    leaves: ['K30', 'battery', 'bench-lamp', 'codes'],
  },
  { section: 'Finish', verb: 'conclude', what: 'none' },
  { section: 'Finish', verb: 'clear-codes', monitor: 'control-unit' },
]);

const pins = { K10: ['3', '4'], K21: ['1', '2'], K30: ['1', '2'] } as const;
const pins2 = { K10: ['5', '6'], K21: ['3', '4'], K30: ['3', '4'] } as const;

export const procedure: Procedure = {
  file,
  elsewhere: new Map(),
  assemblies: new Map(),
  routines: new Map(),
  regulated: new Map(),
  network: { elements: [], complete: true },
  waivers: [],
  title: 'Driver front airbag, stage 1 - loop resistance too high',
  isExample: false,
  appliesTo: 'Halden V4 parcel van, restraint training rig',
  revision: 'B',
  purpose: 'Find the part of the stage 1 loop that adds resistance.',
  requires: {
    training: ['restraint systems, level 2', 'pyrotechnic parts: storing and handling'],
    protective: ['eye protection', 'gloves'],
    information: ["maker's service information, chapter 88"],
  },
  ambient: { ...range(10, 35), assumed: false },
  entries: new Map(),
  sources: byId([
    {
      id: 'battery',
      path: ['sources', 'battery'],
      kind: 'battery',
      voltage: exact(12.6),
      feeds: ['control-unit'],
      feedsComplete: true,
      wait: 180,
      reserve: {
        capacitance: range(0.00544, 0.00816),
        chargedTo: exact(24),
        bleed: range(4465, 4935),
        safeBelow: exact(2),
      },
      resistance: 'unstated',
    },
  ]),
  monitors: byId([
    {
      id: 'control-unit',
      path: ['instruments', 'control-unit'],
      kind: 'monitor',
      range: range(0, 10),
      accuracy: { fraction: 0.03, constant: 0.1, digits: 0 },
      resolution: 0.01,
      testCurrent: exact(0.04),
      tooLow: { below: 1 },
      tooHigh: { above: 4.5 },
      leakBelow: 5000,
    },
  ]),
  multimeters: new Map(),
  loads: byId([
    {
      id: 'bench-lamp',
      path: ['loads', 'bench-lamp'],
      kind: 'lamp',
      resistance: stated(2.85, 3.15),
      opensShortingBar: false,
      withstands: null,
    },
    {
      id: 'load-plug',
      path: ['loads', 'load-plug'],
      kind: 'resistor',
      resistance: stated(2.178, 2.222),
      opensShortingBar: true,
      withstands: null,
    },
  ]),
  parts: byId([
    part('dash-harness', 'cable', {
      kind: 'copper-wire',
      wire: { squareMillimetres: 0.5 },
      length: exact(1.2),
      temperature: 'ambient',
    }),
    part('coil-coupling', 'rotary-coupling', stated(0.05, 0.15)),
    part('stage-1', 'initiator', stated(1.7, 2.3), true),
    part('stage-2', 'initiator', stated(1.7, 2.3), false),
  ]),
  connectors: byId([connector('K10'), connector('K21'), connector('K30', bar(null))]),
  loops: byId([
    loop(
      'stage-1-loop',
      'control-unit',
      ['K10', 'dash-harness', 'K21', 'coil-coupling', 'K30', 'stage-1'],
      pins,
    ),
    loop(
      'stage-2-loop',
      'control-unit',
      ['K10', 'dash-harness', 'K21', 'coil-coupling', 'K30', 'stage-2'],
      pins2,
    ),
  ]),
  steps,
};

export const remark: Finding = {
  rule: 'window-differs',
  severity: 'warning',
  stage: 'windows',
  message:
    'Two ways lead here with windows that differ by more than the last digit: 1.96..3.63 Ω and 2.01..3.70 Ω.',
  at: { file: procedure.file, path: ['steps', 13], part: 'value' },
  step: { file: procedure.file, path: ['steps', 13], number: 14, calls: [] },
  related: [],
  key: 'window-differs/lamp-at-stage/stage-1-loop',
};

export const input: CardInput = {
  procedure,
  graph: stepGraph(procedure),
  readings: [
    {
      index: 3,
      of: 'stage-1-loop',
      quantity: 'resistance',
      printed: '1.72..2.94 Ω',
      from: 'computed',
      nominal: '2.32 Ω',
      isOuter: false,
      elseIsWithin: false,
      rows: [],
    },
    {
      index: 3,
      of: 'stage-2-loop',
      quantity: 'resistance',
      printed: '1.72..2.94 Ω',
      from: 'computed',
      nominal: '2.32 Ω',
      isOuter: false,
      elseIsWithin: false,
      rows: [],
    },
    {
      index: 13,
      of: 'stage-1-loop',
      quantity: 'resistance',
      printed: '1.96..3.63 Ω',
      from: 'computed',
      nominal: '2.78 Ω',
      isOuter: false,
      elseIsWithin: false,
      rows: [],
    },
    {
      index: 19,
      of: 'stage-1-loop',
      quantity: 'resistance',
      printed: '2.40..3.60 Ω',
      from: 'expect',
      nominal: null,
      isOuter: false,
      elseIsWithin: false,
      rows: [],
    },
  ],
  proofs: [],
  codes: [
    {
      index: 12,
      codes: [
        { loop: 'stage-2-loop', code: 'open', certain: true },
        { loop: 'stage-1-loop', code: 'too-high', certain: false },
      ],
    },
  ],
  left: [
    {
      index: 26,
      left: [
        { id: 'battery', as: 'disconnected', always: false },
        { id: 'K30', as: 'unplugged', always: true },
        { id: 'bench-lamp', as: 'fitted', always: false },
        { id: 'control-unit', as: 'codes', always: true },
      ],
    },
  ],
  findings: [remark],
  owed: [{ source: 'battery', seconds: 180 }],
  stamp: {
    sha256: '9f2c4e0b7d1a6538c0ffee1234567890abcdef0123456789fedcba9876543210',
    version: '0.1.0',
    date: '2031-04-17',
    file: 'halden-v4-driver-airbag.procedure.yaml',
  },
  draft: false,
  isUnfinished: false,
};
