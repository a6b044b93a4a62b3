import { idPattern } from '../format/ids.ts';
import { isSectionName } from '../format/words.ts';
import type { Kind, KindSection, Section, Verb } from '../format/words.ts';
import type { Id, Procedure, Quantity } from '../model/procedure.ts';
import { sidesOf, whereWrongLeads } from './completion-ids.ts';
import type { KnownIds } from './completion-ids.ts';
import { idsOfKind } from './completion-kinds.ts';
import { choice, place, twoOutcomes } from './completion-places.ts';

/** What is inserted for a verb: its usual keys, a line each, with places to fill in. */
export function verbSnippet(verb: Verb | 'section', procedure: Procedure, ids: KnownIds): readonly string[] {
  const { sources, connectors, loads, loops, parts, steps } = ids;
  const { monitors, multimeters, batteries, highVoltage, unplugged } = idsOfKind(procedure, ids);
  const [connector = 'K30'] = connectors;
  const side = choice(2, sidesOf(procedure, ids), `${connector}.monitor`);
  const hands = `at: ${choice(2, [...connectors, 'nothing'], connector)}`;
  switch (verb) {
    case 'section':
      return ['section: ${1:What follows}'];
    case 'ignition':
      return ['ignition: ${1|on,off,cycle|}'];
    case 'disconnect':
      return [`disconnect: ${choice(1, sources, 'battery')}`];
    case 'reconnect':
      return [
        `reconnect: ${choice(1, sources, 'battery')}`,
        'warning: ${2:Who must stay clear while power comes back.}',
      ];
    case 'wait':
      return ['wait: ${1:3 min}'];
    case 'prove-dead':
      return [
        `prove-dead: ${choice(1, highVoltage, 'traction')}`,
        `at: ${side}`,
        `with: ${choice(3, multimeters, 'hand-meter')}`,
        `known: ${choice(4, batteries, 'battery')}`,
      ];
    case 'unlock':
    case 'unplug':
    case 'plug':
      return [`${verb}: ${choice(1, unplugged, connector)}`];
    case 'fit':
      return [`fit: ${choice(1, loads, 'load')}`, `at: ${side}`];
    case 'move':
      return [`move: ${choice(1, loads, 'load')}`, `to: ${side}`];
    case 'remove':
      return [`remove: ${choice(1, loads, 'load')}`];
    case 'read':
      return [`read: ${choice(1, loops, 'loop')}`, ...decided(2, whereWrongLeads(procedure, ids))];
    case 'measure':
      return [
        `measure: ${choice(1, quantitiesOf(procedure, multimeters[0]), 'resistance')}`,
        `across: ${side}`,
        `with: ${choice(3, multimeters, 'hand-meter')}`,
        ...decided(4, whereWrongLeads(procedure, ids)),
      ];
    case 'wiggle': {
      const moved = `wiggle: ${choice(1, [...parts, ...connectors], 'part')}`;
      const decides = (at: number): readonly string[] => decided(at, whereWrongLeads(procedure, ids));
      if (loops.length > 0)
        return [moved, `watch: ${choice(2, loops, 'loop')}`, 'for: ${3:30 s}', ...decides(4)];
      return [
        moved,
        `quantity: ${choice(3, quantitiesOf(procedure, multimeters[0]), 'resistance')}`,
        `across: ${side}`,
        `with: ${choice(4, multimeters, 'hand-meter')}`,
        'for: ${5:30 s}',
        ...decides(6),
      ];
    }
    case 'read-codes':
    case 'clear-codes':
      return [`${verb}: ${choice(1, monitors, 'monitor')}`];
    case 'inspect':
      return ['inspect: ${1:What is looked at, as a question?}', hands];
    case 'do':
      return ['do: ${1:What is done.}', hands];
    case 'replace':
    case 'conclude':
      return [`${verb}: ${choice(1, [...parts, ...connectors, ...monitors], 'part')}`];
    case 'go':
      return [`go: ${choice(1, steps, 'step-id')}`];
    case 'run':
      return runSnippet(procedure, ids);
    case 'stop':
      return ['stop: ${1:Why it ends here.}'];
  }
}

