// The main job once, on the procedure that is shipped: check it, print its windows, show what an unsafe copy gets, write
// its card. Each part is a command that anybody can run.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

process.chdir(fileURLToPath(new URL('../..', import.meta.url)));

const shipped = 'procedures/driver-airbag-resistance.procedure.yaml';
const unsafe = 'dist/demo/unsafe-copy.procedure.yaml';
const card = 'dist/demo/driver-airbag-resistance.html';
mkdirSync('dist/demo', { recursive: true });

say('The shipped procedure is checked: safe on every path, nothing to report.');
ohmwright(0, 'check', shipped);

say('What its readings should show, and which codes the work itself sets.');
ohmwright(0, 'windows', shipped);

say(
  'The same file where going one connector back forgets to make safe: hands on a live stage, and the way there.',
);
const forgetful = readFileSync(shipped, 'utf8').replace(
  '- run: make-safe\n      - unplug: where',
  '- unplug: where',
);
writeFileSync(unsafe, forgetful);
const found = ohmwright(1, 'check', unsafe);
if (!found.includes('error live-touch')) fail('the unsafe copy is not found out');

say('The card of the shipped procedure is written; that of an unsafe one is refused.');
ohmwright(0, 'card', shipped, '-o', card);
console.log(`\nOpen it in a browser and print it: ${resolve(card)}`);

function say(sentence) {
  console.log(`\n--- ${sentence}`);
}

function ohmwright(expected, ...words) {
  console.log(`$ ohmwright ${words.join(' ')}\n`);
  const { status, stdout } = spawnSync(process.execPath, ['dist/cli.js', ...words], {
    stdio: ['inherit', 'pipe', 'inherit'],
    encoding: 'utf8',
  });
  process.stdout.write(stdout);
  if (status !== expected) fail(`ohmwright ended with status ${status}, not ${expected}`);
  return stdout;
}

function fail(why) {
  console.error(why);
  process.exit(1);
}
