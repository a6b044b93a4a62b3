/*
 * Procedures that the reader takes, below its limits on the text, each very large in one way that order, windows or the
 * solver have to cope with. `size` counts whatever the case is large in.
 */

export interface LargeFile {
  readonly text: string;
  /** Parts files, by name. */
  readonly parts?: ReadonlyMap<string, string>;
}

export const upTo = <T>(count: number, make: (at: number) => T): readonly T[] =>
  Array.from({ length: count }, (_, at) => make(at));

const lines = (count: number, make: (at: number) => string): string => upTo(count, make).join('');

type Sections = Readonly<Record<string, string>>;

/** Section by section, with a title; steps that are not stated look at nothing. */
export function procedureOf(sections: Sections): string {
  const all = { sources: battery(), ...sections };
  const body = Object.entries(all).map(([name, text]) => `${name}:\n${text}`);
  return `format: 1\ntitle: Large\n${body.join('')}`;
}

const battery = (feeds = 'unit'): string =>
  `  battery: { kind: battery, voltage: 12.6 V, feeds: [${feeds}], wait: 1 min }\n`;
const monitor = (id = 'unit'): string =>
  `  ${id}: { kind: monitor, range: 0..10 Ω, accuracy: 3 % + 0.1 Ω, resolution: 0.01 Ω }\n`;
const meter = `  meter:
    kind: multimeter
    resistance: { range: 0..40 kΩ, accuracy: 0.5 % + 2 digits, resolution: 0.01 Ω, test-current: 1 mA }
    voltage: { range: 0..40 V, accuracy: 0.5 % + 2 digits, resolution: 0.01 V, input: 10 MΩ }
`;
const connector = (id: string): string => `  ${id}: { contact: 2 mΩ }\n`;
const series = (id: string): string => `  ${id}: { kind: series, resistance: 1..2 mΩ }\n`;
const resistor = (id: string): string => `  ${id}: { kind: resistor, resistance: 1..2 Ω }\n`;
const stage = (id: string): string =>
  `  ${id}: { kind: initiator, resistance: 2 Ω, live: true, no-fire: 1 A }\n`;
const element = (part: string, a: string, b: string): string =>
  `  - { part: ${part}, between: [${a}, ${b}] }\n`;
const measure = (a: string, b: string, quantity = 'resistance'): string =>
  `  - measure: ${quantity}\n    across: [${a}, ${b}]\n    with: meter\n`;
const powerOff = '  - ignition: off\n  - disconnect: battery\n';

/** One loop of connectors and parts in turn. */
export function longLoop(size: number): LargeFile {
  const path = upTo(size, (at) => `K${at}, p${at}`).join(', ');
  return {
    text: procedureOf({
      instruments: monitor(),
      parts: lines(size, (at) => series(`p${at}`)) + stage('s'),
      connectors: lines(size, (at) => connector(`K${at}`)),
      loops: `  l: { path: [unit, ${path}, s] }\n`,
      steps: '  - ignition: on\n  - read: l\n',
    }),
  };
}

interface Link {
  readonly from: string;
  readonly to: string;
}

/** A network of resistors, measured between two nodes. */
function network(
  links: readonly Link[],
  steps: string,
  part = resistor,
  more: {
    readonly sources?: string;
    readonly network?: string;
    readonly entries?: string;
    readonly parts?: string;
  } = {},
): LargeFile {
  const { sources, network: added = '', entries, parts = '' } = more;
  return {
    text: procedureOf({
      ...(entries === undefined ? {} : { entries }),
      sources: sources ?? battery('p0'),
      instruments: meter,
      parts: links.map((_, at) => part(`p${at}`)).join('') + parts,
      network: links.map(({ from, to }, at) => element(`p${at}`, from, to)).join('') + added,
      steps: powerOff + steps,
    }),
  };
}

/** Two rails with rungs between them. */
const ladderLinks = (size: number): readonly Link[] =>
  upTo(size, (at): readonly Link[] => [
    { from: `a${at}`, to: `a${at + 1}` },
    { from: `b${at}`, to: `b${at + 1}` },
    { from: `a${at + 1}`, to: `b${at + 1}` },
  ]).flat();

export const ladder = (size: number): LargeFile => network(ladderLinks(size), measure('a0', 'b0'));

export const star = (size: number): LargeFile =>
  network(
    upTo(size, (at) => ({ from: 'middle', to: `n${at}` })),
    measure('n0', 'n1'),
  );

/** Every node of one half joined to every node of the other. */
export const everyToEvery = (side: number): LargeFile =>
  network(
    upTo(side * side, (at) => ({ from: `a${at % side}`, to: `b${Math.floor(at / side)}` })),
    measure('a0', 'b1'),
  );

