import type { Id, MeterRange, Part, Procedure, Source } from '../model/procedure.ts';
import { formatAccuracy, formatQuantity, formatSpan, formatWait } from '../quantity/print.ts';
import { basisInWords, measuresVoltage } from '../readings/basis.ts';
import { resistanceInWords } from '../readings/resistance-in-words.ts';
import { isStage } from '../model/part-kinds.ts';
import { grouped } from '../model/remembered.ts';
import type { Resistance } from '../model/resistance.ts';
import { isHighVoltage } from '../model/source-kinds.ts';
import { valueText } from './drawn.ts';
import type { CardInput, Fact, Words } from './model.ts';
import { digitText, listedIds, sourceWords } from './words.ts';

/** What the windows and the order of work rest on: where the vehicle or the bay differs, the card does not hold. */
export function assumptionsOf(input: CardInput): readonly Fact[] {
  const { procedure } = input;
  return [
    { label: 'Ambient', words: [ambientText(procedure)] },
    ...outerBounds(input),
    ...waits(input),
    ...highVoltage(procedure),
    ...inertStages(procedure),
    ...instruments(procedure),
    ...supplies(procedure),
    ...insideSources(procedure),
    ...contacts(procedure),
    ...shortingBars(procedure),
    ...parts(procedure),
    ...loads(procedure),
    ...entries(procedure),
  ];
}

function ambientText(procedure: Procedure): string {
  const text = formatSpan(procedure.ambient, 'temperature');
  return procedure.ambient.assumed ? `${text} (not stated in the procedure, the usual range)` : text;
}

/** A window that is wider than need be may hold a fault. */
function outerBounds({ readings }: CardInput): readonly Fact[] {
  if (!readings.some(({ isOuter }) => isOuter)) return [];
  const words = [
    'no sound circuit reads outside of it, but not every reading in it is one of a sound circuit',
  ];
  return [{ label: 'An outer bound', words }];
}

function waits(input: CardInput): readonly Fact[] {
  return input.owed.map(({ source, seconds }) => {
    const stated = input.procedure.sources.get(source);
    const from = stated === undefined ? '' : ` (${waitOrigin(stated, seconds)})`;
    const words: Words =
      seconds > 0
        ? [
            'once it is off, ',
            { strong: formatWait(seconds) },
            ` before anyone touches a live circuit${from}`,
          ]
        : [{ strong: 'no wait (0 s)' }, ` before anyone touches a live circuit${from}`];
    return { label: `Wait after ${plainSource(input.procedure, source)}`, words };
  });
}

function plainSource(procedure: Procedure, id: Id): string {
  return sourceWords(procedure, id)
    .map((piece) => (typeof piece === 'string' ? piece : 'id' in piece ? piece.id : ''))
    .join('');
}

function waitOrigin({ wait, reserve }: Source, seconds: number): string {
  const readable = reserve !== null && reserve !== 'unstated';
  const values = readable
    ? `${formatSpan(reserve.capacitance, 'capacitance')} from ${formatSpan(reserve.chargedTo, 'voltage')} to ${formatSpan(reserve.safeBelow, 'voltage')} through ${formatSpan(reserve.bleed, 'resistance')}`
    : '';
  if (typeof wait === 'number' && wait >= seconds)
    return readable
      ? `stated in the procedure; the reserve, ${values}, needs no longer`
      : 'stated in the procedure';
  return readable ? `computed from the reserve, ${values}` : 'where it comes from is not known';
}

function highVoltage({ sources, connectors }: Procedure): readonly Fact[] {
  return [...sources.values()].flatMap((source): readonly Fact[] => {
    if (!isHighVoltage(source)) return [];
    const { id, voltage, isolatedBy, safeBelow } = source;
    const carriers = [...connectors.values()].filter(({ carries }) => carries.includes(id));
    const words: Words = [
      { id },
      voltage === null ? '' : `, ${formatSpan(voltage, 'voltage')}`,
      ...(isolatedBy === null ? [] : [', isolated by opening ', { id: isolatedBy }]),
      ...(carriers.length === 0
        ? []
        : [
            ', carried by ',
            ...listedIds(
              carriers.map((connector) => connector.id),
              'and',
            ),
          ]),
      safeBelow === null
        ? ''
        : `, its circuit counts as without voltage below ${formatQuantity(safeBelow.least, 'voltage')}`,
    ];
    return [{ label: 'High voltage', words }];
  });
}

