import type { Measuring } from '../bench/asked.ts';
import { formatQuantity } from '../quantity/quantity.ts';
import type { Probe, Procedure } from '../model/procedure.ts';
import type { Words } from './model.ts';
import type { Said } from './sentences.ts';
import { listedIds } from './words.ts';

/** What a `measure` step says: which probe goes where, and what has to be so before and meanwhile. */
export function sayMeasure(procedure: Procedure, step: Measuring): Said {
  const said = sayProbes(procedure, step);
  if (step.drawing.length === 0) return said;
  const names = listedIds(step.drawing, 'and');
  const current = step.drawing.length === 1 ? 'its current' : 'their currents';
  return {
    ...said,
    details: [[...names, ` must draw ${current} while you measure: have it switched on.`], ...said.details],
  };
}

function sayProbes({ multimeters }: Procedure, step: Measuring): Said {
  const [first, second] = step.across;
  const meter: Words = [{ id: step.with }];
  switch (step.quantity) {
    case 'voltage':
      return {
        kind: 'read',
        action: [
          'Measure the DC voltage with ',
          ...meter,
          ': red probe on ',
          ...pointWords(first),
          ', black probe on ',
          ...pointWords(second),
          '.',
        ],
        details: [
          [
            'The reading is above zero when the red probe is the more positive. Keep your fingers behind the guards of the probes.',
          ],
        ],
        blanks: [],
      };
    case 'current':
      return {
        kind: 'read',
        action:
          step.carrying?.kind === 'clamp'
            ? [
                'Measure the current with the clamp of ',
                ...meter,
                ' around ',
                { id: step.carrying.part },
                ' alone, its arrow from ',
                ...pointWords(first),
                ' to ',
                ...pointWords(second),
                '.',
              ]
            : [
                'Measure the current with ',
                ...meter,
                ' in series: red lead on ',
                ...pointWords(first),
                ', black lead on ',
                ...pointWords(second),
                '.',
              ],
        details: [
          step.carrying?.kind === 'clamp'
            ? ['Before: set the display to zero with the clamp closed and around nothing.']
            : [
                'Put the leads into the sockets for currents first. While they are there, touch nothing else with them.',
              ],
        ],
        blanks: [],
      };
    case 'insulation': {
      const volts = formatQuantity(step.tester?.volts ?? 0, 'voltage');
      return {
        kind: 'read',
        action: [`Measure the insulation at ${volts} with `, ...meter, ...betweenWords(first, second), '.'],
        details: [
          [`${volts} lie on all that hangs on the probes: keep hands and other people away from it.`],
          [
            step.tester?.discharged === true
              ? 'Hold the probes there until the instrument shows that what it charged is discharged.'
              : 'It stays charged when the probes are lifted.',
          ],
        ],
        blanks: [],
      };
    }
    case 'resistance': {
      const zeroed = multimeters.get(step.with)?.zeroed === true;
      return {
        kind: 'read',
        action: ['Measure the resistance with ', ...meter, ...betweenWords(first, second), '.'],
        details: zeroed
          ? [['Before: hold the probes together and set the display to zero.']]
          : [
              [
                'Write down what the display shows. Do not subtract the resistance of the leads: the window includes it.',
              ],
            ],
        blanks: [],
      };
    }
  }
}

function betweenWords(first: Probe, second: Probe): Words {
  const isOneSide =
    !('node' in first) &&
    !('node' in second) &&
    first.connector === second.connector &&
    first.side === second.side;
  if (!isOneSide) return [' between ', ...pointWords(first), ' and ', ...pointWords(second)];
  return [
    ' at ',
    { id: first.connector },
    `, ${first.side} side, between pins ${first.pin} and ${second.pin}`,
  ];
}

function pointWords(probe: Probe): Words {
  if ('node' in probe) return probe.node === 'ground' ? ['ground'] : ['point ', { id: probe.node }];
  return [{ id: probe.connector }, `, ${probe.side} side, pin ${probe.pin}`];
}