const gridLinks = (side: number): readonly Link[] =>
  upTo(side * side, (at): readonly Link[] => {
    const [x, y] = [at % side, Math.floor(at / side)];
    return [
      ...(x + 1 < side ? [{ from: `n${x}-${y}`, to: `n${x + 1}-${y}` }] : []),
      ...(y + 1 < side ? [{ from: `n${x}-${y}`, to: `n${x}-${y + 1}` }] : []),
    ];
  }).flat();

export const grid = (side: number): LargeFile =>
  network(gridLinks(side), measure('n0-0', `n${side - 1}-${side - 1}`));

/** Each two neighbours on a ladder measured, one after the other. */
export const manyMeasured = (size: number): LargeFile =>
  network(ladderLinks(size), upTo(size, (at) => measure(`a${at}`, `b${at}`)).join(''));

const supply = {
  sources: `${battery('p0')}  supply: { kind: regulated, voltage: 5 V ± 1 %, from: battery }\n`,
};

/** The voltage at the far end of a network that a supply feeds at the near end. */
export const ladderVoltage = (size: number): LargeFile =>
  network(
    ladderLinks(size),
    `  - reconnect: battery\n${measure(`a${size}`, `b${size}`, 'voltage')}`,
    resistor,
    { ...supply, network: '  - { source: supply, between: [a0, b0] }\n' },
  );

export const gridVoltage = (side: number): LargeFile =>
  network(gridLinks(side), `  - reconnect: battery\n${measure('n1-0', `n0-1`, 'voltage')}`, resistor, {
    ...supply,
    network: `  - { source: supply, between: [n0-0, n${side - 1}-${side - 1}] }\n`,
  });

/** A supply at every node of a ladder, each with a part in line. */
export const manySupplies = (size: number): LargeFile =>
  network(
    upTo(size, (at): readonly Link[] => [
      { from: `a${at}`, to: `a${at + 1}` },
      { from: `a${at}`, to: `s${at}` },
    ]).flat(),
    `  - reconnect: battery\n${measure(`a${size}`, 'ground', 'voltage')}`,
    resistor,
    {
      sources: `${battery('p0')}${lines(size, (at) => `  s-${at}: { kind: regulated, voltage: 5 V ± 1 %, from: battery }\n`)}`,
      network: lines(size, (at) => `  - { source: s-${at}, between: [s${at}, ground] }\n`),
    },
  );

/** Side by side a winding and a sensor that falls, at a temperature of their own for each pair. */
function pairs(
  size: number,
  temperature: (at: number) => string,
  more: Parameters<typeof network>[3] = {},
): LargeFile {
  const links = upTo(size, (at): readonly Link[] => {
    const link = { from: `n${at}`, to: `n${at + 1}` };
    return [link, link];
  }).flat();
  const part = (id: string): string => {
    const at = Number(id.slice(1));
    const own = temperature(Math.floor(at / 2));
    return at % 2 === 0
      ? `  ${id}: { kind: coil, resistance: ${100 + at} Ω${own} }\n`
      : `  ${id}: { kind: thermistor, r25: 2 kΩ, beta: 3500 K, tolerance: 3 %${own} }\n`;
  };
  return network(links, measure('n0', `n${size}`), part, more);
}

export const ownTemperatures = (size: number): LargeFile =>
  pairs(size, (at) => `, temperature: 20..${30 + (at % 60)} °C`);

export const oneTemperature = (size: number): LargeFile => pairs(size, () => '');

/** Entries that parts on both sides follow. */
export const manyEntries = (entries: number, size = entries): LargeFile =>
  pairs(size, (at) => `, temperature: e${at % entries}`, {
    entries: lines(
      entries,
      (at) => `  e${at}: { ask: Temperature ${at}, range: 0..90 °C, accuracy: 1 °C }\n`,
    ),
  });

/** Steps in a row that unplug and plug, and loops of which each holds a live stage. */
export function stepsAndStages(steps: number, stages: number): LargeFile {
  return {
    text: procedureOf({
      instruments: monitor(),
      parts: lines(stages, (at) => stage(`s${at}`)),
      connectors: lines(stages, (at) => connector(`K${at}`)),
      loops: lines(stages, (at) => `  l${at}: { path: [unit, K${at}, s${at}] }\n`),
      steps:
        `${powerOff}  - wait: 1 min\n` +
        lines(steps, (at) => `  - ${at % 2 === 0 ? 'unplug' : 'plug'}: K${Math.floor(at / 2) % stages}\n`),
    }),
  };
}