/** Where no step has an id there is nowhere to lead what is wrong: the reading is only written down. */
function decided(at: number, steps: readonly Id[]): readonly string[] {
  return steps.length === 0 ? [] : [`outcomes: ${twoOutcomes('within', 'else', at, steps)}`];
}

/** What an instrument measures comes first. */
function quantitiesOf({ multimeters }: Procedure, meter: Id = ''): readonly Quantity[] {
  const isVoltmeter = multimeters.get(meter)?.resistance === null;
  return isVoltmeter ? ['voltage', 'resistance'] : ['resistance', 'voltage'];
}

/** The first routine, with all that it needs. */
function runSnippet(procedure: Procedure, ids: KnownIds): readonly string[] {
  const run = `run: ${choice(1, ids.routines, 'routine')}`;
  const needs = [...(procedure.routines.get(ids.routines[0] ?? '')?.needs ?? [])];
  if (needs.length === 0) return [run];
  const given = needs.map(([need, kind], at) => {
    const fitting = kind === 'side' ? sidesOf(procedure, ids) : ids[`${kind}s`];
    return `${need}: ${choice(at + 2, fitting, need)}`;
  });
  return [run, `given: { ${given.join(', ')} }`];
}

/** A new entry: an id that is free, and the keys that it needs. */
export interface NewEntry {
  readonly id: string;
  /** A map in braces with places, of which the first number is 2: 1 is that of the id. */
  readonly body: string;
}

type Body = readonly [id: string, body: string];

/** null: nothing is offered, since it cannot stand by itself. */
type Bodies = Readonly<Record<string, Body | null>>;
type BodiesByKind<S extends KindSection> = Readonly<Record<Kind<S>, Body | null>>;

/** New entries of a section, by what they are called in a list. */
export function newEntries(
  section: string,
  procedure: Procedure,
  ids: KnownIds,
): ReadonlyMap<string, NewEntry> {
  if (!isSectionName(section)) return new Map();
  const taken = new Set(Object.values(ids).flat());
  const offered = new Map<string, NewEntry>();
  for (const [label, written] of Object.entries(bodiesOf(section, procedure, ids))) {
    if (written === null) continue;
    const [id, body] = written;
    offered.set(label, { id: freeId(id, taken), body });
  }
  return offered;
}

