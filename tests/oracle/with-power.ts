import { stringify } from 'yaml';
import { chanceFrom } from './chance.ts';
import type { Chance } from './chance.ts';
import type { PlainStep } from './plain-procedure.ts';
import { withCurrents } from './with-currents.ts';
import { withTesters } from './with-testers.ts';
import { sidesIn, withWiggles } from './with-wiggles.ts';

/*
 * Random procedures about what is powered and charged: a network with batteries of 12 V and 48 V, supplies that run on,
 * a high-voltage source that is drawn or only named, and two small loops; steps that switch, wait, prove, take apart,
 * measure and replace. The same for the same seed.
 */

type Plain = Record<string, unknown>;

const LOW = ['na', 'nb', 'nc', 'nd'];

interface Drawn {
  readonly sources: Record<string, Plain>;
  readonly parts: Record<string, Plain>;
  readonly connectors: Record<string, Plain>;
  readonly network: Plain[];
  /** A voltage may be measured: all sources have their minus at ground. */
  readonly isGrounded: boolean;
}

function waitOf(chance: Chance): Plain {
  const reserve = {
    capacitance: '3 mF ± 20 %',
    'charged-to': '52 V',
    bleed: '10 kΩ ± 5 %',
    'safe-below': '5 V',
  };
  return chance.pick<Plain>([
    {},
    { wait: '0 s' },
    { wait: '60 s' },
    { wait: '60 s' },
    { wait: '2 min' },
    { wait: '2 min' },
    { reserve },
    { wait: '30 s', reserve },
  ]);
}

function randomPart(chance: Chance): Plain {
  return chance.pick<Plain>([
    { kind: 'resistor', resistance: '118..122 Ω' },
    { kind: 'resistor', resistance: '2.0..2.4 Ω' },
    { kind: 'cable', resistance: '20..30 mΩ' },
    { kind: 'lamp', resistance: '5..6 Ω' },
    { kind: 'heater', resistance: '30..36 Ω' },
  ]);
}

/** Parts and connectors of the low side, with what supplies them. */
function lowSide(chance: Chance): Drawn {
  const parts: Record<string, Plain> = {};
  const network: Plain[] = [];
  const pair = (nodes: readonly string[]): [string, string] => {
    const one = chance.pick(nodes);
    return [one, chance.pick(nodes.filter((node) => node !== one))];
  };
  const nodes = [...LOW, 'ground'];
  for (let at = 1; at <= chance.whole(2, 4); at += 1) {
    parts[`net-${at}`] = randomPart(chance);
    network.push({ part: `net-${at}`, between: pair(nodes) });
  }
  if (chance.happens(0.15)) {
    parts.squib = { kind: 'initiator', resistance: '1.7..2.3 Ω', live: chance.happens(0.5) };
    network.push({ part: 'squib', between: pair(nodes) });
  }
  for (const connector of ['N1', 'N2'])
    for (let pin = 1; pin <= chance.whole(1, 2); pin += 1)
      network.push({ connector, pin, between: pair(nodes) });
  const feedable = [...Object.keys(parts), 'N1', 'N2', 'unit', 'K3', 'dull'];
  const fed = (): string[] => [...new Set([chance.pick(feedable), ...chance.some(feedable, 0.15)])];
  const sources: Record<string, Plain> = {
    battery: {
      kind: 'battery',
      voltage: '12.6 V',
      feeds: [...new Set([...fed(), ...(chance.happens(0.7) ? ['unit'] : [])])],
      ...waitOf(chance),
    },
  };
  if (chance.happens(0.6))
    sources.link = {
      kind: 'battery',
      voltage: chance.pick(['48 V', '36..52 V', '24..30 V', '30..30.5 V']),
      feeds: fed(),
      ...waitOf(chance),
    };
  const drawn = Object.keys(sources).filter(() => chance.happens(0.45));
  const supplies: string[] = [];
  if (chance.happens(0.5)) {
    supplies.push('supply');
    sources.supply = {
      kind: 'regulated',
      voltage: chance.pick(['5 V', '48 V']),
      from: chance.pick(Object.keys(sources)),
      ...ofIgnition(chance),
    };
    if (chance.happens(0.25)) {
      supplies.push('second');
      sources.second = { kind: 'regulated', voltage: '3.3 V', from: 'battery', ...ofIgnition(chance) };
    }
  }
  for (const source of [...drawn, ...supplies])
    network.push({ source, between: [chance.pick(LOW), 'ground'] });
  return { sources, parts, connectors: { N1: {}, N2: { sides: ['one', 'two'] } }, network, isGrounded: true };
}

