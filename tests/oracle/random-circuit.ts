import type { Chance } from './chance.ts';
import type { PlainProcedure } from './plain-procedure.ts';

/*
 * A small random system: one or two batteries and monitors, up to three loops, up to four connectors; at times a
 * high-voltage source with a service plug and a multimeter.
 */

export type PlainCircuit = Omit<PlainProcedure, 'steps'>;

type Plain = Record<string, unknown>;

export const pathOf = (circuit: PlainCircuit, loop: string): string[] =>
  circuit.loops[loop]?.path as string[];

/** Loops that pass through a connector or part. */
export const through = (circuit: PlainCircuit, id: string): string[] =>
  Object.keys(circuit.loops).filter((loop) => pathOf(circuit, loop).includes(id));

/* A tenth of the second list's is in the first, and hardly more. */
const testCurrents = ['40 mA', '40 mA', '40.01 mA', '0.04 A', '30..41 mA', '120 mA'];
const noFireCurrents = ['400 mA', '0.4 A', '400..500 mA', '1.2 A'];

function randomMonitor(chance: Chance): Plain {
  return {
    kind: 'monitor',
    range: chance.pick(['0..10 Ω', '0..10 Ω', '0..6 Ω', '0..40 Ω']),
    accuracy: chance.pick(['3 % + 0.1 Ω', '2 % + 0.05 Ω', '5 % + 0.2 Ω']),
    resolution: chance.pick(['0.01 Ω', '0.1 Ω']),
    codes: { 'too-low': 'below 1.0 Ω', 'too-high': chance.pick(['above 4.5 Ω', 'above 3.4 Ω']) },
    ...(chance.happens(0.8) ? { 'test-current': chance.pick(testCurrents) } : {}),
    ...(chance.happens(0.25) ? { leak: 'below 5 kΩ' } : {}),
  };
}

function randomBattery(chance: Chance, feeds: string[]): Plain {
  const reserve = {
    capacitance: '6.8 mF ± 20 %',
    'charged-to': chance.pick(['24 V', '24 V', '1.5 V']),
    bleed: chance.pick(['4.7 kΩ ± 5 %', '10 kΩ ± 5 %']),
    'safe-below': '2 V',
  };
  const style = chance.happens(0.06)
    ? 'none'
    : chance.pick(['wait', 'wait', 'wait', 'wait', 'reserve', 'both']);
  const voltage = chance.pick(['12.6 V', '12.6 V', '12.6 V', '12.6 V', '48 V', '36..52 V']);
  if (style === 'none') return { kind: 'battery', voltage, feeds };
  return {
    kind: 'battery',
    voltage,
    feeds,
    ...(style === 'reserve'
      ? {}
      : { wait: chance.happens(0.08) ? '0 s' : chance.pick(['60 s', '120 s', '180 s']) }),
    ...(style === 'wait' ? {} : { reserve }),
  };
}

function randomConnector(chance: Chance): Plain {
  const bar = {
    side: chance.pick(['end', 'end', 'monitor']),
    closes: chance.pick(['unlocked', 'unplugged']),
    resistance: chance.pick(['0.2..0.4 Ω', '0.2..0.4 Ω', '0.2..0.4 Ω', '0.3..2.4 Ω']),
  };
  return { contact: '2..15 mΩ', ...(chance.happens(0.5) ? { 'shorting-bar': bar } : {}) };
}

const inSeries: readonly (readonly [resistance: string, series: string])[] = [
  ['2.2 Ω', 'E6'],
  ['3.3 Ω ± 1 %', 'E12'],
  ['2.4 Ω', 'E24'],
  ['2.37 Ω', 'E48'],
  ['2.21 Ω', 'E96'],
  ['2.23 Ω', 'E192'],
  ['220 Ω', 'E12'],
];

/** Drawn apart, value and series seldom fit. */
function ofSeries(chance: Chance): Plain {
  const [resistance, series] = chance.pick(inSeries);
  const other = chance.happens(0.3) ? chance.pick(inSeries)[1] : series;
  return { kind: 'resistor', resistance, series: other };
}

