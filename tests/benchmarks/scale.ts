import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseDocument } from 'yaml';
import { finish } from '../../server/src/model/work.ts';
import { checkJson } from '../../server/src/cli/check-json.ts';
import { checkFile } from '../../server/src/cli/checked.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import type { Analysis } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { largeDraft } from './large-draft.ts';
import type { Flaw } from './large-draft.ts';
import { median, ms, timed } from './measure.ts';

/* How time and memory grow with the steps, from the text to all findings of order. */

const name = 'benchmark';
const stages = ['text', 'windows', 'order', 'findings'] as const;

type Sample = Readonly<Record<'parse' | 'all' | (typeof stages)[number], number>>;

function analysed(text: string): Analysis {
  return analyse(snapshotOf([{ id: name, text }]), name);
}

function sample(text: string): Sample {
  const parse = timed(() => parseDocument(text, { keepSourceTokens: true }));
  const analysis = analysed(text);
  const times = {
    text: timed(() => analysis.procedure()),
    windows: timed(() => finish(analysis.windows())),
    order: timed(() => finish(analysis.order())),
    findings: timed(() => finish(analysis.findings('order'))),
  };
  return { parse, ...times, all: stages.reduce((sum, stage) => sum + times[stage], 0) };
}

/** The middle of the later two thirds. */
function middle(text: string, runs: number): Sample {
  const samples = Array.from({ length: runs }, () => sample(text)).slice(Math.floor(runs / 3));
  const of = (key: keyof Sample): number => median(samples.map((one) => one[key]));
  return {
    parse: of('parse'),
    text: of('text'),
    windows: of('windows'),
    order: of('order'),
    findings: of('findings'),
    all: of('all'),
  };
}

// What the operating system says of the process itself: what Node says counts the one that it was forked from.
const sayPeak =
  'data:text/javascript,import { readFileSync } from "node:fs"; process.on("exit", () => ' +
  'console.error(/VmHWM:\\s+(\\d+)/.exec(readFileSync("/proc/self/status", "utf8"))[1]))';

/** The most memory, in megabytes, that a whole `check` of a text as a command takes at once, Node included. Linux only. */
function peakOf(text: string): number {
  const folder = mkdtempSync(join(tmpdir(), 'ohmwright-'));
  try {
    const file = join(folder, 'draft.procedure.yaml');
    writeFileSync(file, text);
    const { stderr } = spawnSync(process.execPath, ['--import', sayPeak, 'dist/cli.js', 'check', file], {
      encoding: 'utf8',
      stdio: ['ignore', 'ignore', 'pipe'],
    });
    return Number(stderr.trim()) / 1e3;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function cells(values: readonly (string | number)[], widths: readonly number[]): string {
  return values.map((value, at) => String(value).padStart(widths[at] ?? 8)).join('');
}

function curve(flaw: Flaw, sizes: readonly number[]): void {
  const widths = [7, 8, 10, 8, 9, 8, 10, 8, 10, 8, 9, 9];
  const head = ['steps', 'lines', 'findings', 'yaml', 'text', 'windows', 'order', 'rest', 'all'];
  console.log(cells([...head, 'a step', 'all/yaml', 'MB peak'], widths));
  for (const wanted of sizes) {
    const text = largeDraft(wanted, flaw);
    const analysis = analysed(text);
    const found = finish(analysis.findings('order')).length;
    if ((found === 0) !== (flaw === 'none'))
      throw new Error(`${found} findings in a draft with ${flaw} wrong`);
    const steps = analysis.procedure().value.steps.length;
    const { parse, text: inText, windows, order, findings, all } = middle(text, wanted > 1000 ? 15 : 30);
    const times = [parse, inText, windows, order, findings, all].map((time) => ms(time).trim());
    const aStep = (all / steps).toFixed(3);
    const lines = text.split('\n').length;
    const peak = peakOf(text).toFixed(0);
    console.log(cells([steps, lines, found, ...times, aStep, (all / parse).toFixed(2), peak], widths));
  }
}

export function measureScale(): void {
  console.log('Analysis of a large draft, warm, milliseconds (middle of the later two thirds of the runs)');
  curve('none', [200, 500, 1000, 2000, 5000]);
  console.log('\nThe same without its waits and warnings');
  curve('no-waits-and-warnings', [1000, 2000, 5000]);
  console.log('\nThe same with names that nothing carries');
  curve('unknown-names', [1000, 2000, 5000]);
  console.log(
    '\nThe findings of the draft without waits and warnings as JSON, with every step of every path',
  );
  for (const wanted of [1000, 2000]) {
    const checked = checkFile(analysed(largeDraft(wanted, 'no-waits-and-warnings')));
    let size = 0;
    const time = timed(() => {
      for (const piece of checkJson([checked])) size += piece.length;
    });
    console.log(
      `${String(wanted).padStart(7)} steps  ${checked.findings.length} findings ${ms(time)} ms  ${(size / 1e6).toFixed(1)} MB`,
    );
  }
}
