import type { Procedure } from '../../server/src/model/procedure.ts';

interface Contact {
  readonly id: string;
  readonly pin: string;
  readonly between: readonly [string, string];
}

/**
 * The name that a node has in the end: a terminal of the network is followed to the node that its pin leads to on its
 * side, and from there on if that is a terminal too. Terminals that lead round in a circle go by the first in the alphabet.
 */
export function nameOfNode(
  contacts: readonly Contact[],
  sides: Readonly<Record<string, readonly [string, string]>>,
  node: string,
): string {
  const passed = [node];
  for (let at = node; ;) {
    const [connector = '', side, pin] = at.split('.');
    const contact = contacts.find((one) => one.id === connector && one.pin === pin);
    if (side === undefined || contact === undefined) return at;
    at = contact.between[side === sides[connector]?.[0] ? 0 : 1];
    if (passed.includes(at)) return passed.slice(passed.indexOf(at)).sort()[0] ?? at;
    passed.push(at);
  }
}

/** The same, as the procedure has its contacts and sides. */
export function namedIn({ network, connectors }: Procedure): (node: string) => string {
  const contacts = network.elements.filter((element) => element.kind === 'connector');
  const sides = Object.fromEntries([...connectors].map(([id, one]) => [id, one.sides]));
  return (node) => nameOfNode(contacts, sides, node);
}
