import { stringify } from 'yaml';
import { chanceFrom } from './chance.ts';
import type { Chance } from './chance.ts';
import { nameOfNode } from './node-names.ts';
import type { PlainStep } from './plain-procedure.ts';
import { randomProcedure } from './random-procedure.ts';
import { sidesIn, withWiggles } from './with-wiggles.ts';
import { through } from './random-circuit.ts';

/* A random procedure with a network beside its loops, and steps that measure and take apart either. The same for the same seed. */

type Plain = Record<string, unknown>;

const expectedOhms = ['0.1..900 Ω', '0..3.2 Ω', '1.5..2.9 Ω', 'below 5 Ω', 'above 1 Ω', 'open', '100..150 Ω'];
const expectedVolts = ['0.1..20 V', 'below 0.1 V', '11..14 V', '0..6 V', 'above 4 V'];

const forms: readonly (readonly string[])[] = [
  ['within', 'else'],
  ['within', 'outside'],
  ['within', 'below', 'above', 'open'],
  ['within', 'open'],
  ['within', 'above', 'open'],
  ['else'],
  ['outside', 'else'],
  ['below', 'above', 'open', 'else'],
];

const meters = ['ohms', 'coarse'];

const plainParts: readonly Plain[] = [
  { kind: 'resistor', resistance: '2.0..2.4 Ω' },
  { kind: 'resistor', resistance: '118..120..130 Ω' },
  { kind: 'resistor', resistance: '680 Ω', series: 'E12' },
  { kind: 'resistor', resistance: '4.7 kΩ', series: 'E24' },
  { kind: 'cable', resistance: '20..30 mΩ' },
  { kind: 'thermistor', r25: '2.2 kΩ', beta: '3400 K', tolerance: '3 %', temperature: '20..40 °C' },
  { kind: 'rtd', r0: '100 Ω', class: 'B', temperature: '-50..150 °C' },
];

function elementsOf(
  chance: Chance,
  nodes: readonly string[],
): { parts: Record<string, Plain>; network: Plain[] } {
  const parts: Record<string, Plain> = {};
  const network: Plain[] = [];
  const pair = (): [string, string] => {
    const one = chance.pick(nodes);
    return [one, chance.pick(nodes.filter((node) => node !== one))];
  };
  for (let at = 1; at <= chance.whole(2, 4); at += 1) {
    const id = `net-${at}`;
    parts[id] = chance.happens(0.25)
      ? { kind: 'initiator', resistance: '1.7..2.3 Ω', live: true }
      : chance.pick(plainParts);
    network.push({ part: id, between: pair() });
  }
  for (const connector of ['N1', 'N2'])
    for (let pin = 1; pin <= chance.whole(1, 2); pin += 1) network.push({ connector, pin, between: pair() });
  for (const element of network) {
    if (!chance.happens(0.15)) continue;
    const before = element.between;
    element.between = atTerminal(chance, network, element);
    if (!standBetweenTwo(network)) element.between = before;
  }
  return { parts, network };
}

const sides: Readonly<Record<string, readonly [string, string]>> = {
  N1: ['monitor', 'end'],
  N2: ['one', 'two'],
};

/** Whether no element has both of its ends at one node, by whatever names. */
function standBetweenTwo(network: readonly Plain[]): boolean {
  const contacts = network.flatMap(({ connector, pin, between }) =>
    connector === undefined
      ? []
      : [{ id: connector as string, pin: String(pin as number), between: between as [string, string] }],
  );
  return network.every(({ between }) => {
    const [one, other] = (between as [string, string]).map((node) => nameOfNode(contacts, sides, node));
    return one !== other;
  });
}

/** With one of its ends at a terminal that another element makes. */
function atTerminal(chance: Chance, network: readonly Plain[], element: Plain): [string, string] {
  const [one, other] = element.between as [string, string];
  const terminals = network
    .filter(
      ({ connector, pin }) =>
        connector !== undefined && !(connector === element.connector && pin === element.pin),
    )
    .flatMap(({ connector, pin }) => {
      const id = connector as string;
      return (sides[id] ?? []).map((side) => `${id}.${side}.${String(pin as number)}`);
    });
  return terminals.length === 0 ? [one, other] : [one, chance.pick(terminals)];
}

