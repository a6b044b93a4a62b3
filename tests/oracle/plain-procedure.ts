import type { Limit, Span } from '../../server/src/quantity/span.ts';
import { plainResistance } from './plain-resistance.ts';
import type { OutcomeName } from '../../server/src/model/finding.ts';
import type {
  Action,
  Connector,
  Expect,
  Hands,
  Load,
  Loop,
  Mentioned,
  MeterRange,
  Monitor,
  Moved,
  Multimeter,
  Outcome,
  Part,
  Place,
  Probed,
  Procedure,
  Source,
  Step,
  Target,
  Terminal,
} from '../../server/src/model/procedure.ts';

/*
 * A procedure as a plain object of the file format, and its typed form, read by the few shapes that the oracle's own
 * tests and its random procedures use. It trusts what it is given: it is a tool of tests, not a reader of files.
 */

export type PlainStep = Readonly<Record<string, unknown>>;

type Entries = Readonly<Record<string, Readonly<Record<string, unknown>>>>;

export interface PlainProcedure {
  readonly format: 1;
  readonly title: string;
  readonly conditions?: { readonly ambient: string };
  readonly sources: Entries;
  readonly instruments: Entries;
  readonly loads: Entries;
  readonly parts: Entries;
  readonly connectors: Entries;
  readonly loops: Entries;
  readonly steps: readonly PlainStep[];
}

const PREFIX: Readonly<Record<string, number>> = { '': 1, m: 1e-3, µ: 1e-6, k: 1e3, M: 1e6 };

function inUnit(number: string, prefix: string | undefined): number {
  return Number(number) * (PREFIX[prefix ?? ''] ?? Number.NaN);
}

export function plainSpan(text: string): Span {
  const between = /^([\d.]+?)\.\.([\d.]+) ([mµkM]?)(Ω|V|A|F|m|K|°C)$/.exec(text);
  if (between) {
    const least = inUnit(between[1] ?? '', between[3]);
    const most = inUnit(between[2] ?? '', between[3]);
    return { least, nominal: (least + most) / 2, most };
  }
  const around = /^([\d.]+) ([mµkM]?)(?:Ω|V|A|F|m|K|°C)(?: ± ([\d.]+) %)?$/.exec(text);
  if (!around) throw new Error(`The oracle does not read the quantity "${text}".`);
  const nominal = inUnit(around[1] ?? '', around[2]);
  const share = Number(around[3] ?? '0') / 100;
  return { least: nominal * (1 - share), nominal, most: nominal * (1 + share) };
}

function plainLimit(text: string): Limit {
  const value = plainSpan(text.replace(/^(below|above) /, '')).nominal;
  return text.startsWith('below') ? { below: value } : { above: value };
}

function seconds(text: string): number {
  const read = /^([\d.]+) (s|min)$/.exec(text);
  if (!read) throw new Error(`The oracle does not read the time "${text}".`);
  return Number(read[1]) * (read[2] === 'min' ? 60 : 1);
}

const text = (value: unknown): string => {
  if (typeof value === 'string') return value;
  throw new Error(`The oracle expected text, not ${JSON.stringify(value)}.`);
};
const list = (value: unknown): string[] =>
  value === undefined ? [] : Array.isArray(value) ? value.map((each) => String(each)) : [text(value)];
const spanOrNull = (value: unknown): Span | null => (value === undefined ? null : plainSpan(text(value)));
const limitOrNull = (value: unknown): Limit | null => (value === undefined ? null : plainLimit(text(value)));

function table<T>(entries: Entries, group: string, make: (id: string, plain: Entries[string]) => T) {
  return new Map(
    Object.entries(entries).map(([id, plain]) => [id, { id, path: [group, id], ...make(id, plain) }]),
  );
}

type Without<T> = T extends unknown ? Omit<T, 'id' | 'path'> : never;

function ofKind(entries: Entries, kind: string): Entries {
  return Object.fromEntries(Object.entries(entries).filter(([, entry]) => entry.kind === kind));
}

