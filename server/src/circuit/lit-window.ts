import { greatestOf, leastOf } from '../quantity/extremes.ts';
import type { Span } from '../quantity/quantity.ts';
import type { ConditionRanges } from './conditions.ts';
import { filamentResistance } from './lamp.ts';
import type { Network } from './network.ts';
import { numbered } from './numbered.ts';
import { resistanceWithin } from './parts.ts';
import { filamentsIn, litVoltageBetween, poweredNetwork } from './under-power.ts';
import type { Filament, FilamentAt } from './under-power.ts';
import { fixedVoltageWindow } from './voltage-window.ts';
import type { Source, VoltageWindow } from './voltage-window.ts';

/*
 * Voltages with filaments at their operating points. What a filament may have lies between two laws, each of which rises
 * with the voltage across it. So bounds of that voltage give bounds of its resistance, and these narrower bounds of the
 * voltage; every circuit within the limits stays inside of them, from the first bounds on. What one filament has by
 * itself is met; where the probes see it beside what moves it, its bounds and theirs need not be of one circuit, so the
 * window is an outer bound. The range of the source that moves it most is cut, so that it is a narrow one.
 */

/** So many parts the widest range of a source is cut into. */
const pieces = 8;

/** So often bounds are narrowed: each round leaves less than half of what can go. */
const mostRounds = 24;

/** Relative: from here on a bound of a resistance no longer moves. */
const atRest = 1e-9;

/** The voltage of one node above another under power, for every value that parts, sources and temperatures may take. */
export function voltageWindow(
  network: Network,
  sources: readonly Source[],
  from: string,
  to: string,
  ranges: ConditionRanges,
): VoltageWindow {
  const powered = poweredNetwork(network);
  const filaments = filamentsIn(powered);
  if (filaments.length === 0) return fixedVoltageWindow(powered, sources, from, to, ranges);
  const windowWith = (
    bounds: readonly Span[],
    driven: readonly Source[],
    a: string,
    b: string,
  ): VoltageWindow => fixedVoltageWindow(withBounds(powered, filaments, bounds), driven, a, b, ranges);
  const loose = filaments.map(({ rated }) => loosest(rated, sources));
  const outer = windowWith(loose, sources, from, to);
  if (outer.kind !== 'number') return outer;
  const nominal = nominalVoltage(powered, sources, from, to, ranges);
  const anywhere = windowWith(
    loose.map((bounds) => exactly(bounds.nominal)),
    sources,
    from,
    to,
  );
  // The voltage goes one way with each filament: what one value inside of its bounds already reaches does not depend on it.
  if (anywhere.kind === 'number' && isSame(outer.value, anywhere.value))
    return { ...outer, value: { ...outer.value, nominal } };
  const windows = cutWidest(sources).map((driven) => {
    const bounds = narrowed(filaments, loose, (each, [a, b]) => windowWith(each, driven, a, b));
    return windowWith(bounds, driven, from, to);
  });
  const values = windows.flatMap((window) => (window.kind === 'number' ? [window.value] : []));
  return {
    kind: 'number',
    value: {
      least: leastOf(values.map(({ least }) => least)),
      nominal,
      most: greatestOf(values.map(({ most }) => most)),
    },
    exact: false,
  };
}

/** Bounds of each filament, narrowed by the voltage that they leave across it. */
function narrowed(
  filaments: readonly FilamentAt[],
  loose: readonly Span[],
  across: (bounds: readonly Span[], probes: readonly [string, string]) => VoltageWindow,
): readonly Span[] {
  let bounds = loose;
  for (let round = 0; round < mostRounds; round += 1) {
    let moved = 0;
    for (const [index, { element, rated }] of filaments.entries()) {
      const window = across(bounds, element.between);
      const before = bounds[index];
      if (window.kind !== 'number' || before === undefined) continue;
      const [low, high] = sizesOf(window.value);
      const least = Math.max(before.least, filamentResistance(rated, low).least);
      // Rounding must not let the ends pass each other.
      const most = Math.max(least, Math.min(before.most, filamentResistance(rated, high).most));
      moved = Math.max(moved, least / before.least - 1, before.most / most - 1);
      bounds = bounds.with(index, { least, nominal: before.nominal, most });
    }
    if (moved <= atRest) break;
  }
  return bounds;
}

/** How much a voltage of either sign is at least and at most. */
function sizesOf({ least, most }: Span): readonly [number, number] {
  const [one, other] = [Math.abs(least), Math.abs(most)];
  return [least <= 0 && most >= 0 ? 0 : Math.min(one, other), Math.max(one, other)];
}

/** What a filament may have whatever the circuit: from cold up to all voltage and all current of the sources. */
function loosest(rated: Filament, sources: readonly Source[]): Span {
  const sum = (kind: Source['kind']): number =>
    sources.reduce((total, { kind: own, value }) => total + (own === kind ? sizesOf(value)[1] : 0), 0);
  const [volts, amperes] = [sum('voltage'), sum('current')];
  const reachedBy = (assumed: number): number => volts + amperes * filamentResistance(rated, assumed).most;
  let most = Math.max(volts, rated.volts);
  // Its resistance rises more slowly than the voltage, so this ends.
  while (reachedBy(most) > most) most *= 2;
  const cold = filamentResistance(rated, 0);
  const hot = filamentResistance(rated, most);
  return { least: cold.least, nominal: Math.sqrt(cold.least * hot.most), most: hot.most };
}

function withBounds(network: Network, filaments: readonly FilamentAt[], bounds: readonly Span[]): Network {
  const byPlace = new Map(filaments.map(({ at }, index) => [at, bounds[index]]));
  return network.map((element, at) => {
    const resistance = byPlace.get(at);
    return resistance === undefined ? element : { ...element, part: { kind: 'stated', resistance } };
  });
}

function nominalVoltage(
  network: Network,
  sources: readonly Source[],
  from: string,
  to: string,
  ranges: ConditionRanges,
): number {
  const whole = numbered(network, from, to, sources);
  const drives = sources.map(({ between: [plus, minus], kind, value }) => ({
    a: whole.numberOf(plus),
    b: whole.numberOf(minus),
    kind,
    value: value.nominal,
  }));
  const lit = filamentsIn(network).map(({ at, rated }) => ({
    at,
    ohms: (volts: number) => filamentResistance(rated, volts).nominal,
  }));
  const edges = whole.edgesWith(({ part }) => resistanceWithin(part, ranges).nominal);
  return litVoltageBetween(edges, lit, drives, whole.nodes, whole.from, whole.to);
}

/** The source with the widest range in parts of it, side by side. */
function cutWidest(sources: readonly Source[]): readonly (readonly Source[])[] {
  const widths = sources.map(({ value }) => value.most - value.least);
  const widest = widths.indexOf(greatestOf(widths));
  const source = sources[widest];
  if (source === undefined || !((widths[widest] ?? 0) > 0)) return [sources];
  const { least, most, nominal } = source.value;
  const at = (part: number): number => (part === pieces ? most : least + ((most - least) * part) / pieces);
  return Array.from({ length: pieces }, (_, part) =>
    sources.with(widest, { ...source, value: { least: at(part), nominal, most: at(part + 1) } }),
  );
}

function exactly(ohms: number): Span {
  return { least: ohms, nominal: ohms, most: ohms };
}

/** But for rounding. */
function isSame(one: Span, other: Span): boolean {
  const scale = Math.max(sizesOf(one)[1], sizesOf(other)[1]) * 1e-12;
  return Math.abs(one.least - other.least) <= scale && Math.abs(one.most - other.most) <= scale;
}
