/** Words that the format gives a meaning in outcomes, sides or nodes, and that therefore cannot be ids. */
export const reservedWords = [
  'next',
  'none',
  'else',
  'within',
  'below',
  'above',
  'open',
  'leak',
  'outside',
  'ok',
  'defect',
  'dead',
  'live',
  'stored',
  'present',
  'codes',
  'repair',
  'ground',
  'nothing',
] as const;

const reserved: ReadonlySet<string> = new Set(reservedWords);

export function isReserved(word: string): boolean {
  return reserved.has(word);
}

const letters = '[A-Za-z][A-Za-z0-9-]*';
const notReserved = `(?!(?:${reservedWords.join('|')})$)`;
const pin = '[A-Za-z0-9-]+';

/** An id: starts with a letter, then letters, digits and hyphens; none of the reserved words. */
export const idPattern = new RegExp(`^${notReserved}${letters}$`);

/** An id, or one of the reserved words that a key takes beside ids. */
export function idOr(...words: readonly (typeof reservedWords)[number][]): RegExp {
  return new RegExp(`^(?:${words.join('|')}|${notReserved}${letters})$`);
}

/** The name of a pin as it stands on the connector: `3`, `01`, `A1`. */
export const pinPattern = new RegExp(`^${pin}$`);

const side = `(?!(?:${reservedWords.join('|')})(?:\\.|$))${letters}`;

/** A side of a connector, `K30.monitor`; in a routine also the name that stands for one. */
export const placePattern = new RegExp(`^${notReserved}${letters}(?:\\.${side})?$`);

/** What a call gives to a routine: an id, or a side of a connector. */
export const givenPattern = placePattern;

/** One pin on a side of a connector: `K30.monitor.1`. */
export const terminalPattern = new RegExp(`^${notReserved}${letters}\\.${side}\\.${pin}$`);

/** A node of the network: a name, `ground`, or a terminal of a connector. */
export const nodePattern = new RegExp(`^(?:ground|${notReserved}${letters}(?:\\.${side}\\.${pin})?)$`);

/** What hands touch: an id, a side `K30.monitor`, or a terminal `K30.monitor.1`. */
const touch = `${notReserved}${letters}(?:\\.${side}(?:\\.${pin})?)?`;

export const touchPattern = new RegExp(`^${touch}$`);

/** The same, or the word that says that hands touch nothing. */
export const touchOrNothingPattern = new RegExp(`^(?:nothing|${touch})$`);
