import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Drive, Edge } from '../../server/src/circuit/circuit.ts';
import { lacksProgram } from '../needs.ts';

/** A network of resistors and the two nodes between which it is to be measured. 0 Ω is a joint, Infinity no connection. */
export interface OracleNetwork {
  readonly edges: readonly Edge[];
  readonly from: number;
  readonly to: number;
}

export const lacksNgspice = lacksProgram('ngspice');

/**
 * Resistances in ohms, as ngspice finds them: 1 A is driven through each network and its voltage read, all networks in
 * one deck. It holds about eight decades in one network; beyond, its own rounding shows.
 */
export function solveWithNgspice(networks: readonly OracleNetwork[]): readonly number[] {
  const written = networks.map((network, index) => writeNetwork(network, index));
  const cards = written.filter((lines) => lines !== undefined).flat();
  const measured = written.flatMap((lines, index) => (lines === undefined ? [] : [index]));
  const printed = measured.length === 0 ? new Map<string, number>() : runDeck(cards);
  return networks.map((network, index) => {
    if (network.from === network.to) return 0;
    if (written[index] === undefined) return Infinity;
    const volts = printed.get(`p${index}`);
    if (volts === undefined) throw new Error(`ngspice gave no voltage for network ${index}`);
    return volts;
  });
}

/**
 * The cards of one network, or undefined where nothing connects its probes. Pieces that hang in the air would make the
 * equations singular and are left out; so is each 0 V source that would close a ring of such sources.
 */
function writeNetwork({ edges, from, to }: OracleNetwork, index: number): readonly string[] | undefined {
  if (from === to) return undefined;
  const piece = reachable(edges, from);
  if (!piece.has(to)) return undefined;
  const name = (node: number): string =>
    node === to ? '0' : node === from ? `p${index}` : `n${index}_${node}`;
  const lines = [`I${index} 0 ${name(from)} 1`];
  const joints: Edge[] = [];
  for (const [place, edge] of edges.entries()) {
    const { a, b, ohms } = edge;
    if (a === b || ohms === Infinity || !piece.has(a)) continue;
    if (ohms !== 0) {
      lines.push(`R${index}_${place} ${name(a)} ${name(b)} ${ohms}`);
    } else if (!reachable(joints, a).has(b)) {
      joints.push(edge);
      lines.push(`V${index}_${place} ${name(a)} ${name(b)} 0`);
    }
  }
  return lines;
}

function reachable(edges: readonly Edge[], start: number): ReadonlySet<number> {
  const reached = new Set([start]);
  const waiting = [start];
  for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
    for (const { a, b, ohms } of edges) {
      if (ohms === Infinity || (a !== node && b !== node)) continue;
      const other = a === node ? b : a;
      if (reached.has(other)) continue;
      reached.add(other);
      waiting.push(other);
    }
  }
  return reached;
}

/** The operating point of all cards together: the voltage of each node, and the current into each source by `NAME#branch`. */
export function runDeck(cards: readonly string[]): ReadonlyMap<string, number> {
  const deck = [
    'many networks',
    ...cards,
    '.control',
    'set numdgt=15',
    'op',
    'print all',
    // Without this the batch mode looks for an analysis outside and ends with an error.
    'quit 0',
    '.endc',
    '.end',
  ];
  const folder = mkdtempSync(join(tmpdir(), 'networks-'));
  try {
    const file = join(folder, 'deck.cir');
    writeFileSync(file, `${deck.join('\n')}\n`);
    const { stdout, stderr, status } = spawnSync('ngspice', ['-b', file], {
      encoding: 'utf8',
      maxBuffer: 256 * 1024 * 1024,
    });
    if (status !== 0)
      throw new Error(`ngspice ended with ${status ?? 'no status'}: ${stderr.slice(0, 2000)}`);
    const lines = stdout.matchAll(/^(\S+) = (\S+)$/gm);
    return new Map([...lines].map(([, name = '', value]) => [name, Number(value)]));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** A network with sources; node 0 is ground. */
export interface OracleCircuit {
  readonly edges: readonly Edge[];
  readonly drives: readonly Drive[];
  readonly nodes: number;
}

export interface OraclePoint {
  /** Of each node above ground; NaN where nothing connects it. */
  readonly volts: readonly number[];
  /** Out of the plus of each voltage source; NaN where nothing connects it with ground, and for current sources. */
  readonly delivered: readonly number[];
}

/** Operating points as ngspice finds them, all circuits in one deck. Sources must not be in conflict. */
export function operateWithNgspice(circuits: readonly OracleCircuit[]): readonly OraclePoint[] {
  const written = circuits.map(writeCircuit);
  const printed = runDeck(written.flat());
  return circuits.map(({ nodes, drives }, index) => ({
    volts: Array.from({ length: nodes }, (_, node) =>
      node === 0 ? 0 : (printed.get(`n${index}_${node}`) ?? NaN),
    ),
    // ngspice counts the current into the plus.
    delivered: drives.map((_, place) => -(printed.get(`vs${index}_${place}#branch`) ?? NaN)),
  }));
}

function writeCircuit({ edges, drives }: OracleCircuit, index: number): readonly string[] {
  const voltages = drives.filter(({ kind }) => kind === 'voltage');
  const piece = reachable([...edges, ...voltages.map(({ a, b }) => ({ a, b, ohms: 0 }))], 0);
  const name = (node: number): string => (node === 0 ? '0' : `n${index}_${node}`);
  const cards: string[] = [];
  const joints: Edge[] = voltages.map(({ a, b }) => ({ a, b, ohms: 0 }));
  for (const [place, edge] of edges.entries()) {
    const { a, b, ohms } = edge;
    if (a === b || ohms === Infinity || !piece.has(a)) continue;
    if (ohms !== 0) cards.push(`R${index}_${place} ${name(a)} ${name(b)} ${ohms}`);
    else if (!reachable(joints, a).has(b)) {
      joints.push(edge);
      cards.push(`VJ${index}_${place} ${name(a)} ${name(b)} 0`);
    }
  }
  for (const [place, { a, b, kind, value }] of drives.entries()) {
    if (!piece.has(a)) continue;
    if (kind === 'current') cards.push(`IS${index}_${place} ${name(b)} ${name(a)} ${value}`);
    else cards.push(`VS${index}_${place} ${name(a)} ${name(b)} ${value}`);
  }
  return cards;
}
