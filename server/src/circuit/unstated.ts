import type { Span } from '../quantity/quantity.ts';
import type { ConditionRanges } from './conditions.ts';
import type { Element, Network } from './network.ts';
import { voltageWindow } from './lit-window.ts';
import type { Source, VoltageWindow } from './voltage-window.ts';

/** A voltage with what it is computed from. */
export interface VoltageBetween {
  readonly network: Network;
  readonly sources: readonly Source[];
  readonly from: string;
  readonly to: string;
  readonly ranges: ConditionRanges;
}

/**
 * Elements of which only the cold resistance is stated, and on whose hot one a voltage depends: a limit of its window
 * lies more than so many volts from where it would be, were the element as cold under power.
 */
export function hotUnstated(
  voltage: VoltageBetween,
  window: VoltageWindow,
  volts: number,
): readonly Element[] {
  return voltage.network.filter(({ part }, at) => {
    if (part.kind !== 'stated' || part.hot !== 'unstated') return false;
    const { kind, resistance } = part;
    const network = voltage.network.map((element, place) =>
      place === at ? { ...element, part: { kind, resistance } } : element,
    );
    return isMoved(window, windowOf({ ...voltage, network }), volts);
  });
}

/** Ohms that a source may well have inside where nothing is stated: its terminals and leads alone can have as much. */
const mostInside: Span = { least: 0, nominal: 0, most: 0.05 };

/** Whether a voltage depends on what is inside of a source, as far as it is not stated: told as above. */
export function innerMatters(
  voltage: VoltageBetween,
  source: Source,
  window: VoltageWindow,
  volts: number,
): boolean {
  const { source: drawn, inner } = withInner(source, mostInside);
  const sources = voltage.sources.map((one) => (one === source ? drawn : one));
  return isMoved(window, windowOf({ ...voltage, sources, network: [...voltage.network, inner] }), volts);
}

/** A source with what is inside of it as a part between its plus and the terminal. */
export function withInner(
  source: Source,
  resistance: Span,
): { readonly source: Source; readonly inner: Element } {
  const [plus, minus] = source.between;
  const inside = `inside ${source.id}`;
  return {
    source: { ...source, between: [inside, minus] },
    inner: { id: source.id, between: [inside, plus], part: { kind: 'stated', resistance } },
  };
}

export function windowOf({ network, sources, from, to, ranges }: VoltageBetween): VoltageWindow {
  return voltageWindow(network, sources, from, to, ranges);
}

function isMoved(one: VoltageWindow, other: VoltageWindow, volts: number): boolean {
  if (one.kind !== 'number' || other.kind !== 'number') return one.kind !== other.kind;
  const limit = volts * (1 + 1e-9);
  return (
    Math.abs(one.value.least - other.value.least) > limit ||
    Math.abs(one.value.most - other.value.most) > limit
  );
}