function ofIgnition(chance: Chance): Plain {
  if (chance.happens(0.3)) return {};
  const runs = chance.pick<Plain>([
    {},
    { 'after-run': '0 s' },
    { 'after-run': '30 s' },
    { 'after-run': '90 s' },
    { 'after-run': '5 min' },
  ]);
  return { needs: 'ignition-on', ...runs };
}

/** A pack behind its service plug, a cable and a connector before a heater; a part of it is missing at times. */
function highSide(chance: Chance, low: Drawn): Drawn {
  const { sources, parts, connectors, network } = low;
  const minus = chance.happens(0.5) ? 'ground' : 'hm';
  const isDrawn = chance.happens(0.8);
  parts.element = chance.happens(0.7)
    ? { kind: 'heater', resistance: '30..36 Ω' }
    : { kind: 'hv-section', voltage: '400 V', resistance: '30..36 Ω', live: true };
  parts['plus-cable'] = { kind: 'cable', resistance: '2..6 mΩ' };
  connectors.S1 = {};
  connectors.N3 = { sides: ['link', 'heater'] };
  const lm = minus === 'ground' ? 'ground' : 'lm';
  const hy = minus === 'ground' ? 'ground' : 'hy';
  if (isDrawn) network.push({ source: 'traction', between: ['hp', minus] });
  const isPlugDrawn = chance.happens(0.75);
  if (isPlugDrawn) network.push({ connector: 'S1', pin: 1, between: ['hp', 'lp'] });
  if (isPlugDrawn && minus !== 'ground') network.push({ connector: 'S1', pin: 2, between: ['hm', 'lm'] });
  network.push({ part: 'plus-cable', between: [isPlugDrawn ? 'lp' : 'hp', 'lx'] });
  network.push({ connector: 'N3', pin: 1, between: ['lx', 'hx'] });
  if (minus !== 'ground' && chance.happens(0.9)) network.push({ connector: 'N3', pin: 2, between: [lm, hy] });
  network.push({ part: 'element', between: ['hx', chance.happens(0.9) ? hy : 'hz'] });
  if (chance.happens(0.2)) {
    parts.sense = { kind: 'resistor', resistance: '1..2 kΩ' };
    network.push({
      part: 'sense',
      between: [chance.pick(['hp', 'lx', 'hx']), chance.pick(['ground', 'na'])],
    });
  }
  if (chance.happens(0.3)) connectors.K3 = { carries: ['traction'] };
  if (chance.happens(0.15)) connectors.N1 = { ...connectors.N1, carries: ['traction'] };
  const feeds = chance.some(['element', 'N3', 'net-1', 'dull', 'unit'], 0.12);
  sources.traction = {
    kind: 'high-voltage',
    voltage: '320..410 V',
    'isolated-by': 'S1',
    wait: chance.pick(['60 s', '2 min', '5 min']),
    ...(feeds.length > 0 || !isDrawn ? { feeds: feeds.length > 0 ? feeds : ['element'] } : {}),
  };
  return { ...low, isGrounded: minus === 'ground' || !isDrawn };
}