function source(plain: Entries[string]): Without<Source> {
  const reserve = plain.reserve as Readonly<Record<string, string>> | undefined;
  const isHigh = plain.kind === 'high-voltage';
  const safeBelow = plainSpan(text(plain['safe-below'] ?? '60 V'));
  const common = {
    voltage: spanOrNull(plain.voltage),
    feeds: list(plain.feeds),
    feedsComplete: true,
    resistance: 'unstated',
    wait: plain.wait === undefined ? 'unstated' : seconds(text(plain.wait)),
    reserve:
      reserve === undefined
        ? 'unstated'
        : {
            capacitance: plainSpan(text(reserve.capacitance)),
            chargedTo: plainSpan(text(reserve['charged-to'])),
            bleed: plainSpan(text(reserve.bleed)),
            safeBelow: isHigh ? safeBelow : plainSpan(text(reserve['safe-below'])),
          },
  } as const;
  return isHigh
    ? { kind: 'high-voltage', ...common, isolatedBy: text(plain['isolated-by']), safeBelow }
    : { kind: 'battery', ...common };
}

function meterRange(plain: Readonly<Record<string, unknown>>): MeterRange {
  const accuracy = /^([\d.]+) % \+ (?:(\d+) digits|(.+))$/.exec(text(plain.accuracy));
  if (!accuracy) throw new Error('The oracle reads an accuracy only as "3 % + 0.1 Ω" or "3 % + 2 digits".');
  const constant = accuracy[3] === undefined ? 0 : plainSpan(accuracy[3]).nominal;
  return {
    range: spanOrNull(plain.range),
    accuracy: { fraction: Number(accuracy[1]) / 100, constant, digits: Number(accuracy[2] ?? '0') },
    resolution: plainSpan(text(plain.resolution)).nominal,
  };
}

function multimeter(plain: Entries[string]): Omit<Multimeter, 'id' | 'path'> {
  const voltage = plain.voltage as Readonly<Record<string, unknown>>;
  return {
    kind: 'multimeter',
    resistance: null,
    voltage: { ...meterRange(voltage), input: spanOrNull(voltage.input) },
    insulation: null,
    current: null,
    clamp: null,
    leads: null,
    zeroed: false,
  };
}

function monitor(plain: Entries[string]): Omit<Monitor, 'id' | 'path'> {
  const codes = (plain.codes ?? {}) as Readonly<Record<string, string>>;
  const leak = limitOrNull(plain.leak);
  return {
    kind: 'monitor',
    ...meterRange(plain),
    testCurrent: spanOrNull(plain['test-current']),
    tooLow: limitOrNull(codes['too-low']),
    tooHigh: limitOrNull(codes['too-high']),
    leakBelow: leak !== null && 'below' in leak ? leak.below : null,
  };
}

function part(plain: Entries[string]): Omit<Part, 'id' | 'path'> {
  const kind = plain.kind as Part['kind'];
  return {
    kind,
    form: kind === 'cable' || kind === 'rotary-coupling' || kind === 'series' ? 'two-conductor' : 'end',
    resistance: plainResistance(plain),
    live: plain.live === true,
    statedInert: plain.live === false,
    noFire: spanOrNull(plain['no-fire']),
    voltage: spanOrNull(plain.voltage),
    draws: null,
    wiper: null,
    withstands: null,
  };
}

function connector(plain: Entries[string]): Omit<Connector, 'id' | 'path'> {
  const bar = plain['shorting-bar'] as Readonly<Record<string, unknown>> | undefined;
  const [first, second] = list(bar?.pins);
  return {
    contact: spanOrNull(plain.contact),
    sides: ['monitor', 'end'],
    carries: list(plain.carries),
    withstands: null,
    shortingBar:
      bar === undefined
        ? null
        : {
            side: bar.side as string,
            closes: bar.closes as 'unlocked' | 'unplugged',
            resistance: spanOrNull(bar.resistance),
            pins: first === undefined || second === undefined ? null : [first, second],
          },
  };
}

function loop(plain: Entries[string], connectors: Entries): Omit<Loop, 'id' | 'path'> {
  const [first, ...rest] = list(plain.path);
  const pins = (plain.pins ?? {}) as Readonly<Record<string, readonly number[]>>;
  const named = rest.filter((id) => id in connectors);
  return {
    monitor: first ?? null,
    elements: rest.map((id) => ({ kind: id in connectors ? ('connector' as const) : ('part' as const), id })),
    complete: true,
    pins: new Map(named.map((id) => [id, [String(pins[id]?.[0] ?? 1), String(pins[id]?.[1] ?? 2)] as const])),
  };
}

