import { formatSpan } from '../quantity/print.ts';
import { partInWords } from '../readings/resistance-in-words.ts';
import { isStage } from '../model/part-kinds.ts';
import type { Connector, Id, Loop, Part, PartKind, Procedure } from '../model/procedure.ts';
import { grouped, remembered } from '../model/remembered.ts';
import { isHighVoltage, isolatorOf } from '../model/source-kinds.ts';
import type { Drawn, DrawnBar, LoopDrawing } from './model.ts';

/** What is drawn of each loop, and the same in words. */
export function drawLoops(procedure: Procedure): readonly LoopDrawing[] {
  return [...procedure.loops.values()].map((loop) => {
    const elements = elementsOf(procedure, loop);
    return {
      loop: loop.id,
      title: loop.id,
      description: describe(elements),
      elements,
      continues: `${loop.id} goes on in the next part`,
      continued: `${loop.id}, continued`,
    };
  });
}

function elementsOf(procedure: Procedure, loop: Loop): readonly Drawn[] {
  const first: Drawn =
    loop.monitor === null
      ? { kind: 'unknown', lines: ['instrument not known'] }
      : { kind: 'monitor', id: loop.monitor, lines: ['reads this loop'] };
  const rest = loop.elements.map(({ kind, id }): Drawn => {
    const connector = kind === 'connector' ? procedure.connectors.get(id) : undefined;
    if (connector !== undefined) return connectorDrawn(procedure, loop, connector);
    const part = procedure.parts.get(id);
    return part === undefined ? { kind: 'unknown', lines: [id, 'not readable'] } : partDrawn(part);
  });
  const gap: readonly Drawn[] = loop.complete
    ? []
    : [{ kind: 'unknown', lines: ['an entry could not be read'] }];
  return [first, ...rest, ...gap];
}

function connectorDrawn(procedure: Procedure, loop: Loop, connector: Connector): Drawn {
  const pins = loop.pins.get(connector.id) ?? ['?', '?'];
  const bar = barDrawn(connector, pins);
  const through = loopsThrough(procedure).get(connector.id) ?? [];
  const lines = [`connector, pins ${pins[0]} and ${pins[1]}`, ...alsoCarried(loop, through)];
  return {
    kind: 'connector',
    id: connector.id,
    pins,
    sides: [`${connector.sides[0]} side`, `${connector.sides[1]} side`],
    bar,
    lines: [...lines, ...sourcesAt(procedure, connector)],
  };
}

/** No more loops than this are named in one line. */
const mostNamed = 12;

/** The other loops through a connector. */
function alsoCarried({ id }: Loop, through: readonly Id[]): readonly string[] {
  // One more than are named, and the loop itself may be among them.
  const named = through
    .slice(0, mostNamed + 1)
    .filter((other) => other !== id)
    .slice(0, mostNamed);
  if (named.length === 0) return [];
  const left = through.length - 1 - named.length;
  return [`also carries ${named.join(', ')}${left > 0 ? ` and ${left} more` : ''}`];
}

/** What a connector leads or takes away beside its loops. */
function sourcesAt(procedure: Procedure, { id }: Connector): readonly string[] {
  return (sourcesByConnector(procedure).get(id) ?? []).flatMap((source): readonly string[] => {
    const volts = source.voltage === null ? '' : `, ${formatSpan(source.voltage, 'voltage')}`;
    const kind = isHighVoltage(source) ? 'HIGH VOLTAGE' : 'voltage';
    if (isolatorOf(source) === id) return [`isolates ${source.id} (${kind}${volts})`];
    return [`carries ${source.id} (${kind}${volts})`];
  });
}

