import { formatSpan } from '../quantity/print.ts';
import { resistanceInWords } from '../readings/resistance-in-words.ts';
import { isStage } from '../text/part-kinds.ts';
import type { Connector, Id, Loop, Part, PartKind, Procedure } from '../text/procedure.ts';
import { isHighVoltage, isolatorOf } from '../text/source-kinds.ts';
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
  const shared = loopsThrough(procedure, connector.id).filter((id) => id !== loop.id);
  const lines = [`connector, pins ${pins[0]} and ${pins[1]}`];
  if (shared.length > 0) lines.push(`also carries ${named(shared)}`);
  return {
    kind: 'connector',
    id: connector.id,
    pins,
    sides: [`${connector.sides[0]} side`, `${connector.sides[1]} side`],
    bar,
    lines: [...lines, ...sourcesAt(procedure, connector)],
  };
}

/** No more loops of one connector are named: each of its drawings would be a list of all of them. */
const mostNamed = 20;

function named(ids: readonly Id[]): string {
  const more = ids.length - mostNamed;
  return `${ids.slice(0, mostNamed).join(', ')}${more > 0 ? ` and ${more} more loops` : ''}`;
}

/** What a connector leads or takes away beside its loops. */
function sourcesAt({ sources }: Procedure, { id, carries }: Connector): readonly string[] {
  return [...sources.values()].flatMap((source): readonly string[] => {
    const volts = source.voltage === null ? '' : `, ${formatSpan(source.voltage, 'voltage')}`;
    const kind = isHighVoltage(source) ? 'HIGH VOLTAGE' : 'voltage';
    if (isolatorOf(source) === id) return [`takes ${source.id} away (${kind}${volts})`];
    return carries.includes(source.id) ? [`carries ${source.id} (${kind}${volts})`] : [];
  });
}

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

function loopsThrough(procedure: Procedure, connector: Id): readonly Id[] {
  return [...procedure.loops.values()]
    .filter((loop) =>
      loop.elements.some((element) => element.kind === 'connector' && element.id === connector),
    )
    .map((loop) => loop.id);
}

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
};

/** The value of a part; of each conductor where it has two, but a cable is given by its length. */
export function valueText({ form, resistance }: Part): string | null {
  if (resistance === null) return null;
  const each = form === 'two-conductor' && resistance.kind !== 'copper-wire' ? ' each conductor' : '';
  return `${resistanceInWords(resistance)}${each}`;
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
