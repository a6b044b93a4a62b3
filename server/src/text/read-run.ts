import type { NeedKind } from '../format/procedure.ts';
import type { Section } from '../format/words.ts';
import { entriesOf } from './action-reader.ts';
import type { ActionReader } from './action-reader.ts';
import { lookUp } from './names.ts';
import { keyAt, valueAt } from './problem.ts';
import type { Action, Id, Routine } from '../model/procedure.ts';
import { goesWithAnother } from './read-sources.ts';
import type { Path } from '../model/where.ts';

/** A call with all that the routine needs, each of its kind; null: a finding says what is wrong. */
export function readRun(
  id: Id,
  values: Readonly<Record<string, unknown>>,
  context: ActionReader,
): Action | null {
  const { reader, bench, path } = context;
  const at = [...path, 'run'];
  if (!reader.names.routines.has(id)) {
    if (!reader.names.complete) return null;
    const { sentence, meant } = reader.names.guess(id, () => [...reader.names.routines]);
    const message = `No routine is named \`${id}\`.${sentence}`;
    reader.report({ rule: 'unknown-id', at: valueAt(at), message, subject: id, ...meant });
    return null;
  }
  const routine = bench.routines.get(id);
  if (routine === undefined) return null;
  const given = new Map(Object.entries((values.given ?? {}) as Readonly<Record<string, string>>));
  const missing = [...routine.needs].filter(([need]) => !given.has(need));
  if (missing.length > 0) {
    const listed = missing.map(([need, kind]) => `\`${need}\` (${words[kind]})`).join(', ');
    const message = `\`${id}\` needs ${listed}: give it below \`given\`.`;
    reader.report({ rule: 'wrong-call', at: valueAt(at), message, subject: id });
  }
  const fits = [...given].map(([need, text]) =>
    isGiven(routine, need, text, [...path, 'given', need], context),
  );
  return missing.length > 0 || fits.includes(false) ? null : { verb: 'run', runs: id, given };
}

const words: Readonly<Record<NeedKind, string>> = {
  source: 'a source',
  instrument: 'an instrument',
  load: 'a load',
  part: 'a part',
  connector: 'a connector',
  side: 'a side of a connector',
  loop: 'a loop',
};

const sectionOf: Readonly<Record<NeedKind, Section>> = {
  source: 'sources',
  instrument: 'instruments',
  load: 'loads',
  part: 'parts',
  connector: 'connectors',
  side: 'connectors',
  loop: 'loops',
};

/** The section in which a name that a routine needs counts as one. */
export function sectionOfNeed(kind: NeedKind): Section {
  return sectionOf[kind];
}

function isGiven({ id, needs }: Routine, need: Id, text: string, at: Path, context: ActionReader): boolean {
  const { reader, bench } = context;
  const kind = needs.get(need);
  if (kind === undefined) {
    const { sentence, meant } = reader.names.guess(need, () => [...needs.keys()]);
    const message = `\`${id}\` does not need \`${need}\`.${sentence}`;
    reader.report({ rule: 'wrong-call', at: keyAt(at), message, subject: need, ...meant });
    return false;
  }
  const [name = '', side] = text.split('.');
  const section = sectionOf[kind];
  const found = lookUp(reader.names, name, [section], valueAt(at, [0, name.length]), reader.report);
  if (found === null) return false;
  if ((side === undefined) === (kind === 'side')) {
    const wanted = kind === 'side' ? `\`${name}.monitor\` or \`${name}.end\`` : `\`${name}\``;
    const message = `\`${need}\` is ${words[kind]}: write ${wanted}.`;
    reader.report({ rule: 'wrong-call', at: valueAt(at), message, subject: need });
    return false;
  }
  if (kind === 'source' && goesWithAnother(name, valueAt(at), reader)) return false;
  return entriesOf(section, bench).has(name) || isNeed(name, context);
}

/** In a routine what it needs itself can be given on. */
function isNeed(name: Id, { reader }: ActionReader): boolean {
  return reader.names.things.get(name)?.path[0] === 'routines';
}
