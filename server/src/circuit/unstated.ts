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