/** The sources that each connector takes away or carries, in the order of the file. */
const sourcesByConnector = remembered(({ sources, connectors }: Procedure) => {
  const carriers = grouped(
    [...connectors.values()].flatMap(({ id, carries }) =>
      [...new Set(carries)].map((source) => [source, id] as const),
    ),
  );
  return grouped(
    [...sources.values()].flatMap((source) => {
      const isolator = isolatorOf(source);
      const at = new Set([...(isolator === null ? [] : [isolator]), ...(carriers.get(source.id) ?? [])]);
      return [...at].map((connector) => [connector, source] as const);
    }),
  );
});

function barDrawn(connector: Connector, pins: readonly [string, string]): DrawnBar | null {
  const bar = connector.shortingBar;
  if (bar === null) return null;
  // A bar with pins of its own may sit across those of another loop.
  if (bar.pins !== null && !(bar.pins.includes(pins[0]) && bar.pins.includes(pins[1]))) return null;
  return {
    half: bar.side === connector.sides[0] ? 'upper' : 'lower',
    side: bar.side,
    words: `shorting bar, closes when ${bar.closes}`,
  };
}

/** By connector the loops that lead through it. */
const loopsThrough = remembered(({ loops }: Procedure) =>
  grouped(
    [...loops.values()].flatMap(({ id, elements }) => {
      const connectors = elements.flatMap((element) => (element.kind === 'connector' ? [element.id] : []));
      return [...new Set(connectors)].map((connector) => [connector, id] as const);
    }),
  ),
);

function partDrawn(part: Part): Drawn {
  const value = valueText(part);
  const lines = [isStage(part) && !part.live ? 'initiator, taken as inert' : kindText[part.kind].inLoop];
  if (part.voltage !== null) lines.push(formatSpan(part.voltage, 'voltage'));
  if (value !== null) lines.push(value);
  if (part.form === 'two-conductor') return { kind: 'part', id: part.id, lines };
  return { kind: 'end', id: part.id, live: part.live ? 'LIVE' : null, lines };
}

interface KindText {
  readonly inLoop: string;
  readonly inNetwork: string;
}

function anywhere(text: string): KindText {
  return { inLoop: text, inNetwork: text };
}

/** What a part is called. What has two conductors in a loop is one of them in the network. */
export const kindText: Readonly<Record<PartKind, KindText>> = {
  cable: { inLoop: 'cable, two conductors', inNetwork: 'cable, one conductor' },
  'rotary-coupling': { inLoop: 'rotary coupling', inNetwork: 'rotary coupling, one conductor' },
  series: { inLoop: 'in series, two conductors', inNetwork: 'in series, one conductor' },
  initiator: anywhere('pyrotechnic stage'),
  'hv-section': anywhere('high-voltage section'),
  resistor: anywhere('resistor'),
  heater: anywhere('heater'),
  switch: anywhere('switch, counted as closed'),
  coil: anywhere('coil'),
  thermistor: anywhere('temperature sensor (NTC)'),
  rtd: anywhere('temperature sensor (platinum)'),
  lamp: anywhere('lamp'),
  consumer: anywhere('consumer of a stated current'),
  potentiometer: anywhere('potentiometer'),
  fuse: anywhere('fuse'),
};

/** The value of a part; of each conductor where it has two, but a cable is given by its length. */
export function valueText(part: Part): string | null {
  const { form, resistance } = part;
  if (resistance === null) return null;
  const each = form === 'two-conductor' && resistance.kind !== 'copper-wire' ? ' each conductor' : '';
  return `${partInWords(part) ?? ''}${each}`;
}

function describe(elements: readonly Drawn[]): string {
  const along = elements.map((element) => {
    if (element.kind === 'unknown') return element.lines.join(' ');
    const lines = element.lines.join(', ');
    if (element.kind === 'connector' && element.bar !== null)
      return `${element.id} (${lines}; on its ${element.bar.side} side a ${element.bar.words})`;
    if (element.kind === 'end' && element.live !== null) return `${element.id} (${element.live}, ${lines})`;
    return `${element.id} (${lines})`;
  });
  return `From the instrument outward: ${along.join('; ')}.`;
}
