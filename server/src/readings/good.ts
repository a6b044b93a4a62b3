import type { Effort } from '../paths/effort.ts';
import { hardwareKey } from '../bench/hardware.ts';
import { nameGroups } from '../bench/name-groups.ts';
import { powerKey } from '../bench/power.ts';
import {
  currentWindow,
  hotUnstated,
  indicateSigned,
  innerMatters,
  inputOf,
  senseOhms,
  sensedBy,
  leakSeen,
  leakWindow,
  networkWindow,
  windowOf,
} from '../circuit/circuit.ts';
import type {
  ConditionRanges,
  InCurrent,
  Indication,
  VoltageBetween,
  VoltageWindow,
} from '../circuit/circuit.ts';
import type { Span } from '../quantity/span.ts';
import type { Carrying, Id, Procedure } from '../model/procedure.ts';
import { quantityFacts } from '../model/quantity-kinds.ts';
import { conditionsOf } from './conditions.ts';
import { ammeterOf, indicationOf, voltmeterOf } from './instruments.ts';
import type { LoopBench } from './loop-bench.ts';
import { ownerOf } from './loop-network.ts';
import type { Seen, Subject } from './subject.ts';

/** What a circuit without a fault reads on a bench. */
export interface Good {
  /** Ohms or volts between the two points; `unknown` where a value could not be read or something is in the way. */
  readonly circuit: Span | 'open' | 'unknown';
  /** What the instrument can show, before its display step; null: unknown. */
  readonly indication: Indication | null;
  /** Both ends are met by some circuit within the limits; else no circuit passes them. */
  readonly exact: boolean;
  /** Whether a monitor reports a path to ground or a supply. */
  readonly leak: 'always' | 'sometimes' | 'never';
  /** Nothing but the instrument connects the two points: the voltage that it shows says nothing of a circuit. */
  readonly floating: boolean;
  /** Voltage sources whose terminals are joined: they cannot be as stated, and nothing can be said. */
  readonly conflict: readonly string[];
  /** Values that are not stated and on which the voltage depends: it is unknown then. */
  readonly missing: readonly Missing[];
  /** A consumer of which it is not known whether any voltage is left for it. */
  readonly undecided: string | null;
}

/** Of a lamp or heater what it has under power; of a source what is inside of it. */
export interface Missing {
  readonly value: 'hot' | 'inner';
  readonly of: Id;
}

export type GoodReadings = (subject: Subject, bench: LoopBench) => Good;

const unknown: Good = {
  circuit: 'unknown',
  indication: null,
  exact: true,
  leak: 'never',
  floating: false,
  conflict: [],
  missing: [],
  undecided: null,
};

/** Good readings of a procedure, each computed once for a bench. */
export function goodReadings(procedure: Procedure, { spend }: Effort): GoodReadings {
  const conditions = conditionsOf(procedure);
  const known = new WeakMap<Subject, Map<string, Good>>();
  return (subject, bench) => {
    const ofSubject = known.get(subject) ?? new Map<string, Good>();
    known.set(subject, ofSubject);
    const key = goodKey(subject, bench);
    const earlier = ofSubject.get(key);
    if (earlier !== undefined) return earlier;
    spend(workOf(subject));
    const value = goodReading(subject, bench, conditions);
    ofSubject.set(key, value);
    return value;
  };
}

/**
 * What it takes to read a bench once, in the unit of `Effort`: each source is reckoned with alone, each filament by some
 * rounds for each piece of a source's range, and each wiper by as many halvings of where it may be.
 */
export function workOf({ island, quantity, loop, searched }: Subject): number {
  const size = island.loops.reduce((sum, { elements }) => sum + elements.length, island.elements.length);
  const sources = island.elements.filter(({ kind }) => kind === 'source').length;
  const perVoltage = 20 * (sources + 2) * (1 + 32 * searched);
  const perElement = loop !== null ? 20 : !quantityFacts[quantity].byOwnCurrent ? perVoltage : 50;
  return size * perElement;
}

/** Benches with the same key are alike to a subject: power matters only where sources stand in what is read. */
export function goodKey({ island }: Subject, { hardware, power }: LoopBench): string {
  return `${island.sources.length === 0 ? '' : powerKey(power)}/${hardwareKey(hardware)}`;
}

/** The same under other conditions than those that the procedure holds for. */
export function goodReading(subject: Subject, bench: LoopBench, ranges: ConditionRanges): Good {
  const seen = subject.seen(bench);
  return seen === null ? unknown : readingOf(subject, seen, ranges);
}

