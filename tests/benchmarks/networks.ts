import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { lup, lusolve, sparse } from 'mathjs';
import { flowBetween, resistanceBetween, voltageWindow } from '../../server/src/circuit/circuit.ts';
import type { Edge, Element, Source } from '../../server/src/circuit/circuit.ts';
import { decades, meshes } from '../circuit/arbitrary-networks.ts';
import { pieceAround } from '../circuit/nodal.ts';
import { assembled } from '../outside/equations.ts';
import { median, ms, timed } from './measure.ts';

/*
 * Networks of 300 nodes: ours beside a general linear-algebra package and ngspice, in the same run. ngspice is a program
 * of its own; how long it takes to start is measured with an empty deck and said.
 */

interface Large {
  readonly name: string;
  readonly edges: readonly Edge[];
  readonly nodes: number;
}

const nodes = 300;

function ladder(): Large {
  const edges = Array.from({ length: nodes - 2 }, (_, node) => [
    { a: node, b: node + 2, ohms: 0.01 + (node % 7) / 100 },
    ...(node % 2 === 0 ? [{ a: node, b: node + 1, ohms: 100 + node }] : []),
  ]).flat();
  return { name: 'two rails with rungs', edges: [...edges, { a: nodes - 2, b: nodes - 1, ohms: 2 }], nodes };
}

function grid(): Large {
  const [wide, high] = [20, 15];
  const edges = Array.from({ length: nodes }, (_, node) => [
    ...(node % wide < wide - 1 ? [{ a: node, b: node + 1, ohms: 1 + (node % 5) }] : []),
    ...(node < wide * (high - 1) ? [{ a: node, b: node + wide, ohms: 1 + (node % 3) }] : []),
  ]).flat();
  return { name: 'grid of 15 by 20', edges, nodes };
}

function random(): Large {
  const [drawn] = fc
    .sample(meshes(decades(-1, 3), nodes), { numRuns: 200, seed: 300 })
    .filter(
      ({ nodes: count, edges }) =>
        count > nodes - 20 && edges.length > 2 * nodes - 50 && pieceAround(edges, 0).has(count - 1),
    );
  if (drawn === undefined) throw new Error('no large network was drawn');
  return { name: `random, ${drawn.edges.length} resistors`, edges: drawn.edges, nodes: drawn.nodes };
}

function middle(run: () => unknown, runs = 15): number {
  const times = Array.from({ length: runs }, () => timed(run));
  return median(times.slice(Math.floor(runs / 3)));
}

export function measureNetworks(): void {
  console.log('\nA network of 300 nodes, milliseconds (middle of the later two thirds of the runs)');
  console.log(
    '                          resistance   all currents   mathjs sparse LU   mathjs dense LU   ngspice, less its start',
  );
  const idle = ngspice([]);
  for (const { name, edges, nodes: count } of [ladder(), grid(), random()]) {
    const [from, to] = [0, count - 1];
    const own = middle(() => resistanceBetween(edges, count, from, to));
    const flow = middle(() => flowBetween(edges, count, from, to));
    const { matrix, right } = assembled(edges, [{ a: from, b: to, kind: 'current', value: 1 }], to);
    const sparseMatrix = sparse(matrix);
    const bySparse = middle(() => lusolve(sparseMatrix, right), 5);
    const byDense = middle(() => lusolve(lup(matrix), right), 3);
    const piece = pieceAround(edges, to);
    const cards = edges.flatMap(({ a, b, ohms }, index) =>
      piece.has(a) ? [`R${index} ${a === to ? 0 : `n${a}`} ${b === to ? 0 : `n${b}`} ${ohms}`] : [],
    );
    const spice = idle === null ? null : (ngspice([...cards, `I0 0 n${from} 1`]) ?? NaN) - idle;
    console.log(
      `  ${name.padEnd(24)}${ms(own)}        ${ms(flow)}            ${ms(bySparse)}           ${ms(byDense)}   ${spice === null ? 'not installed' : ms(spice)}`,
    );
  }
  if (idle !== null) console.log(`  (ngspice with an empty deck takes ${ms(idle).trim()})`);
  measureVoltage();
}

/** A supply with twelve loads along two rails, every value with a tolerance: how long the window of one voltage takes. */
function measureVoltage(): void {
  const span = (ohms: number): { least: number; nominal: number; most: number } => ({
    least: ohms * 0.95,
    nominal: ohms,
    most: ohms * 1.05,
  });
  const resistor = (id: string, a: string, b: string, ohms: number): Element => ({
    id,
    between: [a, b],
    part: { kind: 'stated', resistance: span(ohms) },
  });
  const rails = Array.from({ length: 12 }, (_, place) => [
    resistor(`plus-${place}`, `p${place}`, `p${place + 1}`, 0.05),
    resistor(`minus-${place}`, `m${place}`, `m${place + 1}`, 0.05),
    resistor(`load-${place}`, `p${place + 1}`, `m${place + 1}`, 20 + place),
  ]).flat();
  const battery: Source = { id: 'battery', between: ['p0', 'm0'], kind: 'voltage', value: span(12.6) };
  const ranges = { ambient: { least: 15, nominal: 25, most: 35 }, entered: new Map() };
  const window = voltageWindow(rails, [battery], 'p6', 'm12', ranges);
  const exact = window.kind === 'number' && window.exact;
  const time = middle(() => voltageWindow(rails, [battery], 'p6', 'm12', ranges));
  console.log(
    `\nThe window of a voltage among 36 resistors of ± 5 %: ${ms(time).trim()} ms, ${exact ? 'exact' : 'an outer bound'}`,
  );
}

/** How long ngspice takes for a deck, with its start; null: it is not installed. */
function ngspice(cards: readonly string[]): number | null {
  const folder = mkdtempSync(join(tmpdir(), 'benchmark-'));
  try {
    const file = join(folder, 'deck.cir');
    const body = cards.length === 0 ? ['R0 a 0 1', 'I0 0 a 1'] : cards;
    writeFileSync(file, ['deck', ...body, '.control', 'op', 'quit 0', '.endc', '.end', ''].join('\n'));
    const run = (): boolean => spawnSync('ngspice', ['-b', file]).status === 0;
    return run() ? middle(run, 9) : null;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
