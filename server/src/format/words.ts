/* The words of the format that a program needs to read a file. What may stand behind them is in the definitions. */

/** The sections of a file that map ids to entries. */
export const sections = [
  'sources',
  'entries',
  'instruments',
  'loads',
  'parts',
  'connectors',
  'assemblies',
  'loops',
] as const;

export type Section = (typeof sections)[number];

const sectionNames: ReadonlySet<string> = new Set(sections);

export function isSectionName(word: string): word is Section {
  return sectionNames.has(word);
}

/** Sections that a procedure needs, in its own file or in a parts file that it uses. */
export const neededSections = ['sources', 'instruments', 'parts'] as const satisfies readonly Section[];

/** What parts files share with the procedures that use them. */
export const mergedSections: readonly string[] = [...sections, 'routines'];

/** All that may stand in a parts file. */
export const partsFileKeys: readonly string[] = ['format', 'title', 'uses', ...mergedSections];

export const verbs = [
  'ignition',
  'disconnect',
  'reconnect',
  'wait',
  'prove-dead',
  'unlock',
  'unplug',
  'plug',
  'fit',
  'remove',
  'move',
  'read',
  'measure',
  'wiggle',
  'read-codes',
  'clear-codes',
  'inspect',
  'do',
  'replace',
  'conclude',
  'go',
  'stop',
  'run',
] as const;

export type Verb = (typeof verbs)[number];

const verbNames: ReadonlySet<string> = new Set(verbs);

export function isVerb(word: string): word is Verb {
  return verbNames.has(word);
}

/** What can be measured by hand. */
export const quantities = ['resistance', 'voltage', 'insulation', 'current'] as const;

export type Quantity = (typeof quantities)[number];

/** The definition of a `measure` step: what is measured decides what else stands in it. */
export function measureForm(
  quantity: string | undefined,
): 'step-measure' | 'step-measure-insulation' | 'step-measure-current' {
  return quantity === 'insulation' || quantity === 'current' ? `step-measure-${quantity}` : 'step-measure';
}

/** What can be measured while something is moved. */
export const watchable = ['resistance', 'voltage'] as const satisfies readonly Quantity[];

/** The keys of a `wiggle` step by which something is measured by hand; beside `watch` none of them stands. */
export const measuredMeanwhile = ['quantity', 'across', 'with', 'drawing'] as const;

/** The definition of a `wiggle` step: a loop is watched, or something is measured by hand. null: nothing says which. */
export function wiggleForm(has: (key: string) => boolean): 'step-wiggle' | 'step-wiggle-measured' | null {
  if (has('watch')) return 'step-wiggle';
  return measuredMeanwhile.some(has) ? 'step-wiggle-measured' : null;
}

/**
 * The kinds that each section knows, with the definitions that each can be written by. Where there are several, the keys
 * that only one of them has tell them apart.
 */
const kinds = {
  sources: {
    battery: { battery: [] },
    'high-voltage': { 'high-voltage': [] },
    regulated: { regulated: [] },
  },
  instruments: {
    monitor: { monitor: [] },
    multimeter: { multimeter: [] },
  },
  loads: {
    lamp: { 'lamp-load-by-resistance': ['resistance'], 'lamp-load-by-rating': ['rated'] },
    resistor: { 'resistor-load': [] },
  },
  parts: {
    cable: { 'cable-by-size': ['wire', 'length'], 'cable-by-resistance': ['resistance'] },
    'rotary-coupling': { 'rotary-coupling': [] },
    series: { series: [] },
    initiator: { initiator: [] },
    'hv-section': { 'hv-section': [] },
    resistor: { resistor: [] },
    heater: { 'heater-by-resistance': ['resistance'], 'heater-by-rating': ['rated'] },
    switch: { switch: [] },
    coil: { coil: [] },
    thermistor: { 'thermistor-by-beta': ['r25', 'beta'], 'thermistor-by-coefficients': ['coefficients'] },
    rtd: { rtd: [] },
    lamp: { 'lamp-by-resistance': ['resistance'], 'lamp-by-rating': ['rated'] },
    consumer: { consumer: [] },
    potentiometer: { potentiometer: [] },
    fuse: { 'fuse-by-resistance': ['resistance'], 'fuse-by-rating': ['rated'] },
  },
} as const;

type Kinds = typeof kinds;

export type KindSection = keyof Kinds;

/** A kind that a section knows. */
export type Kind<S extends KindSection> = keyof Kinds[S] & string;

type KeyOf<T> = T extends unknown ? keyof T & string : never;

/** A definition that a kind is written by. */
export type FormName<S extends KindSection, K extends Kind<S>> = KeyOf<Kinds[S][K]>;

/** A definition that any kind is written by. */
export type AnyForm = { [S in KindSection]: FormName<S, Kind<S>> }[KindSection];

/** One way of writing a kind: its definition, and the keys that only this way has. */
export interface Form {
  readonly definition: AnyForm;
  readonly keys: readonly string[];
}

export function isKindSection(section: string): section is KindSection {
  return Object.hasOwn(kinds, section);
}

export function isKind<S extends KindSection>(section: S, word: string): word is Kind<S> {
  return Object.hasOwn(kinds[section], word);
}

export function kindsOf<S extends KindSection>(section: S): readonly Kind<S>[] {
  return Object.keys(kinds[section]) as Kind<S>[];
}

/** The forms of a kind, at least one; none where the kind is not known. */
export function formsOf(section: KindSection, kind: string): readonly Form[] {
  const ofSection: Readonly<Record<string, Readonly<Partial<Record<AnyForm, readonly string[]>>>>> =
    kinds[section];
  const forms = isKind(section, kind) ? (ofSection[kind] ?? {}) : {};
  const names = Object.keys(forms) as AnyForm[];
  return names.map((definition) => ({ definition, keys: forms[definition] ?? [] }));
}