/** The same, each stage with a source and a monitor of its own. */
export function stepsAndSources(steps: number, sources: number): LargeFile {
  return {
    text: procedureOf({
      sources: lines(
        sources,
        (at) => `  b${at}: { kind: battery, voltage: 12.6 V, feeds: [u${at}], wait: 1 min }\n`,
      ),
      instruments: lines(sources, (at) => monitor(`u${at}`)),
      parts: lines(sources, (at) => stage(`s${at}`)),
      connectors: lines(sources, (at) => connector(`K${at}`)),
      loops: lines(sources, (at) => `  l${at}: { path: [u${at}, K${at}, s${at}] }\n`),
      steps: `  - ignition: off\n${lines(steps, (at) => `  - disconnect: b${at % sources}\n`)}`,
    }),
  };
}

/** All sources feed one monitor. */
export function sourcesOfOne(sources: number): LargeFile {
  return {
    text: procedureOf({
      sources: lines(
        sources,
        (at) => `  b${at}: { kind: battery, voltage: 12.6 V, feeds: [unit], wait: ${at + 1} s }\n`,
      ),
      instruments: monitor(),
      parts: stage('s'),
      connectors: connector('K'),
      loops: '  l: { path: [unit, K, s] }\n',
      steps: `  - ignition: off\n${lines(sources, (at) => `  - disconnect: b${at}\n`)}  - wait: ${sources} s\n  - unplug: K\n`,
    }),
  };
}

/** Loops that share nothing but their monitor, all read. */
export const manyLoops = (loops: number): LargeFile => ({
  text: procedureOf({
    instruments: monitor(),
    parts: lines(loops, (at) => resistor(`p${at}`)),
    loops: lines(loops, (at) => `  l${at}: { path: [unit, p${at}] }\n`),
    steps: `  - ignition: on\n  - read: [${upTo(loops, (at) => `l${at}`).join(', ')}]\n`,
  }),
});

/** Each loop is read in a step of its own. */
export const manyReadings = (loops: number): LargeFile => ({
  text: procedureOf({
    instruments: monitor(),
    parts: lines(loops, (at) => resistor(`p${at}`)),
    connectors: connector('K'),
    loops: lines(
      loops,
      (at) => `  l${at}: { path: [unit, K, p${at}], pins: { K: [${2 * at}, ${2 * at + 1}] } }\n`,
    ),
    steps: `  - ignition: on\n${lines(loops, (at) => `  - read: l${at}\n`)}`,
  }),
});

/** A finding on every line. */
export const manyFindings = (count: number): LargeFile => ({
  text: procedureOf({
    instruments: monitor(),
    parts: stage('s'),
    loops: '  l: { path: [unit, s] }\n',
    steps: lines(count, () => '- x\n'),
  }),
});

/** A live touch at every step. */
export const manyTouches = (count: number): LargeFile => ({
  text: procedureOf({
    instruments: monitor(),
    parts: stage('s'),
    connectors: connector('K'),
    loops: '  l: { path: [unit, K, s] }\n',
    steps: `  - ignition: on\n${lines(count, (at) => `  - ${at % 2 === 0 ? 'unplug' : 'plug'}: K\n`)}`,
  }),
});

/** Each routine calls the next. */
export const nestedRoutines = (count: number): LargeFile => ({
  text: procedureOf({
    instruments: monitor(),
    parts: stage('s'),
    loops: '  l: { path: [unit, s] }\n',
    routines: `${lines(count, (at) => `  r${at}: { steps: [{ run: r${at + 1} }] }\n`)}  r${count}: { steps: [{ do: a }] }\n`,
    steps: '  - run: r0\n',
  }),
});

/** One routine, called again and again. */
export const manyCalls = (calls: number, steps: number): LargeFile => ({
  text: procedureOf({
    instruments: monitor(),
    parts: stage('s'),
    loops: '  l: { path: [unit, s] }\n',
    routines: `  r:\n    steps:\n${lines(steps, () => '      - do: a\n')}`,
    steps: lines(calls, () => '  - run: r\n'),
  }),
});

/** Each parts file uses the next. */
export const partsFiles = (count: number): LargeFile => ({
  text: `format: 1\ntitle: Large\nuses: [f0.parts.yaml]\nsteps: [{ do: a }]\n`,
  parts: new Map(
    upTo(count, (at) => [
      `f${at}.parts.yaml`,
      `format: 1\n${at + 1 < count ? `uses: [f${at + 1}.parts.yaml]\n` : ''}parts:\n${resistor(`p${at}`)}`,
    ]),
  ),
});

/** Readings whose every outcome leads to another step, so that everything is reached from everywhere. */
export function manyOutcomes(steps: number, connectors = 12): LargeFile {
  const to = (at: number, by: number): string => `s${(at * by + 1) % steps}`;
  return {
    text: procedureOf({
      instruments: monitor(),
      parts: stage('s'),
      connectors: lines(connectors, (at) => connector(`K${at}`)),
      loops: `  l: { path: [unit, ${upTo(connectors, (at) => `K${at}`).join(', ')}, s] }\n`,
      steps: lines(
        steps,
        (at) =>
          `  - ${at % 3 === 0 ? 'unplug' : 'plug'}: K${at % connectors}\n    id: s${at}\n` +
          `  - read: l\n    outcomes: { within: ${to(at, 2)}, open: ${to(at, 3)}, below: ${to(at, 5)}, else: next }\n`,
      ),
    }),
  };
}

