import { usualTolerance, wireBasis } from '../circuit/circuit.ts';
import type { Network, PartModel } from '../circuit/circuit.ts';
import { formatAccuracy, formatQuantity, formatSpan } from '../quantity/quantity.ts';
import type { Monitor, Procedure } from '../text/procedure.ts';
import { ownerOf } from './loop-network.ts';

/** Something that a window rests on and that the circuit itself does not say. */
export interface Assumed {
  readonly what: string;
  readonly value: string;
  readonly source: string;
}

/** What the window of a reading assumes: temperatures, instrument, materials, and how values spread. */
export function assumedOf(procedure: Procedure, network: Network, monitor: Monitor): readonly Assumed[] {
  return [ambient(procedure), ...instrument(monitor), ...materials(network), ...spreads];
}

const inFile = 'stated in this file';

function ambient({ ambient: { assumed, ...span } }: Procedure): Assumed {
  return {
    what: 'ambient temperature',
    value: formatSpan(span, 'temperature'),
    source: assumed ? 'not stated; standard atmospheric range of IEC 60068-1' : inFile,
  };
}

function instrument({ id, accuracy, range }: Monitor): readonly Assumed[] {
  if (accuracy === null || range === null) return [];
  return [
    {
      what: `error of ${id}`,
      value: `at most ${formatAccuracy(accuracy, 'resistance')}, open beyond ${formatQuantity(range.most, 'resistance')}`,
      source: inFile,
    },
  ];
}

function materials(network: Network): readonly Assumed[] {
  const found = new Map<string, Assumed>();
  for (const element of network) {
    const assumed = material(element.part);
    if (assumed !== null) found.set(ownerOf(element), { what: ownerOf(element), ...assumed });
  }
  return [...found.values()];
}

/** What is known of a part beyond its stated values. null: nothing, its resistance is stated as it is. */
function material(model: PartModel): Omit<Assumed, 'what'> | null {
  switch (model.kind) {
    case 'stated':
      return null;
    case 'copper-wire':
      return { value: 'annealed copper, 0.393 % per kelvin', source: wireSources[wireBasis(model.wire)] };
    case 'copper-coil':
      return { value: 'copper winding, (234.5 + t) °C', source: 'IEC 60034-1' };
    case 'preferred': {
      const { least, most } = model.resistance;
      if (least < most) return null;
      const tolerance = `± ${Number((100 * usualTolerance(model.series)).toPrecision(3))} %`;
      return { value: `${tolerance}, usual for ${model.series}`, source: 'IEC 60063' };
    }
    case 'lamp-rating':
      return { value: 'cold, estimated from its rating', source: 'published filaments, 8 to 15 times' };
    case 'thermistor':
      return { value: 'falls with temperature along its curve', source: inFile };
    case 'platinum':
      return { value: `platinum, class ${model.class}`, source: 'IEC 60751' };
  }
}

const wireSources = {
  listed: 'IEC 60028; at most as IEC 60228 class 5',
  unlisted: 'IEC 60028; 5 % less to 20 % more, no standard lists this size',
  gauge: 'IEC 60028, ASTM B258; 15 % less to 10 % more for its strands',
} as const;

const spreads: readonly Assumed[] = [
  {
    what: 'root sum of squares',
    value: 'each value lies evenly in its range; the conductors of one part vary together',
    source: 'JCGM 100, k = 2',
  },
];
