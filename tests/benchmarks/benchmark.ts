import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { parseDocument } from 'yaml';
import { finish } from '../../server/src/bench/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { longProcedure } from './long-procedure.ts';

/*
 * How fast it is, as ratios within one run: machines differ and are noisy. Run from the root of the project, after the
 * build.
 */

const shippedFile = 'procedures/driver-airbag-resistance.procedure.yaml';
const shipped = readFileSync(shippedFile, 'utf8');
const [circuit = ''] = shipped.split(/^steps:\n/m);

/** The middle of several runs, in milliseconds. */
function median(runs: number, measure: () => number): number {
  const times = Array.from({ length: runs }, measure).sort((a, b) => a - b);
  return times[Math.floor(times.length / 2)] ?? NaN;
}

function timed(run: () => unknown): number {
  const start = performance.now();
  run();
  return performance.now() - start;
}

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
  const middle = (of: (sample: Stages) => number): number => {
    const sorted = samples.map(of).sort((a, b) => a - b);
    return sorted[Math.floor(sorted.length / 2)] ?? NaN;
  };
  return {
    parse: middle((sample) => sample.parse),
    text: middle((sample) => sample.text),
    windows: middle((sample) => sample.windows),
    order: middle((sample) => sample.order),
  };
}

function ms(milliseconds: number): string {
  return milliseconds.toFixed(1).padStart(7);
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

const bare = median(15, () => command(['-e', '0']));
const check = median(15, () => command(['dist/cli.js', 'check', shippedFile]));
console.log('\nA whole `check` of the shipped file as a command, beside a Node that does nothing');
console.log(
  `  Node alone ${ms(bare)}   check ${ms(check)}   more ${ms(check - bare)}   ratio ${(check / bare).toFixed(2)}`,
);
