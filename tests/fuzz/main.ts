import { mkdirSync, writeFileSync } from 'node:fs';
import { isMainThread, Worker } from 'node:worker_threads';
import { kindNamed, kinds } from './kinds.ts';
import type { Kind } from './kind.ts';
import { shrinking, work } from './worker.ts';
import type { Said, Task } from './worker.ts';

/*
 * Tries random inputs of every kind and prints what fails, each with the seed that makes it again.
 *
 *   main [KIND [SEED]]        OHMWRIGHT_FUZZ: how many texts; of the other kinds as many as their share.
 *
 * The inputs are tried in a thread that is watched: one that takes too much time of the processor, or never answers, is
 * a failure too.
 */

const asked = Number(process.env.OHMWRIGHT_FUZZ ?? 1000);
const folder = '.cache/fuzz';

/** However small an input is, it may take so many milliseconds: what is compiled for the first time takes longer. */
const leastPatience = 3000;

/** So long an input may take by the clock, whatever the processor does meanwhile. */
const mostWall = 180_000;

/** After so many failures of a kind the rest of it is left. */
const mostFailures = 20;

interface Failure {
  readonly seed: number;
  readonly wrong: readonly string[];
  readonly input: string;
}

interface Outcome {
  readonly kind: Kind;
  readonly tried: number;
  readonly failures: readonly Failure[];
  /** The one that took longest, as a multiple of parsing a good text of its size. */
  readonly slowest: { readonly seed: number; readonly ratio: number };
  readonly spent: number;
}

interface Ran {
  /** The seed behind the last one that is done with. */
  readonly next: number;
  readonly failures: readonly Failure[];
  readonly slowest: Outcome['slowest'];
  readonly spent: number;
}

/** Tries the inputs of a kind until all are done, or one has to be stopped. */
function run(kind: Kind, from: number, to: number): Promise<Ran> {
  const now = new Int32Array(new SharedArrayBuffer(4)).fill(-1);
  const task: Task = { kind: kind.name, from, to, show: false, now };
  const worker = new Worker(new URL(import.meta.url), {
    workerData: task,
    resourceLimits: { maxOldGenerationSizeMb: 3000 },
  });
  return new Promise((resolve) => {
    const failures: Failure[] = [];
    let slowest = { seed: from, ratio: 0 };
    let spent = 0;
    let next = from;
    let pace = 0;
    let size = 0;
    let seen = -1;
    let since = { wall: performance.now(), spent: cpu() };
    const end = (): void => {
      clearInterval(watch);
      void worker.terminate().then(() => {
        resolve({ next, failures, slowest, spent });
      });
    };
    const stop = (why: string): void => {
      void shown(kind, next).then((input) => {
        failures.push({ seed: next, wrong: [why], input });
        next += 1;
        end();
      });
      clearInterval(watch);
    };
    const watch = setInterval(() => {
      const seed = Atomics.load(now, 0);
      if (seed !== seen) {
        seen = seed;
        since = { wall: performance.now(), spent: cpu() };
      }
      // Smaller inputs of a failure are tried hundreds of times.
      const times = seed === shrinking ? 400 : 1;
      const most = Math.max(leastPatience, kind.patience * pace * size) * times;
      const used = cpu() - since.spent;
      if (seed !== -1 && used > most) stop(`takes more than ${(used / 1000).toFixed(1)} s of the processor`);
      else if (seed >= 0 && performance.now() - since.wall > mostWall) stop('never ends');
    }, 100);
    worker.on('message', (said: Said) => {
      switch (said.says) {
        case 'pace':
          pace = said.pace;
          return;
        case 'begins':
          next = said.seed;
          size = said.size;
          return;
        case 'fails':
          failures.push(said);
          return;
        case 'ends': {
          next = said.seed + 1;
          spent += said.spent;
          const ratio = said.spent / (pace * said.size);
          if (ratio > slowest.ratio) slowest = { seed: said.seed, ratio };
          if (failures.length >= mostFailures) end();
          return;
        }
        case 'shows':
          return;
        case 'done':
          next = to;
          end();
      }
    });
    // It ran out of memory, or somebody ended the thread.
    worker.on('error', (error) => {
      stop(`ends the thread: ${String(error)}`);
    });
    worker.on('exit', () => {
      if (next < to && failures.length < mostFailures && failures.at(-1)?.seed !== next)
        stop('ends the process');
    });
  });
}

