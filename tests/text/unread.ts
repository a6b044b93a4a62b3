import type { Procedure } from '../../server/src/model/procedure.ts';
import type { AsYaml } from './as-yaml.ts';

/** A value of a typed procedure that says that something could not be read. */
export interface Unread {
  /** The entry or step that it belongs to, `['parts', 'stage-1']`. */
  readonly owner: Path;
  /** From the entry on, `resistance`. */
  readonly value: string;
}

type Path = readonly (string | number)[];

/**
 * What is null where its key is not written, by section and value, with the way to the key from the entry on. Everything
 * else that is null could not be read.
 */
const absent: Readonly<Record<string, string>> = {
  ' appliesTo': 'applies-to',
  ' revision': 'revision',
  ' purpose': 'purpose',
  'instruments testCurrent': 'test-current',
  'instruments tooLow': 'codes/too-low',
  'instruments tooHigh': 'codes/too-high',
  'instruments leakBelow': 'leak',
  'instruments resistance': 'resistance',
  'instruments resistance/testCurrent': 'resistance/test-current',
  'instruments voltage': 'voltage',
  'instruments insulation': 'insulation',
  'instruments insulation/discharge': 'insulation/discharge',
  'instruments current': 'current',
  'instruments clamp': 'clamp',
  'instruments leads': 'leads',
  'parts noFire': 'no-fire',
  'parts voltage': 'voltage',
  'parts draws': 'draws',
  'parts wiper': 'wiper',
  'parts withstands': 'withstands',
  'loads withstands': 'withstands',
  'parts resistance/tolerance': 'tolerance',
  'connectors shortingBar': 'shorting-bar',
  'connectors withstands': 'withstands',
  'connectors shortingBar/pins': 'shorting-bar/pins',
  'waivers step': 'step',
  'steps expect': 'expect',
  'steps outcomes': 'outcomes',
  'steps tester': 'at-voltage',
};

/** What is null because there is none, whatever is written. */
const none: ReadonlySet<string> = new Set([
  // Of a source that no connector isolates.
  'steps connector',
  // The connector stands in no loop.
  'steps at/loop',
  'steps to/loop',
  // Not a current.
  'steps carrying',
]);

/** Everything in a typed procedure that could not be read, held against what the YAML library read. */
export function unreadIn(procedure: Procedure, yaml: AsYaml): readonly Unread[] {
  const found: Unread[] = [];
  look(procedure, { owner: [], value: [] }, (owner, value) => {
    const section = owner[0] === 'routines' && owner[2] === 'steps' ? 'steps' : String(owner[0] ?? '');
    const name = `${section} ${value.join('/')}`;
    const key = absent[name];
    const isAbsent = key !== undefined && !yaml.has([...owner, ...key.split('/')]);
    // Of a consumer nothing but its current is known.
    const isConsumer = name === 'parts resistance' && yaml.has([...owner, 'draws']);
    if (!none.has(name) && !isAbsent && !isConsumer) found.push({ owner, value: value.join('/') });
  });
  return [...found, ...leftOut(procedure, yaml)];
}

interface Place {
  readonly owner: Path;
  readonly value: readonly string[];
}

/** Asks of every null, of every `false` that says that something is not complete, and of every broken step. */
function look(
  node: unknown,
  { owner, value }: Place,
  ask: (owner: Path, value: readonly string[]) => void,
): void {
  if (node === null) ask(owner, value);
  if (typeof node !== 'object' || node === null) return;
  if (node instanceof Map || Array.isArray(node)) {
    for (const [key, below] of (node as Map<string, unknown>).entries())
      look(below, { owner, value: Array.isArray(node) ? value : [...value, key] }, ask);
    return;
  }
  const { path } = node as { readonly path?: Path };
  // An outcome has a place of its own inside of its step.
  const here: Place = path === undefined || 'target' in node ? { owner, value } : { owner: path, value: [] };
  for (const [key, below] of Object.entries(node)) {
    if (key === 'path' || key === 'calls') continue;
    const at = { owner: here.owner, value: [...here.value, key] };
    if ((key === 'complete' || key === 'feedsComplete') && below === false) ask(at.owner, at.value);
    if (key === 'verb' && below === 'broken') ask(at.owner, at.value);
    look(below, at, ask);
  }
}

/** Entries and steps that are written and are not in the typed procedure. */
function leftOut(procedure: Procedure, { keys }: AsYaml): readonly Unread[] {
  const read: Readonly<Record<string, ReadonlyMap<string, unknown>>> = {
    sources: new Map<string, unknown>([...procedure.sources, ...procedure.regulated]),
    entries: procedure.entries,
    instruments: new Map<string, unknown>([...procedure.monitors, ...procedure.multimeters]),
    loads: procedure.loads,
    parts: procedure.parts,
    connectors: procedure.connectors,
    assemblies: procedure.assemblies,
    loops: procedure.loops,
    routines: procedure.routines,
  };
  const entries = Object.entries(read).flatMap(([section, known]) =>
    keys([section]).flatMap((id) => (known.has(id) ? [] : [{ owner: [section, id], value: '' }])),
  );
  const listed = new Set([
    ...procedure.steps.map(({ path }) => path.join('/')),
    ...procedure.waivers.map(({ path }) => path.join('/')),
    ...procedure.network.elements.map(({ path }) => path.join('/')),
  ]);
  const items = ['steps', 'waivers', 'network'].flatMap((section) =>
    keys([section]).flatMap((index) => {
      const owner = [section, Number(index)];
      const isHeading = section === 'steps' && keys(owner).includes('section');
      return isHeading || listed.has(owner.join('/')) ? [] : [{ owner, value: '' }];
    }),
  );
  return [...entries, ...items];
}
