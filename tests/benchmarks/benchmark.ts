import { spawnSync } from 'node:child_process';
import { measureActivation, measureEditor } from './editor.ts';
import { median, ms, timed } from './measure.ts';
import { measureNetworks } from './networks.ts';
import { measureScale } from './scale.ts';

/*
 * How fast it is, as ratios within one run: machines differ and are noisy. Run from the root of the project, after the
 * build.
 */

const shippedFile = 'procedures/driver-airbag-resistance.procedure.yaml';

measureScale();

function command(words: readonly string[]): number {
  return timed(() => {
    const { status } = spawnSync(process.execPath, words);
    if (status !== 0) throw new Error(`node ${words.join(' ')} ended with ${status ?? 'no status'}`);
  });
}

const several = (words: readonly string[]): number =>
  median(Array.from({ length: 15 }, () => command(words)));
const bare = several(['-e', '0']);
const check = several(['dist/cli.js', 'check', shippedFile]);
console.log('\nA whole `check` of the shipped file as a command, beside a Node that does nothing');
console.log(
  `  Node alone ${ms(bare)}   check ${ms(check)}   more ${ms(check - bare)}   ratio ${(check / bare).toFixed(2)}`,
);

measureNetworks();
await measureEditor();
measureActivation();
process.exit(0);