const meters: Record<string, Plain> = {
  meter: {
    kind: 'multimeter',
    zeroed: true,
    resistance: { range: '0..1 kΩ', accuracy: '1 %', resolution: '0.1 Ω' },
    voltage: { range: '0..600 V', accuracy: '0.5 % + 2 digits', resolution: '0.1 V', input: '10 MΩ' },
  },
  small: {
    kind: 'multimeter',
    leads: '0.1..0.3 Ω',
    resistance: { range: '0..400 Ω', accuracy: '0.8 % + 3 digits', resolution: '0.1 Ω' },
    voltage: { range: '0..60 V', accuracy: '0.5 % + 2 digits', resolution: '0.01 V', input: '10 MΩ' },
  },
};

export function withPower(seed: number): string {
  const chance = chanceFrom(seed + 802_000);
  const hasHigh = chance.happens(0.5);
  const low = lowSide(chance);
  const { sources, parts, connectors, network, isGrounded } = hasHigh ? highSide(chance, low) : low;
  for (const id of ['K1', 'K2', 'K3']) {
    const bar = { side: 'end', closes: chance.pick(['unlocked', 'unplugged']), resistance: '0.2..0.4 Ω' };
    connectors[id] = { ...connectors[id], ...(chance.happens(0.3) ? { 'shorting-bar': bar } : {}) };
  }
  for (const [id, entry] of Object.entries(connectors)) connectors[id] = { contact: '2..15 mΩ', ...entry };
  parts.stage = chance.happens(0.6)
    ? { kind: 'resistor', resistance: '2.0..2.4 Ω' }
    : { kind: 'initiator', resistance: '1.7..2.3 Ω', live: chance.happens(0.7) };
  parts.dull = { kind: 'resistor', resistance: '2.0..2.4 Ω' };
  parts.wire = { kind: 'cable', resistance: '20..30 mΩ' };
  const loops = {
    first: { path: ['unit', 'K1', 'wire', 'K2', 'stage'] },
    other: { path: ['unit', 'K3', 'dull'] },
  };
  const used = [...new Set(network.flatMap(({ between }) => between as string[]))];
  const loopSides = ['K1', 'K2', 'K3'].flatMap((id) => [`${id}.monitor`, `${id}.end`]);
  const netSides = hasHigh
    ? ['N1.monitor', 'N1.end', 'N2.one', 'N2.two', 'N3.link', 'N3.heater']
    : ['N1.monitor', 'N1.end', 'N2.one', 'N2.two'];
  const twoPins = (side: string): boolean =>
    network.filter(({ connector }) => connector === side.split('.')[0]).length === 2;
  const sides = [...loopSides, ...netSides.filter(twoPins)];
  const proofSides = [...netSides, ...loopSides, 'S1.monitor', 'S1.end'];
  const plugs = ['K1', 'K2', 'K3', 'N1', 'N2', ...(hasHigh ? ['N3', 'N3'] : [])];
  const warned = (share: number): Plain => (chance.happens(share) ? { danger: 'Stay clear.' } : {});
  const switched = Object.keys(sources).filter((id) => sources[id]?.kind !== 'regulated');
  const measured = (): PlainStep => {
    const one = chance.pick(used);
    const other = chance.pick(used.filter((node) => node !== one));
    const isOhms = !isGrounded || chance.happens(0.7);
    return {
      measure: isOhms ? 'resistance' : 'voltage',
      across: chance.happens(0.4) ? chance.pick(sides) : [one, other],
      with: chance.pick(['meter', 'meter', 'small']),
      ...warned(0.4),
    };
  };
  const proof = (): PlainStep => ({
    'prove-dead': 'traction',
    at: chance.pick(proofSides),
    with: 'meter',
    known: 'battery',
    ...warned(0.8),
    ...chance.pick<Plain>([{}, {}, {}, { outcomes: { live: 'next' } }]),
  });
  const placed = (): string => chance.pick(loopSides);
  const step = (): PlainStep =>
    chance.pick<() => PlainStep>([
      () => ({ ignition: chance.pick(['on', 'off', 'off', 'cycle']), ...warned(0.3) }),
      () => ({ disconnect: chance.pick(switched), ...warned(0.5) }),
      () => ({ disconnect: chance.pick(switched), ...warned(0.5) }),
      () => ({ reconnect: chance.pick(switched), ...warned(0.5) }),
      () => ({ wait: chance.pick(['30 s', '60 s', '2 min', '5 min']) }),
      () => ({ wait: chance.pick(['30 s', '60 s', '2 min', '5 min']) }),
      () => ({ unplug: chance.pick(plugs) }),
      () => ({ unplug: chance.pick(plugs) }),
      () => ({ plug: chance.pick(plugs) }),
      () => ({ unlock: chance.pick(['K1', 'K2', 'K3']) }),
      () => ({ fit: 'bulb', at: placed() }),
      () => ({ move: 'bulb', to: placed() }),
      () => ({ remove: 'bulb' }),
      measured,
      measured,
      measured,
      () => ({ replace: chance.pick([...Object.keys(parts), ...plugs]) }),
      () => ({ replace: chance.pick([...Object.keys(parts), ...plugs]) }),
      () => ({ do: 'Turn it.', at: chance.pick([...Object.keys(parts), ...plugs]) }),
      hasHigh ? proof : measured,
    ])();
  const away = (): PlainStep[] => [
    { ignition: 'off' },
    ...chance.some(switched, 0.8).map((source): PlainStep => ({ disconnect: source, ...warned(0.8) })),
    ...chance.pick<PlainStep[]>([
      [{ wait: '5 min' }],
      [{ wait: '60 s' }, { wait: '60 s' }],
      [{ wait: '2 min' }, { wait: '4 min' }],
      [],
    ]),
  ];
  const steps: PlainStep[] = [];
  if (chance.happens(0.3)) steps.push({ ignition: 'on' });
  if (chance.happens(0.75)) steps.push(...away());
  if (hasHigh && chance.happens(0.7)) steps.push(proof());
  for (let more = chance.whole(4, 9); more > 0; more -= 1) steps.push(step());
  if (chance.happens(0.3)) steps.splice(chance.whole(0, steps.length), 0, ...away());
  // A step that is come to with something done or not.
  if (chance.happens(0.3)) {
    const fork: PlainStep[] = [
      { inspect: 'Look.', outcomes: { ok: 'forked', defect: 'next' } },
      step(),
      { ...measured(), id: 'forked' },
    ];
    steps.splice(chance.whole(0, steps.length), 0, ...fork);
  }
  const movable = [...Object.keys(parts), ...Object.keys(connectors), ...sidesIn(connectors)];
  const testable = {
    points: [...used.filter((node) => node !== 'ground'), ...netSides.map((side) => `${side}.1`)],
    sides,
    proof: hasHigh ? proof : null,
  };
  const carrying = {
    parts: network.flatMap(({ part }) => (typeof part === 'string' ? [part] : [])),
    pins: network.flatMap(({ connector, pin }) => {
      const [near, far] = proofSides.filter((side) => side.split('.')[0] === connector);
      if (near === undefined || far === undefined) return [];
      return [[`${near}.${String(pin)}`, `${far}.${String(pin)}`] as const];
    }),
    measured,
    hasGround: used.includes('ground'),
  };
  return stringify(
    withCurrents(
      seed,
      0.4,
      carrying,
      withTesters(seed, 0.5, testable, {
        format: 1,
        title: 'What is powered',
        conditions: { ambient: '10..35 °C' },
        sources,
        instruments: {
          unit: {
            kind: 'monitor',
            range: '0..10 Ω',
            accuracy: '3 % + 0.1 Ω',
            resolution: '0.01 Ω',
            codes: { 'too-low': 'below 1.0 Ω', 'too-high': 'above 4.5 Ω' },
          },
          ...meters,
        },
        loads: { bulb: { kind: 'lamp', resistance: '3.0 Ω ± 5 %' } },
        parts,
        connectors,
        loops,
        network,
        steps: withWiggles(seed, 0.7, movable, steps),
      }),
    ),
    { lineWidth: 0, aliasDuplicateObjects: false },
  );
}
