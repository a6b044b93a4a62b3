import { formatSpan } from '../quantity/print.ts';
import type { NetworkElement, Procedure } from '../model/procedure.ts';
import { isHighVoltage } from '../model/source-kinds.ts';
import { kindText, valueText } from './drawn.ts';
import type { CardNetwork, Words } from './model.ts';

/** The elements of the network as lines of a table, in the order of the file; null: there is none. */
export function networkOf(procedure: Procedure): CardNetwork | null {
  const { elements } = procedure.network;
  if (elements.length === 0) return null;
  return {
    heading: 'The network',
    explanation:
      'Each line is one thing between two points. Points of one name are one point; ground is the metal of the vehicle and the minus of its battery. Unplugging a connector opens every line that names it.',
    columns: ['From', 'What', 'To'],
    rows: elements.map((element) => ({
      from: element.between[0],
      what: whatWords(procedure, element),
      to: element.between[2] ?? element.between[1],
    })),
  };
}

function whatWords(procedure: Procedure, element: NetworkElement): Words {
  const { id } = element;
  switch (element.kind) {
    case 'connector': {
      const sides = procedure.connectors.get(id)?.sides;
      const named = sides === undefined ? '' : `, ${sides[0]} side to ${sides[1]} side`;
      return [{ id }, `, connector, pin ${element.pin}${named}`];
    }
    case 'source': {
      const supply = procedure.regulated.get(id) ?? procedure.sources.get(id);
      const volts = supply?.voltage == null ? '' : `, ${formatSpan(supply.voltage, 'voltage')}`;
      const high: Words = isHighVoltage(supply) ? [', ', { strong: 'HIGH VOLTAGE' }] : [];
      return [{ id }, `, source${volts}, plus first`, ...high];
    }
    case 'part': {
      const part = procedure.parts.get(id);
      if (part === undefined) return [{ id }];
      const value = valueText({ ...part, form: 'end' });
      const live: Words = part.live ? [', ', { strong: 'LIVE' }] : [];
      const wiper = element.between[2] === undefined ? '' : `, wiper at ${element.between[1]}`;
      const what = `, ${kindText[part.kind].inNetwork}${wiper}${value === null ? '' : `, ${value}`}`;
      return [{ id }, what, ...live];
    }
  }
}
