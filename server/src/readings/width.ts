import type { Hardware } from '../bench/hardware.ts';
import { networkWindow, resistanceWithin } from '../circuit/circuit.ts';
import type { ConditionRanges, Element, PartModel } from '../circuit/circuit.ts';
import type { Id, Loop, Procedure } from '../text/procedure.ts';
import { loopNetwork } from './loop-network.ts';

/** How far one thing alone, all others at nominal, moves a reading: half the width, in ohms. */
export interface Contribution {
  readonly of: Id;
  readonly halfWidth: number;
}

/** Where the width of a sound loop's resistance comes from, the greatest first; empty where it is not known. */
export function contributions(procedure: Procedure, loop: Loop, hardware: Hardware): readonly Contribution[] {
  const compiled = loopNetwork(procedure, loop, hardware);
  if (compiled === null) return [];
  const { network, probes } = compiled;
  const ranges: ConditionRanges = { ambient: procedure.ambient, entered: new Map() };
  const owners = [...new Set(network.map(ownerOf))];
  const found = owners.map((of): Contribution => {
    const frozen = network.map((element) => (ownerOf(element) === of ? element : atNominal(element, ranges)));
    const window = networkWindow(frozen, probes[0], probes[1], ranges);
    return { of, halfWidth: window === 'open' ? 0 : (window.most - window.least) / 2 };
  });
  return found.filter(({ halfWidth }) => halfWidth > 0).toSorted((a, b) => b.halfWidth - a.halfWidth);
}

/** The id of the part, connector or load that an element belongs to. */
function ownerOf({ id }: Element): Id {
  return id.split('.')[0] ?? id;
}

function atNominal(element: Element, ranges: ConditionRanges): Element {
  const { nominal } = resistanceWithin(element.part, ranges);
  const part: PartModel = { kind: 'stated', resistance: { least: nominal, nominal, most: nominal } };
  return { ...element, part };
}
