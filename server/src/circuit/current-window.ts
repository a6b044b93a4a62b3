import type { Span } from '../quantity/quantity.ts';
import type { ConditionRanges } from './conditions.ts';
import type { Network } from './network.ts';
import { windowOf } from './unstated.ts';
import type { VoltageBetween } from './unstated.ts';
import type { Source, VoltageWindow } from './voltage-window.ts';

/** How an instrument stands in a circuit whose current it shows. */
export type InCurrent =
  /** Around an element: nothing changes. The current from its first node to its second counts as positive. */
  | { readonly kind: 'around'; readonly element: string }
  /** Between two nodes that are apart, with the ohms of the instrument. The current into it at the first counts as positive. */
  | { readonly kind: 'between'; readonly nodes: readonly [string, string]; readonly burden: Span };

/**
 * Ohms of what stands in the way of the current and is read: far below the last digit of any wire, and far above what a
 * joint counts as.
 */
export const senseOhms = 1e-12;

const behind = 'behind the sense';

/**
 * The current that an instrument carries or is around, in ampere, for every value that parts, sources and temperatures may
 * take; an open circuit carries none. It is the voltage across a resistance that is too small to change anything, so its
 * corners are found as those of a voltage are.
 */
export function currentWindow(
  network: Network,
  sources: readonly Source[],
  instrument: InCurrent,
  ranges: ConditionRanges,
): VoltageWindow {
  const sensed = sensedBy(network, sources, instrument, ranges);
  if (sensed === null) return { kind: 'floating' };
  const window = windowOf(sensed);
  if (window.kind !== 'number') return window;
  const amperes = (volts: number): number => volts / senseOhms;
  const { least, nominal, most } = window.value;
  return {
    ...window,
    value: { least: amperes(least), nominal: amperes(nominal), most: amperes(most) },
  };
}

/** The voltage that stands for a current. null: there is no such element. */
export function sensedBy(
  network: Network,
  sources: readonly Source[],
  instrument: InCurrent,
  ranges: ConditionRanges,
): VoltageBetween | null {
  const built = withSense(network, instrument);
  return built === null ? null : { network: built.network, sources, from: built.from, to: behind, ranges };
}

/** null: there is no such element. */
function withSense(
  network: Network,
  instrument: InCurrent,
): { readonly network: Network; readonly from: string } | null {
  const sense = (from: string): Network[number] => ({
    id: 'sense of the meter',
    between: [from, behind],
    part: { kind: 'stated', resistance: { least: senseOhms, nominal: senseOhms, most: senseOhms } },
  });
  switch (instrument.kind) {
    case 'between': {
      const [from, to] = instrument.nodes;
      const input = { kind: 'stated', resistance: instrument.burden } as const;
      return {
        network: [...network, sense(from), { id: 'burden of the meter', between: [behind, to], part: input }],
        from,
      };
    }
    case 'around': {
      const clamped = network.find(({ id }) => id === instrument.element);
      if (clamped === undefined) return null;
      const [from, to] = clamped.between;
      const others = network.filter((element) => element !== clamped);
      return { network: [...others, { ...clamped, between: [behind, to] }, sense(from)], from };
    }
  }
}