/** Connectors of which each is unlocked on one path and not on the other; `apart`: in a loop of their own each. */
export function branches(count: number, apart: boolean): LargeFile {
  const ids = upTo(count, (at) => `K${at}`);
  return {
    text: procedureOf({
      instruments: monitor(),
      parts: apart ? ids.map((id) => stage(`s-${id}`)).join('') : stage('s'),
      connectors: ids.map(connector).join(''),
      loops: apart
        ? ids.map((id) => `  l-${id}: { path: [unit, ${id}, s-${id}] }\n`).join('')
        : `  l: { path: [unit, ${ids.join(', ')}, s] }\n`,
      steps:
        `${powerOff}  - wait: 1 min\n` +
        ids
          .map(
            (id, at) =>
              `  - inspect: Is there a lock?\n    id: i${at}\n    outcomes: { ok: i${at + 1}, defect: next }\n  - unplug: ${id}\n`,
          )
          .join('') +
        `  - do: a\n    id: i${count}\n`,
    }),
  };
}

/** Loads, each fitted at a connector of its own in one loop. */
export function fittedLoads(count: number): LargeFile {
  const ids = upTo(count, (at) => `K${at}`);
  return {
    text: procedureOf({
      instruments: monitor(),
      loads: lines(count, (at) => `  d${at}: { kind: resistor, resistance: 2..3 Ω }\n`),
      parts: resistor('p'),
      connectors: ids.map(connector).join(''),
      loops: `  l: { path: [unit, ${ids.join(', ')}, p] }\n`,
      steps: `${powerOff}${lines(count, (at) => `  - unplug: K${at}\n  - fit: d${at}\n    at: K${at}.monitor\n`)}  - reconnect: battery\n  - ignition: on\n  - read: l\n`,
    }),
  };
}

/** The loop is read each time that a connector of it is opened. */
export function readWhileOpening(count: number): LargeFile {
  const ids = upTo(count, (at) => `K${at}`);
  return {
    text: procedureOf({
      instruments: monitor(),
      parts: resistor('p'),
      connectors: ids.map(connector).join(''),
      loops: `  l: { path: [unit, ${ids.join(', ')}, p] }\n`,
      steps: `  - ignition: on\n${ids.map((id) => `  - unplug: ${id}\n  - read: l\n`).join('')}`,
    }),
  };
}

/** Parts are replaced one after another. */
export const replacements = (count: number): LargeFile => ({
  text: procedureOf({
    instruments: monitor(),
    parts: lines(count, (at) => series(`p${at}`)) + resistor('p'),
    loops: `  l: { path: [unit, ${upTo(count, (at) => `p${at}`).join(', ')}, p] }\n`,
    steps: `${powerOff}${lines(count, (at) => `  - replace: p${at}\n`)}  - reconnect: battery\n  - ignition: on\n  - read: l\n`,
  }),
});

/** Loops through one connector, which is opened and mated again and again. */
export const loopsOfOneConnector = (loops: number, steps: number): LargeFile => ({
  text: procedureOf({
    instruments: monitor(),
    parts: lines(loops, (at) => stage(`s${at}`)),
    connectors: connector('K'),
    loops: lines(
      loops,
      (at) => `  l${at}: { path: [unit, K, s${at}], pins: { K: [${2 * at}, ${2 * at + 1}] } }\n`,
    ),
    steps: `${powerOff}  - wait: 1 min\n${lines(steps, (at) => `  - ${at % 2 === 0 ? 'unplug' : 'plug'}: K\n`)}`,
  }),
});

/** A monitor that sees leaks, on a loop with a large network that ends at ground. */
export const leaks = (size: number): LargeFile => ({
  text: procedureOf({
    instruments: `  unit: { kind: monitor, range: 0..10 Ω, accuracy: 3 %, resolution: 0.01 Ω, leak: below 1 kΩ }\n`,
    parts: lines(2 * size, (at) => resistor(`p${at}`)) + resistor('p'),
    connectors: connector('K'),
    loops: '  l: { path: [unit, K, p] }\n',
    network:
      element('p0', 'K.end.1', 'n1') +
      lines(size - 1, (at) => element(`p${at + 1}`, `n${at + 1}`, `n${at + 2}`)) +
      lines(size, (at) => element(`p${at + size}`, `n${at + 1}`, 'ground')),
    steps: '  - ignition: on\n  - read: l\n  - unplug: K\n  - read: l\n',
  }),
});
