import { readFileSync, readdirSync } from 'node:fs';
import type { FindFile } from '../../server/src/text/uses.ts';
import { rules } from '../../server/src/rules/rules.ts';
import { bench, proof, routines, takenAway, ways } from '../rules/drafts/drafts.ts';
import { hidden } from '../rules/drafts/hidden.ts';
import { measuring } from '../rules/drafts/measuring.ts';
import { moving } from '../rules/drafts/moving.ts';
import { voltage } from '../rules/drafts/voltage.ts';
import { good } from './good.ts';
import { everyKey, sharedParts } from './every-key.ts';

/* All texts of the repository that are read without an error, for tests that change them. */

const root = new URL('../../', import.meta.url);

function filesIn(folder: string): readonly string[] {
  const all = readdirSync(new URL(folder, root)).filter((name) => name.endsWith('.yaml'));
  return all.map((name) => readFileSync(new URL(`${folder}/${name}`, root), 'utf8'));
}

/** The first example of the readme is a whole file, the second goes on from the head of one, the third is a step of the first. */
function examplesOfReadme(): readonly string[] {
  const readme = readFileSync(new URL('README.md', root), 'utf8');
  const blocks = [...readme.matchAll(/```yaml\n([\s\S]*?)```/g)].map(([, text = '']) => text);
  const [first = ''] = blocks;
  return blocks.map((text) => {
    if (text.startsWith('- ')) return first.replace('steps:\n', `steps:\n${text.replace(/^(?=.)/gm, '  ')}`);
    return text.startsWith('format:') ? text : `format: 1\ntitle: The pump\n${text}`;
  });
}

const drafts = [takenAway, routines, bench, proof, ways, hidden, measuring, moving, voltage].flat();

/** The parts files that some of the texts use, by name. */
const shared: Readonly<Record<string, string>> = {
  'workshop.parts.yaml': drafts.find(({ parts }) => parts !== undefined)?.parts ?? '',
  'shared.parts.yaml': sharedParts,
};

export const findShared: FindFile = (_, name) => {
  const text = shared[name];
  return text === undefined ? { problem: `There is no file \`${name}\`.` } : { id: name, text };
};

export const corpus: readonly string[] = [
  ...new Set([
    ...filesIn('procedures'),
    ...filesIn('tests/fixtures'),
    ...examplesOfReadme(),
    good,
    everyKey,
    ...rules.flatMap(({ examples }) => [examples.triggers.text, examples.passes.text]),
    ...drafts.map(({ text }) => text),
  ]),
];