function inertStages(procedure: Procedure): readonly Fact[] {
  const ids = [...procedure.parts.values()].filter((part) => isStage(part) && !part.live).map(({ id }) => id);
  if (ids.length === 0) return [];
  return [
    {
      label: 'Taken as inert',
      words: [
        ...listedIds(ids, 'and'),
        ': stated as ',
        { strong: 'live: false' },
        ', a part that cannot fire. No rule for live stages was applied to it.',
      ],
    },
  ];
}

function instruments(procedure: Procedure): readonly Fact[] {
  return [
    ...monitors(procedure),
    ...ohmmeters(procedure),
    ...voltmeters(procedure),
    ...testers(procedure),
    ...ammeters(procedure),
  ];
}

function ohmmeters({ multimeters }: Procedure): readonly Fact[] {
  return [...multimeters.values()].flatMap(({ id, resistance, leads, zeroed }): readonly Fact[] => {
    if (resistance === null) return [];
    const { testCurrent, further } = resistance;
    const figures = [
      ...[resistance, ...further].map(ohmsInWords),
      zeroed ? 'leads zeroed' : leads === null ? '' : `leads ${formatSpan(leads, 'resistance')} together`,
      testCurrent === null ? '' : `test current ${formatSpan(testCurrent, 'current')}`,
    ].filter((figure) => figure !== '');
    return [{ label: 'Instrument', words: [{ id }, ` on ohms: ${figures.join('; ')}`] }];
  });
}

/** `up to 400 Ω error at most 0.8 % + 3 digits, last digit 0.1 Ω`. */
function ohmsInWords({ range, accuracy, resolution }: MeterRange): string {
  const figures = [
    accuracy === null ? '' : `error at most ${formatAccuracy(accuracy, 'resistance')}`,
    resolution === null ? '' : `last digit ${digitText(resolution)}`,
  ].filter((figure) => figure !== '');
  return `${range === null ? '' : `up to ${formatQuantity(range.most, 'resistance')} `}${figures.join(', ')}`;
}

/** Supplies that hold their voltage: what they need, and what they count as while they are off. */
/** What windows of voltages take as lost inside of a source. */
function insideSources({ sources, regulated }: Procedure): readonly Fact[] {
  return [...sources.values(), ...regulated.values()].flatMap(({ id, resistance }): readonly Fact[] => {
    if (resistance === null || resistance === 'unstated') return [];
    return [{ label: 'Inside of a source', words: [{ id }, `: ${formatSpan(resistance, 'resistance')}`] }];
  });
}

function supplies({ regulated }: Procedure): readonly Fact[] {
  return [...regulated.values()].map(({ id, voltage, from, needsIgnition }) => {
    const volts = voltage === null ? '' : `: ${formatSpan(voltage, 'voltage')}`;
    const source: Words = from === null ? [] : [', on while ', { id: from }, ' is connected'];
    const ignition = needsIgnition ? ' and the ignition is on' : '';
    return {
      label: 'Supply',
      words: [{ id }, volts, ...source, `${ignition}; off, it counts as no connection`],
    };
  });
}

function voltmeters({ multimeters }: Procedure): readonly Fact[] {
  return [...multimeters.values()].flatMap(({ id, voltage }): readonly Fact[] => {
    if (voltage === null) return [];
    const { accuracy, resolution, input } = voltage;
    const figures = [
      accuracy === null ? null : `error at most ${formatAccuracy(accuracy, 'voltage')}`,
      resolution === null ? null : `last digit ${digitText(resolution, 'V')}`,
      input === null ? null : `${formatSpan(input, 'resistance')} between its probes`,
    ].filter((figure) => figure !== null);
    return figures.length === 0
      ? []
      : [{ label: 'Instrument', words: [{ id }, ` on volts: ${figures.join(', ')}`] }];
  });
}

function testers({ multimeters }: Procedure): readonly Fact[] {
  return [...multimeters.values()].flatMap(({ id, insulation }): readonly Fact[] => {
    if (insulation === null) return [];
    const { discharge } = insulation;
    const discharges = discharge === null ? '' : `; it discharges in ${formatWait(discharge)}`;
    return [
      { label: 'Instrument', words: [{ id }, ` on insulation: ${ohmsInWords(insulation)}${discharges}`] },
    ];
  });
}