function bodiesOf(section: Section, procedure: Procedure, ids: KnownIds): Bodies {
  switch (section) {
    case 'sources': {
      const fed = choice(3, idsOfKind(procedure, ids).monitors, 'control-unit');
      const isolator = choice(3, ids.connectors, 'S1');
      return {
        battery: ['battery', `{ kind: battery, voltage: \${2:12.6 V}, feeds: [${fed}], wait: \${4:3 min} }`],
        'high-voltage': [
          'traction',
          `{ kind: high-voltage, voltage: \${2:400 V}, isolated-by: ${isolator}, wait: \${4:5 min} }`,
        ],
        // It has to stand in the network too.
        regulated: null,
      } satisfies BodiesByKind<'sources'>;
    }
    case 'instruments':
      return {
        monitor: [
          'control-unit',
          '{ kind: monitor, range: ${2:0..10 Ω}, accuracy: ${3:3 % + 0.1 Ω}, resolution: ${4:0.01 Ω} }',
        ],
        multimeter: [
          'hand-meter',
          '{ kind: multimeter, voltage: { range: ${2:0..600 V}, accuracy: ${3:0.5 % + 2 digits}, resolution: ${4:0.1 V}, input: ${5:10 MΩ} } }',
        ],
      } satisfies BodiesByKind<'instruments'>;
    case 'loads':
      return {
        lamp: ['bench-lamp', '{ kind: lamp, resistance: ${2:3.0 Ω ± 5 %} }'],
        resistor: ['load-plug', '{ kind: resistor, resistance: ${2:2.2 Ω ± 1 %} }'],
      } satisfies BodiesByKind<'loads'>;
    case 'parts': {
      const entry = choice(5, ids.entries, '15..35 °C');
      return {
        cable: ['harness', '{ kind: cable, wire: ${2:0.5 mm²}, length: ${3:1.2 m} }'],
        'rotary-coupling': ['coil-coupling', '{ kind: rotary-coupling, resistance: ${2:0.05..0.15 Ω} }'],
        series: ['filter', '{ kind: series, resistance: ${2:0.05..0.1 Ω} }'],
        initiator: ['stage-1', '{ kind: initiator, resistance: ${2:1.7..2.3 Ω}, live: ${3|true,false|} }'],
        'hv-section': [
          'inverter-input',
          '{ kind: hv-section, voltage: ${2:400 V}, resistance: ${3:100 kΩ ± 5 %}, live: true }',
        ],
        resistor: ['end-resistor', '{ kind: resistor, resistance: ${2:120 Ω ± 1 %} }'],
        heater: ['heater', '{ kind: heater, resistance: ${2:4.0 Ω ± 10 %} }'],
        switch: ['switch', '{ kind: switch, resistance: ${2:5..50 mΩ} }'],
        coil: ['coil', '{ kind: coil, resistance: ${2:12 Ω ± 5 %} }'],
        thermistor: [
          'temperature-sensor',
          `{ kind: thermistor, r25: \${2:10 kΩ}, beta: \${3:3380 K}, tolerance: \${4:3 %}, temperature: ${entry} }`,
        ],
        rtd: [
          'temperature-sensor',
          `{ kind: rtd, r0: \${2:100 Ω}, class: \${3|AA,A,B|}, temperature: ${entry} }`,
        ],
        lamp: ['lamp', '{ kind: lamp, resistance: ${2:3.0 Ω ± 5 %} }'],
        consumer: ['unit', '{ kind: consumer, draws: ${2:7 mA ± 1 mA}, always: true }'],
        potentiometer: [
          'pedal-sensor',
          '{ kind: potentiometer, track: ${2:1 kΩ ± 20 %}, wiper: ${3:10..90 %} }',
        ],
        fuse: ['fuse', '{ kind: fuse, rated: ${2:10 A} }'],
      } satisfies BodiesByKind<'parts'>;
    }
    case 'entries':
      return {
        entry: [
          'coolant',
          '{ ask: ${2:Coolant temperature at the sensor}, range: ${3:15..90 °C}, accuracy: ${4:1 °C} }',
        ],
      };
    case 'connectors':
      return {
        connector: ['K30', '{ contact: ${2:2..15 mΩ} }'],
        'connector with shorting bar': [
          'K30',
          '{ contact: ${2:2..15 mΩ}, shorting-bar: { side: ${3|end,monitor|}, closes: ${4|unlocked,unplugged|}, resistance: ${5:0.2..0.4 Ω} } }',
        ],
      };
    case 'assemblies':
      return {
        assembly: ['module', `[${choice(2, ids.parts, 'stage-1')}, ${choice(3, ids.connectors, 'K30')}]`],
      };
    case 'loops':
      return { loop: ['loop', loopBody(procedure, ids)] };
  }
}

/** A path with what stands in the file: first what is in no other loop. */
function loopBody(procedure: Procedure, ids: KnownIds): string {
  const { parts, loops } = procedure;
  const taken = new Set([...loops.values()].flatMap(({ elements }) => elements.map(({ id }) => id)));
  const freeFirst = (some: readonly string[]): readonly string[] =>
    some.toSorted((a, b) => Number(taken.has(a)) - Number(taken.has(b)));
  const ends = [...parts.values()].filter(({ form }) => form === 'end').map(({ id }) => id);
  const [end = 'stage-1'] = freeFirst(ends);
  const monitor = choice(2, idsOfKind(procedure, ids).monitors, 'control-unit');
  return `{ path: [${monitor}, ${choice(3, freeFirst(ids.connectors), 'K30')}, ${place(4, end)}] }`;
}

/** `K30` becomes `K31`, and `filter` becomes `filter-2`, where the id is taken. */
function freeId(id: string, taken: ReadonlySet<string>): string {
  const [, stem = id, digits] = /^(.*?)(\d+)$/.exec(id) ?? [];
  for (let number = Number(digits ?? 1); ; number++) {
    const next = digits === undefined ? (number === 1 ? id : `${stem}-${number}`) : `${stem}${number}`;
    if (!taken.has(next) && idPattern.test(next)) return next;
  }
}
