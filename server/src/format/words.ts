import type { DefinitionName } from './definitions.ts';

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

/** The kinds that each section knows. */
export const kinds = {
  sources: ['battery', 'high-voltage', 'regulated'],
  instruments: ['monitor', 'multimeter'],
  loads: ['lamp', 'resistor'],
  parts: [
    'cable',
    'rotary-coupling',
    'series',
    'initiator',
    'hv-section',
    'resistor',
    'heater',
    'switch',
    'coil',
    'thermistor',
    'rtd',
    'lamp',
  ],
} as const;

export type KindSection = keyof typeof kinds;

export function isKindSection(section: string): section is KindSection {
  return Object.hasOwn(kinds, section);
}

/** One way of stating the resistance of a kind: its definition, and the keys that only this way has. */
export interface Form {
  readonly definition: DefinitionName;
  readonly keys: readonly string[];
}

/** Kinds with more than one form. */
const forms: Readonly<Partial<Record<KindSection, Readonly<Record<string, readonly Form[]>>>>> = {
  loads: {
    lamp: [
      { definition: 'lamp-load-by-resistance', keys: ['resistance'] },
      { definition: 'lamp-load-by-rating', keys: ['rated'] },
    ],
  },
  parts: {
    cable: [
      { definition: 'cable-by-size', keys: ['wire', 'length'] },
      { definition: 'cable-by-resistance', keys: ['resistance'] },
    ],
    thermistor: [
      { definition: 'thermistor-by-beta', keys: ['r25', 'beta'] },
      { definition: 'thermistor-by-coefficients', keys: ['coefficients'] },
    ],
    lamp: [
      { definition: 'lamp-by-resistance', keys: ['resistance'] },
      { definition: 'lamp-by-rating', keys: ['rated'] },
    ],
  },
};

/** The forms of a kind, at least one; none where the kind is not known. */
export function formsOf(section: KindSection, kind: string): readonly Form[] {
  const several = forms[section]?.[kind];
  if (several !== undefined) return several;
  const name = section === 'loads' ? `${kind}-load` : kind;
  const known = kinds[section].some((one) => one === kind);
  return known ? [{ definition: name as DefinitionName, keys: [] }] : [];
}