/** Of a few ohms, so that monitors show them; one temperature in each list is one where it does not hold. */
function randomSensor(chance: Chance): Plain {
  if (chance.happens(0.5)) {
    const temperature = chance.pick(['20..40 °C', '10..30 °C', '100..250 °C', '150..300 °C', '400..600 °C']);
    return { kind: 'rtd', r0: '2 Ω', class: chance.pick(['AA', 'A', 'B']), temperature };
  }
  const temperature = chance.pick(['20..40 °C', '10..30 °C', '100..170 °C']);
  return { kind: 'thermistor', r25: '2.2 Ω', beta: '3400 K', tolerance: '3 %', temperature };
}

function randomEnd(chance: Chance): Plain {
  const kind = chance.pick([
    'initiator',
    'initiator',
    'initiator',
    'initiator',
    'resistor',
    'hv-section',
    'sensor',
  ]);
  if (kind === 'sensor') return randomSensor(chance);
  const resistance = chance.pick(['1.7..2.3 Ω', '2.0..2.4 Ω', '1.9..2.6 Ω']);
  if (kind === 'hv-section') return { kind, voltage: '400 V', resistance, live: true };
  if (kind === 'resistor') return chance.happens(0.5) ? { kind, resistance } : ofSeries(chance);
  const noFire = chance.happens(0.8) ? { 'no-fire': chance.pick(noFireCurrents) } : {};
  return { kind, resistance, ...noFire, live: chance.happens(0.92) };
}

function randomLoads(chance: Chance): Record<string, Plain> {
  const lamp = {
    kind: 'lamp',
    resistance: chance.pick(['3.0 Ω ± 5 %', '2.2 Ω ± 1 %', '0.5 Ω ± 10 %', '60 Ω ± 5 %']),
    // Of lamps and heaters under power the oracle knows nothing.
    hot: 'same',
  };
  const plug = {
    ...(chance.happens(0.3)
      ? ofSeries(chance)
      : { kind: 'resistor', resistance: chance.pick(['2.2 Ω ± 1 %', '2.4..2.6 Ω']) }),
    'opens-shorting-bar': true,
  };
  return chance.pick([{ lamp }, { plug }, { lamp, plug }]);
}

/** What each loop passes, by loop: its own connectors, cables and end, and at times what it shares with the others. */
function randomLoops(chance: Chance, monitors: string[]) {
  const parts: Record<string, Plain> = {};
  const connectors: Record<string, Plain> = {};
  const loops: Record<string, Plain> = {};
  const count = chance.whole(1, 3);
  const used: Record<string, number> = {};
  const allConnectors = ['K1', 'K2', 'K3', 'K4'].slice(0, chance.whole(1, 4));
  const shared = count > 1 && chance.happens(0.4);
  if (shared) parts.coil = { kind: 'rotary-coupling', resistance: '0.05..0.15 Ω' };
  for (let number = 1; number <= count; number += 1) {
    const own = allConnectors.filter((_, at) => at % count === number - 1);
    const lent = chance.some(
      allConnectors.filter((id) => !own.includes(id)),
      0.25,
    );
    const between: string[] = [...own, ...lent];
    if (chance.happens(0.6)) {
      parts[`cable-${number}`] = { kind: chance.pick(['cable', 'series']), resistance: '0.02..0.06 Ω' };
      between.splice(chance.whole(0, between.length), 0, `cable-${number}`);
    }
    if (shared && chance.happens(0.8)) between.splice(chance.whole(0, between.length), 0, 'coil');
    const pins: Record<string, number[]> = {};
    for (const id of between.filter((each) => allConnectors.includes(each))) {
      const before = used[id] ?? 0;
      used[id] = before + 1;
      pins[id] = [2 * before + 1, 2 * before + 2];
    }
    parts[`end-${number}`] = randomEnd(chance);
    const path = [chance.pick(monitors), ...between, `end-${number}`];
    loops[`loop-${number}`] = { path, ...(Object.keys(pins).length > 0 ? { pins } : {}) };
  }
  for (const id of allConnectors) connectors[id] = randomConnector(chance);
  if (chance.happens(0.04)) connectors.K9 = randomConnector(chance);
  if (chance.happens(0.04))
    parts['spare-stage'] = { kind: 'initiator', resistance: '1.7..2.3 Ω', live: true };
  if (chance.happens(0.05)) parts.spare = { kind: 'series', resistance: '0.02..0.06 Ω' };
  return { parts, connectors, loops };
}

