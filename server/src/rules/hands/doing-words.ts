/* Words of doing, with the forms that English makes of them. Other languages are not read. */

/** What a word can be done to. */
export type Handled = 'connectors' | 'parts' | 'monitors' | 'assemblies' | 'sources' | 'loads';

/** `base` gives the command: unplug. `doing`: unplugging. `other`: unplugs, unplugged. */
export type Form = 'base' | 'doing' | 'other';

export interface DoingWord {
  /** As it stands in the table. */
  readonly base: string;
  readonly form: Form;
  readonly to: readonly Handled[];
  /** It is a deed of hands only with a name behind it: `open` may mean a page. */
  readonly needsName: boolean;
}

interface Row {
  readonly words: string;
  readonly to: readonly Handled[];
  readonly needsName?: true;
}

const inTheCircuit = ['connectors', 'parts', 'monitors', 'assemblies'] as const;
const anything = [...inTheCircuit, 'sources', 'loads'] as const;

const table: readonly Row[] = [
  { words: 'unlock unplug plug replug unmate mate demate', to: anything },
  { words: 'disconnect reconnect connect isolate energize energise', to: anything },
  { words: 'fit move refit', to: ['loads', ...inTheCircuit] },
  { words: 'remove replace swap', to: ['loads', ...inTheCircuit] },
  {
    words: 'measure probe backprobe touch wiggle jiggle shake bend tap twist tug rock squeeze',
    to: inTheCircuit,
  },
  { words: 'pull push press lift loosen tighten seat reseat clean cut', to: ['loads', ...inTheCircuit] },
  { words: 'screw unscrew unbolt fasten unfasten unhook unlatch dismantle disassemble', to: inTheCircuit },
  {
    words:
      'detach attach reattach clip unclip pop lever prise pry flex undo release bridge jumper apply insert extract',
    to: inTheCircuit,
  },
  { words: 'solder desolder crimp strip splice pierce', to: inTheCircuit },
  { words: 'switch turn', to: anything },
  {
    words:
      'open close take put hold grab grip pinch install test slide roll hook separate break short ground earth feed stick jump charge rotate carry',
    to: anything,
    needsName: true,
  },
];

const irregular: Readonly<Record<string, readonly string[]>> = {
  bend: ['bent'],
  cut: ['cut'],
  shake: ['shook', 'shaken'],
  undo: ['undid', 'undone', 'undoes'],
  take: ['took', 'taken'],
  hold: ['held'],
};

const forms: ReadonlyMap<string, DoingWord> = new Map(
  table.flatMap(({ words, to, needsName = false }) =>
    words.split(' ').flatMap((base) => {
      const made = (form: Form, spelled: readonly string[]): [string, DoingWord][] =>
        spelled.map((one) => [one, { base, form, to, needsName }]);
      return [
        ...made('other', [
          ...endings(base, 's', 'es'),
          ...endings(base, 'ed', 'd'),
          ...(irregular[base] ?? []),
        ]),
        ...made('doing', endings(base, 'ing')),
        ...made('base', [base]),
      ];
    }),
  ),
);

/** More forms than there are: what is no word stands in no sentence. */
function endings(base: string, ...ends: readonly string[]): readonly string[] {
  const stems = [base, base + base.slice(-1), base.endsWith('e') ? base.slice(0, -1) : base];
  return ends.flatMap((end) => stems.map((stem) => stem + end));
}

/** A word of doing, however it is written: `Un-plug`, `UNPLUGGED`. */
export function doingWord(spelled: string): DoingWord | null {
  return forms.get(spelled.toLowerCase().replace(/['’_-]/g, '')) ?? null;
}

/** These are things as often as deeds: behind `the` or `a` they are. */
const thingsToo: ReadonlySet<string> = new Set(['plug', 'switch', 'screw', 'seat']);

/** These can be the name of a deed: `the fit`, `a pull`. As a command they stand behind no article. */
const determiners: ReadonlySet<string> = new Set(
  'the a an this that these those its their your our his her my each every both all any which what of no another'.split(
    ' ',
  ),
);

export function isDeterminer(word: string): boolean {
  return determiners.has(word.toLowerCase());
}

/** Whether a word is the name of a thing there: `the plug`, `each switch`. */
export function canBeThing({ base, form }: DoingWord): boolean {
  return thingsToo.has(base) && form !== 'doing';
}