export function withNetwork(seed: number): string {
  const chance = chanceFrom(seed + 417_000);
  const { steps: written, ...circuit } = randomProcedure(seed);
  const nodes = ['na', 'nb', 'nc', 'nd', 'ground'];
  const { parts, network } = elementsOf(chance, nodes);
  const sources: Record<string, Plain> = { ...circuit.sources };
  const battery = { ...sources.battery };
  if (chance.happens(0.7)) battery.feeds = [...(battery.feeds as string[]), 'net-1'];
  const inner = (): Plain => (chance.happens(0.5) ? { resistance: chance.pick(['5..20 mΩ', '0 Ω']) } : {});
  sources.battery = { ...battery, ...inner() };
  if (chance.happens(0.4))
    network.push({ source: 'battery', between: [chance.pick(nodes.slice(0, 4)), 'ground'] });
  if (chance.happens(0.4)) {
    const needs = chance.pick<Plain>([
      {},
      { needs: 'ignition-on' },
      { needs: 'ignition-on', 'after-run': chance.pick(['0 s', '60 s', '3 min']) },
    ]);
    const volts = chance.pick(['5 V', '5 V', '48 V']);
    sources.supply = { kind: 'regulated', voltage: volts, from: 'battery', ...needs, ...inner() };
    network.push({ source: 'supply', between: [chance.pick(nodes.slice(0, 4)), 'ground'] });
  }
  const used = new Set(network.flatMap(({ between }) => between as string[]));
  const usable = nodes.filter((node) => used.has(node));
  const measurable = Object.keys(circuit.connectors)
    .filter((id) => through(circuit, id).length === 1)
    .flatMap((id) => [`${id}.monitor`, `${id}.end`]);
  const measured = (): PlainStep => {
    const one = chance.pick(usable);
    const other = chance.pick(usable.filter((node) => node !== one));
    const bySide = measurable.length > 0 && chance.happens(0.4);
    const quantity = chance.pick(['resistance', 'resistance', 'voltage']);
    const isOhms = quantity === 'resistance';
    const names = chance.happens(0.3) ? { middling: isOhms ? '30..60 Ω' : '2..4 V' } : null;
    const expect = chance.pick(isOhms ? expectedOhms : expectedVolts);
    const outcomes = Object.fromEntries(chance.pick(forms).map((name) => [name, 'next']));
    return {
      measure: quantity,
      across: bySide ? chance.pick(measurable) : [one, other],
      with: chance.pick(meters),
      ...(chance.happens(0.5) ? { expect } : {}),
      ...(names === null ? {} : { windows: names }),
      ...(chance.happens(0.7)
        ? { outcomes: names === null ? outcomes : { ...outcomes, middling: 'next' } }
        : {}),
    };
  };
  const steps: PlainStep[] = [...written];
  for (let more = chance.whole(2, 5); more > 0; more -= 1) {
    const warned = chance.happens(0.3) ? { warning: 'Stay clear.' } : {};
    const id = chance.pick(['N1', 'N2']);
    const step: PlainStep = chance.pick<PlainStep>([
      measured(),
      measured(),
      measured(),
      { unplug: id, ...warned },
      { plug: id, ...warned },
      { replace: chance.pick([...Object.keys(parts), 'N1', 'N2']), ...warned },
      { do: 'Turn it.', at: id },
    ]);
    steps.splice(chance.whole(0, steps.length), 0, step);
  }
  // A measurement that is come to with a connector plugged or not.
  if (chance.happens(0.3)) {
    const fork: PlainStep[] = [
      { inspect: 'Look.', outcomes: { ok: 'forked', defect: 'next' } },
      { unplug: chance.pick(['N1', 'N2']), warning: 'Stay clear.' },
      { ...measured(), id: 'forked' },
    ];
    steps.splice(chance.whole(0, steps.length), 0, ...fork);
  }
  const connectors = {
    ...circuit.connectors,
    N1: { contact: '2..15 mΩ' },
    N2: { contact: '2..15 mΩ', sides: ['one', 'two'] },
  };
  const allParts = { ...circuit.parts, ...parts };
  const movable = [...Object.keys(allParts), ...Object.keys(connectors), ...sidesIn(connectors)];
  const ohms = {
    kind: 'multimeter',
    zeroed: true,
    resistance: { range: '0..1 kΩ', accuracy: '1 %', resolution: '0.1 Ω' },
    voltage: { range: '0..40 V', accuracy: '1 %', resolution: '0.01 V', input: '10 MΩ' },
  };
  const coarse = {
    kind: 'multimeter',
    leads: '0.1..0.3 Ω',
    resistance: { range: '0..400 Ω', accuracy: '0.8 % + 3 digits', resolution: '0.1 Ω' },
    voltage: { range: '0..10 V', accuracy: '0.5 % + 2 digits', resolution: '0.1 V', input: '9..11 kΩ' },
  };
  return stringify(
    {
      ...circuit,
      sources,
      instruments: { ...circuit.instruments, ohms, coarse },
      parts: allParts,
      connectors,
      network,
      steps: withWiggles(seed + 1, 0.5, movable, steps),
    },
    { lineWidth: 0, aliasDuplicateObjects: false },
  );
}