const textKeys = ['note', 'why', 'notice', 'caution', 'warning', 'danger'] as const;

function textsOf(step: PlainStep): Partial<Record<(typeof textKeys)[number], string>> {
  return Object.fromEntries(textKeys.filter((key) => key in step).map((key) => [key, text(step[key])]));
}

function isolator(plain: PlainProcedure, source: string): string | null {
  const named = plain.sources[source]?.['isolated-by'];
  return named === undefined ? null : text(named);
}

function probed(at: unknown): Probed {
  const terminal = (written: string): Terminal => {
    const [connector = '', side, pin = ''] = written.split('.');
    return { connector, side: side ?? '', pin };
  };
  const [one = '', other] = list(at);
  if (other !== undefined) return [terminal(one), terminal(other)];
  const { connector: id, side } = terminal(one);
  return { connector: id, side };
}

/** The typed form of a plain procedure: what the text layer is to make of its YAML. */
export function typedProcedure(plain: PlainProcedure): Procedure {
  const loops: ReadonlyMap<string, Loop> = table(plain.loops, 'loops', (_, entry) =>
    loop(entry, plain.connectors),
  );
  const written = plain.steps
    .map((step, index) => ({ step, index }))
    .filter(({ step }) => !('section' in step));
  const target = (name: string, number: number): Target => {
    if (name === 'next') return number < written.length ? number : 'end';
    const at = written.findIndex(({ step }) => step.id === name);
    return at < 0 ? null : at;
  };
  const place = (side: string, named: unknown): Place => {
    const [id = '', which] = side.split('.');
    const through = [...loops.values()].filter((each) => each.elements.some((element) => element.id === id));
    const only = through.length === 1 ? through[0] : undefined;
    return {
      connector: id,
      side: which ?? '',
      loop: named === undefined ? (only?.id ?? null) : text(named),
    };
  };
  const outcomes = (plainStep: PlainStep, number: number): Outcome[] | null => {
    const stated = plainStep.outcomes as Readonly<Record<string, unknown>> | undefined;
    if (stated === undefined) return null;
    return Object.entries(stated).flatMap(([name, to]): Outcome[] =>
      typeof to === 'string'
        ? [{ name: name as OutcomeName, target: target(to, number), path: [] }]
        : Object.entries(to as Readonly<Record<string, string>>).map(([each, where]) => ({
            name: each as OutcomeName,
            of: name,
            target: target(where, number),
            path: [],
          })),
    );
  };
  const expected = (value: unknown): Expect | null => {
    if (value === undefined) return null;
    if (value === 'open') return 'open';
    return /^(below|above) /.test(text(value)) ? plainLimit(text(value)) : plainSpan(text(value));
  };
  const mentioned = (named: unknown, key: string): Mentioned[] =>
    list(named).map((id, index) => ({
      id,
      members: [id],
      place: Array.isArray(named) ? [key, index] : [key],
    }));
  const hands = (named: unknown): Hands =>
    named === undefined ? 'not said' : named === 'nothing' ? named : mentioned(named, 'at');
  const action = (plainStep: PlainStep, number: number): Action => {
    const of = (verb: string): string => text(plainStep[verb]);
    if ('ignition' in plainStep) return { verb: 'ignition', to: of('ignition') as 'on' | 'off' | 'cycle' };
    if ('disconnect' in plainStep)
      return {
        verb: 'disconnect',
        source: of('disconnect'),
        connector: isolator(plain, of('disconnect')),
      };
    if ('reconnect' in plainStep)
      return { verb: 'reconnect', source: of('reconnect'), connector: isolator(plain, of('reconnect')) };
    if ('prove-dead' in plainStep)
      return {
        verb: 'prove-dead',
        source: of('prove-dead'),
        at: probed(plainStep.at),
        with: of('with'),
        known: of('known'),
        outcomes: outcomes(plainStep, number) ?? [],
      };
    if ('wait' in plainStep) return { verb: 'wait', seconds: seconds(of('wait')) };
    if ('unlock' in plainStep) return { verb: 'unlock', connector: of('unlock') };
    if ('unplug' in plainStep) return { verb: 'unplug', connector: of('unplug') };
    if ('plug' in plainStep) return { verb: 'plug', connector: of('plug') };
    if ('fit' in plainStep) return { verb: 'fit', load: of('fit'), at: place(of('at'), plainStep.loop) };
    if ('remove' in plainStep) return { verb: 'remove', load: of('remove') };
    if ('move' in plainStep) return { verb: 'move', load: of('move'), to: place(of('to'), plainStep.loop) };
    if ('wiggle' in plainStep)
      return {
        verb: 'wiggle',
        by: 'monitor',
        moved: list(plainStep.wiggle).map((named, at): Moved => {
          const [id = '', side] = named.split('.');
          const where = Array.isArray(plainStep.wiggle) ? ['wiggle', at] : ['wiggle'];
          return { id, ...(side === undefined ? {} : { side }), place: where };
        }),
        seconds: seconds(of('for')),
        loops: [of('watch')],
        expect: expected(plainStep.expect),
        windows: [],
        outcomes: outcomes(plainStep, number),
      };
    if ('read' in plainStep)
      return {
        verb: 'read',
        loops: list(plainStep.read),
        expect: expected(plainStep.expect),
        windows: [],
        outcomes: outcomes(plainStep, number),
      };
    if ('read-codes' in plainStep)
      return { verb: 'read-codes', monitor: of('read-codes'), outcomes: outcomes(plainStep, number) };
    if ('clear-codes' in plainStep) return { verb: 'clear-codes', monitor: of('clear-codes') };
    if ('inspect' in plainStep)
      return {
        verb: 'inspect',
        text: of('inspect'),
        at: hands(plainStep.at),
        of: mentioned(plainStep.of, 'of'),
        outcomes: outcomes(plainStep, number),
      };
    if ('do' in plainStep)
      return { verb: 'do', text: of('do'), at: hands(plainStep.at), of: mentioned(plainStep.of, 'of') };
    if ('replace' in plainStep) return { verb: 'replace', what: mentioned(plainStep.replace, 'replace') };
    if ('conclude' in plainStep)
      return {
        verb: 'conclude',
        what: plainStep.conclude === 'none' ? 'none' : mentioned(plainStep.conclude, 'conclude'),
      };
    if ('go' in plainStep) return { verb: 'go', to: target(of('go'), number) };
    if ('stop' in plainStep) return { verb: 'stop', text: of('stop'), leaves: list(plainStep.leaves) };
    return { verb: 'broken' };
  };
  return {
    file: 'random.procedure.yaml',
    elsewhere: new Map(),
    assemblies: new Map(),
    routines: new Map(),
    waivers: [],
    title: plain.title,
    isExample: false,
    appliesTo: null,
    revision: null,
    purpose: null,
    requires: { training: [], protective: [], information: [] },
    ambient: {
      ...plainSpan(plain.conditions?.ambient ?? '10..35 °C'),
      assumed: plain.conditions === undefined,
    },
    entries: new Map(),
    regulated: new Map(),
    network: { elements: [], complete: true },
    sources: table(plain.sources, 'sources', (_, entry) => source(entry)),
    monitors: table(ofKind(plain.instruments, 'monitor'), 'instruments', (_, entry) => monitor(entry)),
    multimeters: table(ofKind(plain.instruments, 'multimeter'), 'instruments', (_, entry) =>
      multimeter(entry),
    ),
    loads: table(plain.loads, 'loads', (_, entry): Omit<Load, 'id' | 'path'> => ({
      kind: entry.kind as Load['kind'],
      resistance: plainResistance(entry),
      opensShortingBar: entry['opens-shorting-bar'] === true,
      withstands: null,
    })),
    parts: table(plain.parts, 'parts', (_, entry) => part(entry)),
    connectors: table(plain.connectors, 'connectors', (_, entry) => connector(entry)),
    loops,
    steps: written.map(({ step, index }, at): Step => ({
      number: at + 1,
      index: at,
      file: 'random.procedure.yaml',
      calls: [],
      path: ['steps', index],
      ...(typeof step.id === 'string' ? { id: step.id } : {}),
      ...textsOf(step),
      ...action(step, at + 1),
    })),
  };
}