function cpu(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** The input of a seed, in a thread of its own: the one that tried it may be stuck. */
function shown(kind: Kind, seed: number): Promise<string> {
  const now = new Int32Array(new SharedArrayBuffer(4));
  const task: Task = { kind: kind.name, from: seed, to: seed, show: true, now };
  const worker = new Worker(new URL(import.meta.url), { workerData: task });
  return new Promise((resolve) => {
    worker.on('message', (said: Said) => {
      if (said.says !== 'shows') return;
      resolve(said.input);
      void worker.terminate();
    });
    worker.on('error', () => {
      resolve('(cannot be made again)');
    });
  });
}

async function outcomeOf(kind: Kind, from: number, to: number): Promise<Outcome> {
  let ran: Ran = { next: from, failures: [], slowest: { seed: from, ratio: 0 }, spent: 0 };
  while (ran.next < to && ran.failures.length < mostFailures) {
    const { next, failures, slowest, spent } = await run(kind, ran.next, to);
    ran = {
      next,
      failures: [...ran.failures, ...failures],
      slowest: slowest.ratio > ran.slowest.ratio ? slowest : ran.slowest,
      spent: ran.spent + spent,
    };
  }
  return { kind, tried: ran.next - from, failures: ran.failures, slowest: ran.slowest, spent: ran.spent };
}

function tell({ kind, tried, failures, slowest, spent }: Outcome): void {
  const cells = [kind.name.padEnd(10), String(tried).padStart(8), String(failures.length).padStart(10)];
  const longest = `${slowest.ratio.toFixed(1)} x (seed ${slowest.seed})`;
  console.log(`${cells.join('')}   ${(spent / 1000).toFixed(1).padStart(7)} s   ${longest}`);
}

function tellFailure(kind: Kind, { seed, wrong, input }: Failure): void {
  mkdirSync(folder, { recursive: true });
  const file = `${folder}/${kind.name}-${seed}.txt`;
  writeFileSync(file, input);
  console.log(`\n${kind.name} ${seed}: ${wrong.slice(0, 5).join('\n  ')}`);
  console.log(`  again with: npm run fuzz -- ${kind.name} ${seed}   input in ${file}`);
  console.log(input.slice(0, 1500).replaceAll(/^/gm, '    '));
}

async function main(): Promise<void> {
  const [name, seed] = process.argv.slice(2);
  const chosen = name === undefined ? kinds : [kindNamed(name)];
  const outcomes: Outcome[] = [];
  console.log(
    'kind        inputs  failures       took   slowest, in times of parsing a good text of its size',
  );
  for (const kind of chosen) {
    if (kind === undefined)
      throw new Error(`There is no kind ${name ?? ''}: ${kinds.map((one) => one.name).join(', ')}.`);
    const wanted = Math.ceil(asked * kind.share);
    const from = seed === undefined ? 0 : Number(seed);
    const to = seed === undefined ? Math.min(wanted, kind.count ?? wanted) : from + 1;
    const outcome = await outcomeOf(kind, from, to);
    outcomes.push(outcome);
    tell(outcome);
  }
  for (const { kind, failures } of outcomes) for (const failure of failures) tellFailure(kind, failure);
  const failed = outcomes.reduce((sum, { failures }) => sum + failures.length, 0);
  const tried = outcomes.reduce((sum, one) => sum + one.tried, 0);
  console.log(`\n${tried} inputs, ${failed} failures`);
  process.exitCode = failed === 0 ? 0 : 1;
}

if (isMainThread) await main();
else await work();