/** The same of a network that may have been changed. */
export function readingOf(subject: Subject, seen: Seen, ranges: ConditionRanges): Good {
  if (seen.undecided !== undefined) return { ...unknown, undecided: seen.undecided };
  switch (subject.quantity) {
    case 'resistance':
    case 'insulation':
      return goodOhms(subject, seen, ranges);
    case 'voltage':
      return goodVoltage(subject, seen, ranges);
    case 'current':
      return goodCurrent(subject, seen, ranges);
  }
}

function goodOhms({ instrument, island }: Subject, { network, probes }: Seen, ranges: ConditionRanges): Good {
  const { value: circuit, exact } = networkWindow(network, probes[0], probes[1], ranges);
  const indication = instrument === null ? null : indicationOf(circuit, instrument);
  const below = instrument?.leakBelow ?? null;
  const outside = below === null ? [] : outsideOf(island);
  const leak =
    below === null || outside.length === 0
      ? 'never'
      : leakSeen(leakWindow(network, probes, outside, ranges), below);
  return { ...unknown, circuit, indication, exact, leak };
}

/** What counts as ground or a supply to a monitor: the nodes of the sources, and ground. */
function outsideOf({ elements }: Subject['island']): readonly string[] {
  const nodes = elements.flatMap(({ kind, between }) =>
    kind === 'source' ? between : between.filter((node) => node === 'ground'),
  );
  return [...new Set(nodes)];
}

function goodVoltage(
  { instrument }: Subject,
  { network, sources, probes: [plus, minus] }: Seen,
  ranges: ConditionRanges,
): Good {
  const meter = instrument === null ? null : voltmeterOf(instrument);
  if (meter === null) return unknown;
  const voltage: VoltageBetween = {
    network: [...network, inputOf(meter, plus, minus)],
    sources,
    from: plus,
    to: minus,
    ranges,
  };
  const window = windowOf(voltage);
  switch (window.kind) {
    case 'conflict':
      return { ...unknown, conflict: window.sources };
    case 'floating':
      return unknown;
    case 'number': {
      const missing = missingIn(voltage, sources, window, meter.resolution);
      if (missing.length > 0) return { ...unknown, missing };
      const { value, exact } = window;
      const floating = !areConnected([...network, ...sources], plus, minus);
      return { ...unknown, circuit: value, indication: indicateSigned(value, meter), exact, floating };
    }
  }
}

/** What a source drives is known once it is known how hot its lamps get, so that is asked first. */
function missingIn(
  voltage: VoltageBetween,
  sources: Seen['sources'],
  window: VoltageWindow,
  step: number,
): readonly Missing[] {
  const cold = hotUnstated(voltage, window, step);
  if (cold.length > 0) return cold.map((element) => ({ value: 'hot', of: ownerOf(element) }));
  return sources
    .filter((source) => !source.innerIsStated && innerMatters(voltage, source, window, step))
    .map(({ id }) => ({ value: 'inner', of: id }));
}

function goodCurrent(
  { instrument, carrying }: Subject,
  { network, sources, probes }: Seen,
  ranges: ConditionRanges,
): Good {
  const meter = instrument === null ? null : ammeterOf(instrument);
  const through = throughMeter(carrying, probes, instrument?.burden ?? null);
  if (meter === null || through === null) return unknown;
  const window = currentWindow(network, sources, through, ranges);
  switch (window.kind) {
    case 'conflict':
      return { ...unknown, conflict: window.sources };
    case 'floating':
      return unknown;
    case 'number': {
      const sensed = sensedBy(network, sources, through, ranges);
      const missing =
        sensed === null ? [] : missingIn(sensed, sources, windowOf(sensed), meter.resolution * senseOhms);
      if (missing.length > 0) return { ...unknown, missing };
      const { value, exact } = window;
      return { ...unknown, circuit: value, indication: indicateSigned(value, meter), exact };
    }
  }
}

/** null: the ohms of the instrument could not be read. */
function throughMeter(
  carrying: Carrying | null,
  nodes: readonly [string, string],
  burden: Span | null,
): InCurrent | null {
  if (carrying?.kind === 'clamp') return { kind: 'around', element: carrying.part };
  return burden === null ? null : { kind: 'between', nodes, burden };
}

function areConnected(
  links: readonly { readonly between: readonly [string, string] }[],
  one: string,
  other: string,
): boolean {
  const { of } = nameGroups(links);
  return of(one) === of(other);
}
