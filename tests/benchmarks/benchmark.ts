import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { parseDocument } from 'yaml';
import { finish } from '../../server/src/bench/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { measureActivation, measureEditor } from './editor.ts';
import { longProcedure } from './long-procedure.ts';
import { median, ms, timed } from './measure.ts';

/*
 * How fast it is, as ratios within one run: machines differ and are noisy. Run from the root of the project, after the
 * build.
 */

const shippedFile = 'procedures/driver-airbag-resistance.procedure.yaml';
const shipped = readFileSync(shippedFile, 'utf8');
const [circuit = ''] = shipped.split(/^steps:\n/m);

interface Stages {
  readonly parse: number;
  readonly text: number;
  readonly windows: number;
  readonly order: number;
}

function stages(text: string, runs: number): Stages {
  const samples = Array.from({ length: runs }, () => {
    const analysis = analyse(snapshotOf([{ id: 'benchmark', text }]), 'benchmark');
    const parse = timed(() => parseDocument(text, { keepSourceTokens: true }));
    const inText = timed(() => analysis.procedure());
    const windows = timed(() => finish(analysis.windows()));
    const order = timed(() => finish(analysis.order()));
    return { parse, text: inText, windows, order };
  }).slice(Math.floor(runs / 3));
  const middle = (of: (sample: Stages) => number): number => median(samples.map(of));
  return {
    parse: middle((sample) => sample.parse),
    text: middle((sample) => sample.text),
    windows: middle((sample) => sample.windows),
    order: middle((sample) => sample.order),
  };
}

console.log('Analysis of one text, warm, milliseconds (middle of the later two thirds of the runs)');
console.log('  steps   lines  yaml alone    text  windows   order    all  all / yaml alone');
for (const wanted of [50, 100, 200, 400, 800]) {
  const text = longProcedure(circuit, wanted);
  const analysis = analyse(snapshotOf([{ id: 'count', text }]), 'count');
  const found = finish(analysis.findings('order')).filter(({ severity }) => severity === 'error');
  if (found.length > 0) throw new Error(`the long procedure must be sound: ${found[0]?.message ?? ''}`);
  const count = analysis.procedure().value.steps.length;
  const { parse, text: inText, windows, order } = stages(text, wanted > 200 ? 30 : 60);
  const all = inText + windows + order;
  const lines = text.split('\n').length;
  console.log(
    `${String(count).padStart(7)} ${String(lines).padStart(7)}     ${ms(parse)} ${ms(inText)}  ${ms(windows)} ${ms(order)} ${ms(all)}  ${(all / parse).toFixed(2).padStart(8)}`,
  );
}

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

await measureEditor(circuit);
measureActivation();
process.exit(0);
