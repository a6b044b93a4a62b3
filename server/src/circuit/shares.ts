import type { Span } from '../quantity/quantity.ts';
import type { ConditionRanges } from './conditions.ts';
import { flowBetween } from './flow.ts';
import { withError } from './instrument.ts';
import type { Instrument } from './instrument.ts';
import type { Network } from './network.ts';
import { numbered } from './numbered.ts';
import type { PartModel, TrackModel } from './parts.ts';
import { atEndOf, resistanceWithin } from './parts.ts';

/** How much of the width of a reading comes from each element, from the leads and from the instrument's error: all sum to 1. */
export interface Shares {
  /** In the order of the network. */
  readonly elements: readonly number[];
  readonly leads: number;
  readonly instrument: number;
}

/**
 * The share of an element is the square of the part of the current that goes through it, at nominal, times its width from
 * its least to its most; leads and instrument stand in series and take all of the current. null: no path at nominal, or
 * nothing has a width.
 */
export function sharesOfWidth(
  network: Network,
  from: string,
  to: string,
  ranges: ConditionRanges,
  instrument: Instrument,
): Shares | null {
  const whole = numbered(network, from, to);
  const edges = whole.edgesWith(({ part }) => resistanceWithin(part, ranges).nominal);
  const flow = flowBetween(edges, whole.nodes, whole.from, whole.to);
  if (flow === null) return null;
  const parts = network.map((_, index) => (flow.amperes[index] ?? 0) ** 2);
  const widths = network.map(({ part }, index) =>
    part.kind === 'track' ? trackWidth(part, network, parts) : (parts[index] ?? 0) * widthOf(part, ranges),
  );
  const { leads = nothing } = instrument;
  const error = withError(flow.ohms + leads.nominal, instrument);
  const ofLeads = leads.most - leads.least;
  const ofInstrument = error.most - error.least;
  const sum = widths.reduce((total, width) => total + width, ofLeads + ofInstrument);
  if (!(sum > 0)) return null;
  return {
    elements: widths.map((width) => width / sum),
    leads: ofLeads / sum,
    instrument: ofInstrument / sum,
  };
}

const nothing: Span = { least: 0, nominal: 0, most: 0 };

function widthOf(part: PartModel, ranges: ConditionRanges): number {
  const { least, most } = resistanceWithin(part, ranges);
  return most - least;
}

/** Of one side of a wiper half of what its track and its wiper do, which move both sides together. */
function trackWidth({ wiper: { id } }: TrackModel, network: Network, parts: readonly number[]): number {
  const moved = (what: 'track' | 'wiper'): number => {
    const sum = network.reduce((total, { part }, index) => {
      if (part.kind !== 'track' || part.wiper.id !== id) return total;
      return total + (parts[index] ?? 0) * (atEndOf(part, what, 'most') - atEndOf(part, what, 'least'));
    }, 0);
    return Math.abs(sum);
  };
  return (moved('track') + moved('wiper')) / 2;
}