function ammeters({ multimeters }: Procedure): readonly Fact[] {
  return [...multimeters.values()].flatMap(({ id, current, clamp }): readonly Fact[] => {
    const burden = current?.burden ?? null;
    const ways = [
      ['amperes', current, burden === null ? null : `${formatSpan(burden, 'resistance')} between its leads`],
      ['amperes, by its clamp', clamp, null],
    ] as const;
    return ways.flatMap(([on, range, beside]) => {
      if (range === null) return [];
      const { accuracy, resolution } = range;
      const figures = [
        accuracy === null ? null : `error at most ${formatAccuracy(accuracy, 'current')}`,
        resolution === null ? null : `last digit ${digitText(resolution, 'A')}`,
        beside,
      ].filter((figure) => figure !== null);
      return [{ label: 'Instrument', words: [{ id }, ` on ${on}: ${figures.join(', ')}`] }];
    });
  });
}

function monitors(procedure: Procedure): readonly Fact[] {
  return [...procedure.monitors.values()].flatMap((monitor): readonly Fact[] => {
    const { accuracy, resolution, range } = monitor;
    const figures = [
      accuracy === null ? null : `error at most ${formatAccuracy(accuracy, 'resistance')}`,
      resolution === null ? null : `last digit ${digitText(resolution)}`,
      range === null ? null : `reads open beyond ${formatQuantity(range.most, 'resistance')}`,
    ].filter((figure) => figure !== null);
    return figures.length === 0
      ? []
      : [{ label: 'Instrument', words: [{ id: monitor.id }, `: ${figures.join(', ')}`] }];
  });
}

/** Things of which the same is to be said share a line. */
function shared(label: string, said: readonly (readonly [id: Id, text: string])[]): readonly Fact[] {
  const byText = grouped(said.map(([id, text]) => [text, id] as const));
  return [...byText].map(([text, ids]) => ({ label, words: [...listedIds(ids, 'and'), `: ${text}`] }));
}

function contacts({ connectors }: Procedure): readonly Fact[] {
  const said = [...connectors.values()].flatMap(({ id, contact }) =>
    contact === null ? [] : [[id, `${formatSpan(contact, 'resistance')} each pin`] as const],
  );
  return shared('Contact resistance', said);
}

function shortingBars({ connectors }: Procedure): readonly Fact[] {
  const said = [...connectors.values()].flatMap(({ id, shortingBar: bar }) => {
    if (bar === null) return [];
    const pins = bar.pins === null ? '' : `, pins ${bar.pins[0]} and ${bar.pins[1]}`;
    const value = bar.resistance === null ? '' : `, ${formatSpan(bar.resistance, 'resistance')}`;
    return [[id, `${bar.side} side${pins}, closes when ${bar.closes}${value}`] as const];
  });
  return shared('Shorting bar', said);
}

function parts(procedure: Procedure): readonly Fact[] {
  const underPower = measuresVoltage(procedure);
  const said = [...procedure.parts.values()].flatMap((part) => {
    const value = valueText(part);
    return value === null
      ? []
      : [[part.id, `${value}${basisText(part.resistance, underPower)}${noFireText(part)}`] as const];
  });
  return shared('Part', said);
}

/** The current that must not fire a stage, where it is stated: what test currents were held against. */
function noFireText({ noFire }: Part): string {
  return noFire === null ? '' : `, no-fire current ${formatSpan(noFire, 'current')}`;
}

/** Loads of which the resistance is estimated or usual: the others stand under what is needed. */
function loads(procedure: Procedure): readonly Fact[] {
  const underPower = measuresVoltage(procedure);
  return [...procedure.loads.values()].flatMap(({ id, resistance }): readonly Fact[] => {
    const basis = basisText(resistance, underPower);
    if (resistance === null || basis === '') return [];
    return [{ label: 'Load', words: [{ id }, `: ${resistanceInWords(resistance)}${basis}`] }];
  });
}

function basisText(resistance: Resistance | null, underPower: boolean): string {
  const basis = resistance === null ? null : basisInWords(resistance, underPower);
  return basis === null ? '' : ` (${basis})`;
}

function entries(procedure: Procedure): readonly Fact[] {
  return [...procedure.entries.values()].flatMap(({ id, ask, range, accuracy }): readonly Fact[] => {
    if (range === null || accuracy === null) return [];
    const off = formatQuantity(accuracy, 'temperature');
    return [
      {
        label: 'Entered',
        words: [{ id }, ': ', { said: ask }, `, ${formatSpan(range, 'temperature')}, measured to ± ${off}`],
      },
    ];
  });
}