/** Mostly fit for the proof of high voltage. */
function randomMeter(chance: Chance): Plain {
  const isFit = chance.happens(0.8);
  const range = isFit ? '0..600 V' : chance.pick(['0..410 V', '0..400 V', '0..600 V']);
  const accuracy = isFit
    ? '0.5 % + 2 digits'
    : chance.pick(['5 % + 1.8 V', '5 % + 2 V', '5 % + 5.9 V', '5 % + 6 V']);
  const resolution = isFit ? '0.1 V' : chance.pick(['0.1 V', '1 V']);
  return { kind: 'multimeter', voltage: { range, accuracy, resolution, input: '10 MΩ' } };
}

type Grown = Readonly<Record<'sources' | 'parts' | 'connectors' | 'loops', Record<string, Plain>>>;

/** A source with a service plug of its own: in the path of some loops, carried by some connectors, feeding some ends. */
function addHighVoltage(chance: Chance, { sources, parts, connectors, loops }: Grown, number = 1): void {
  const id = `traction-${number}`;
  const plug = `S${number}`;
  const carriers = chance.some(Object.keys(connectors), 0.3);
  for (const carrier of carriers) {
    const connector = connectors[carrier] ?? {};
    connector.carries = [...((connector.carries as string[] | undefined) ?? []), id];
  }
  connectors[plug] = randomConnector(chance);
  const [first] = Object.keys(loops);
  const through = chance.some(Object.keys(loops), 0.4);
  let pin = 1;
  for (const loop of through.length > 0 ? through : first === undefined ? [] : [first]) {
    const entry = loops[loop] ?? {};
    const path = entry.path as string[];
    path.splice(chance.whole(1, path.length - 1), 0, plug);
    entry.pins = { ...(entry.pins as object | undefined), [plug]: [pin, pin + 1] };
    pin += 2;
  }
  const ends = Object.keys(parts).filter((part) => part.startsWith('end-'));
  const live = ends.filter((end) => parts[end]?.live === true);
  const feeds = chance.some(live, 0.4);
  if (chance.happens(0.1)) feeds.push(chance.pick([...ends, ...Object.keys(connectors)]));
  sources[id] = {
    kind: 'high-voltage',
    voltage: '320..410 V',
    ...(feeds.length > 0 ? { feeds: [...new Set(feeds)] } : {}),
    'isolated-by': plug,
    wait: chance.happens(0.1) ? '0 s' : chance.pick(['60 s', '120 s', '300 s']),
    ...(chance.happens(0.3)
      ? { reserve: { capacitance: '500 µF ± 10 %', 'charged-to': '410 V', bleed: '100 kΩ ± 5 %' } }
      : {}),
    ...(chance.happens(0.3) ? { 'safe-below': chance.pick(['50 V', '2 V', '5 V']) } : {}),
  };
}

export function randomCircuit(chance: Chance): PlainCircuit {
  const monitors = chance.happens(0.3) ? ['unit-a', 'unit-b'] : ['unit-a'];
  const { parts, connectors, loops } = randomLoops(chance, monitors);
  const fedBy = (everything: number): string[] => {
    const fed = chance.some(monitors, everything);
    const others = [...Object.keys(parts), ...Object.keys(connectors)];
    if (chance.happens(0.1)) fed.push(chance.pick(others));
    return fed.length > 0 ? fed : [chance.pick([...monitors, ...others])];
  };
  const sources: Record<string, Plain> = { battery: randomBattery(chance, fedBy(0.97)) };
  if (chance.happens(0.35)) sources.backup = randomBattery(chance, fedBy(0.5));
  if (chance.happens(0.06)) {
    const idle = ['K9', 'spare', 'spare-stage'].filter((id) => id in parts || id in connectors);
    sources.extra = randomBattery(chance, [chance.pick([...idle, ...monitors])]);
  }
  const meters: Record<string, Plain> = {};
  if (chance.happens(0.45)) {
    meters.meter = randomMeter(chance);
    addHighVoltage(chance, { sources, parts, connectors, loops });
    if (chance.happens(0.2)) addHighVoltage(chance, { sources, parts, connectors, loops }, 2);
  }
  return {
    format: 1,
    title: 'A random procedure',
    conditions: { ambient: '10..35 °C' },
    sources,
    instruments: {
      ...Object.fromEntries(monitors.map((id) => [id, randomMonitor(chance)])),
      ...meters,
    },
    loads: randomLoads(chance),
    parts,
    connectors,
    loops,
  };
}
