import { quantities } from '../format/words.ts';
import type { ActionReader } from './action-reader.ts';
import { lookUp } from './names.ts';
import { keyAt, valueAt } from './problem.ts';
import type { Action, ByHand, Carrying, Id, NodeName, Probe, Quantity } from '../model/procedure.ts';
import { hasSide } from './read-circuit.ts';
import { meterOf } from './read-high-voltage.ts';
import { judgedOf } from './read-judged.ts';
import { namedNodes, pinsOf } from './read-network.ts';
import { positive } from './quantities.ts';
import { ids } from './read-sources.ts';
import { quantityFacts } from '../model/quantity-kinds.ts';
import { areComplete } from './read-places.ts';
import { someOf } from './some-of.ts';
import type { Path } from '../model/where.ts';

/** null: something that it names could not be read, and a finding says so. */
export function readMeasure(values: Readonly<Record<string, unknown>>, context: ActionReader): Action | null {
  const quantity = quantities.find((one) => one === values.measure);
  const measured = quantity === undefined ? null : measuredOf(quantity, values, context);
  return measured === null ? null : { verb: 'measure', ...measured };
}

/** What a multimeter measures in a step; null where something that it names could not be read. */
export function measuredOf(
  quantity: Quantity,
  values: Readonly<Record<string, unknown>>,
  context: ActionReader,
): ByHand | null {
  const { path } = context;
  const carried = quantity === 'current' ? carriedOf(values, context) : null;
  const across =
    quantity === 'current'
      ? (carried?.across ?? null)
      : acrossOf(values.across, [...path, 'across'], quantity, context);
  const carrying = carried?.carrying ?? null;
  const drawing = drawingOf(values.drawing, quantity, context);
  const key = carrying?.kind === 'clamp' ? 'clamp' : quantity;
  const meter = meterOf(values.with, key, [...path, 'with'], context);
  const tester = quantity === 'insulation' ? testerOf(values, context) : null;
  const judged = judgedOf(values, quantity, context);
  if (across === null || drawing === null || meter === null || judged === null) return null;
  if (quantity === 'insulation' && tester === null) return null;
  return { quantity, ...across, with: meter, tester, carrying, drawing, ...judged };
}

/** Volts. At this and above nobody's word is taken for it that something is discharged (ISO 6469-3, class B). */
const provenFrom = 60;

function testerOf(
  values: Readonly<Record<string, unknown>>,
  { path, reader: { report } }: ActionReader,
): ByHand['tester'] {
  const written = values['at-voltage'];
  const at = [...path, 'at-voltage'];
  const volts = positive(typeof written === 'string' ? written : undefined, 'voltage', at, report);
  if (volts === null) return null;
  const discharged = values.discharged === true;
  if (discharged && volts >= provenFrom) {
    const message = `From ${provenFrom} V on this is no proof: what was charged counts as charged until a \`prove-dead\` there.`;
    report({ rule: 'wrong-value', at: keyAt([...path, 'discharged']), message });
    return null;
  }
  return { volts, discharged };
}

type Across = Pick<ByHand, 'across' | 'of'>;

function acrossOf(written: unknown, path: Path, quantity: Quantity, context: ActionReader): Across | null {
  if (typeof written === 'string') return acrossSide(written, path, context);
  const [one, other] = Array.isArray(written) ? (written as unknown[]) : [];
  if (typeof one !== 'string' || typeof other !== 'string') return null;
  const first = probeAt(one, [...path, 0], quantity, context);
  const second = probeAt(other, [...path, 1], quantity, context);
  if (one === other) {
    const message = 'The probes touch two different points.';
    context.reader.report({ rule: 'wrong-value', at: valueAt([...path, 1]), message, subject: other });
    return null;
  }
  return first === null || second === null ? null : { across: [first, second], of: `${one}..${other}` };
}

/** Consumers that are named; null: one of them is none, which has been reported. */
function drawingOf(written: unknown, quantity: Quantity, context: ActionReader): readonly Id[] | null {
  if (written === undefined) return [];
  const path = [...context.path, 'drawing'];
  const { names, report } = context.reader;
  if (quantityFacts[quantity].byOwnCurrent) {
    const message = 'Nothing is drawn while a resistance is measured: its source is off.';
    report({ rule: 'wrong-value', at: keyAt(path), message });
    return null;
  }
  const named = ids(written as string | readonly string[], path);
  const known = named.filter(({ id, path: at }) => {
    if (lookUp(names, id, ['parts'], valueAt(at), report) === null) return false;
    const part = context.bench.parts.get(id);
    if (part === undefined) return false;
    if (part.draws !== null) return true;
    const message = `\`${id}\` is no consumer: nothing says what it draws.`;
    report({ rule: 'wrong-id', at: valueAt(at), message, subject: id });
    return false;
  });
  return known.length < named.length ? null : known.map(({ id }) => id);
}

interface Carried {
  readonly across: Across;
  readonly carrying: Carrying;
}

/** Where a current is measured: around one conductor, or between the terminals of an unplugged pin. */
function carriedOf(values: Readonly<Record<string, unknown>>, context: ActionReader): Carried | null {
  const { path } = context;
  const { around, in: between } = values;
  if ((around === undefined) === (between === undefined)) {
    const message =
      'A current is measured either `around:` a part with a clamp, or `in:` both terminals of a pin of an unplugged connector.';
    const at = keyAt(around === undefined ? path : [...path, 'in']);
    context.reader.report({ rule: around === undefined ? 'missing-key' : 'wrong-value', at, message });
    return null;
  }
  if (typeof around === 'string') return clampedOf(around, [...path, 'around'], context);
  return Array.isArray(between) ? inSeries(between as unknown[], [...path, 'in'], context) : null;
}

/** Around one conductor; what has two in a loop reads zero in a clamp. */
function clampedOf(part: string, path: Path, { bench, reader }: ActionReader): Carried | null {
  const { names, report } = reader;
  if (lookUp(names, part, ['parts'], valueAt(path), report) === null) return null;
  const element = bench.network.elements.find(({ kind, id }) => kind === 'part' && id === part);
  if (element !== undefined) {
    const [from, to, further] = element.between;
    if (further !== undefined) {
      const message = `\`${part}\` is a potentiometer and no single conductor. The clamp goes around a wire that leads to it: state it as a part of the network.`;
      report({ rule: 'wrong-id', at: valueAt(path), message, subject: part });
      return null;
    }
    const across = [probeOfNode(from), probeOfNode(to)] as const;
    return { across: { across, of: part }, carrying: { kind: 'clamp', part } };
  }
  if (!bench.network.complete) return null;
  const isPair = [...bench.loops.values()].some(({ elements }) => elements.some(({ id }) => id === part));
  const message = isPair
    ? `A clamp around \`${part}\` is around both conductors of its loop and reads zero. It goes around one conductor: a part of the network.`
    : `\`${part}\` stands nowhere in the network: nothing flows there.`;
  report({ rule: 'wrong-id', at: valueAt(path), message, subject: part });
  return null;
}

function probeOfNode(node: NodeName): Probe {
  const [connector = '', side, pin] = node.split('.');
  return side === undefined || pin === undefined ? { node } : { connector, side, pin };
}

function inSeries(written: readonly unknown[], path: Path, context: ActionReader): Carried | null {
  const found = acrossOf(written, path, 'current', context);
  if (found === null) return null;
  const [one, other] = found.across;
  const isOnePin =
    !('node' in one) && !('node' in other) && one.connector === other.connector && one.pin === other.pin;
  if (isOnePin) return { across: found, carrying: { kind: 'series', connector: one.connector } };
  const message =
    'The instrument takes the place of one pin of an unplugged connector: both terminals are of that pin, one on each side.';
  context.reader.report({ rule: 'wrong-value', at: valueAt([...path, 1]), message });
  return null;
}

/** Both poles of a side, where it is plain which pins these are. */
function acrossSide(
  written: string,
  path: Path,
  { reader: { names, report }, bench }: ActionReader,
): Across | null {
  const [connector = '', side] = written.split('.');
  const at = valueAt(path, [0, connector.length]);
  if (lookUp(names, connector, ['connectors'], at, report) === null) return null;
  const found = bench.connectors.get(connector);
  const sides = found?.sides ?? ['monitor', 'end'];
  if (side === undefined) {
    const message = `A connector is measured at one of its sides: \`${connector}.${sides[0]}\` or \`${connector}.${sides[1]}\`.`;
    report({ rule: 'wrong-value', at: valueAt(path), message, subject: connector });
    return null;
  }
  if (found === undefined || !hasSide(found, side, path, report)) return null;
  const [one = '1', other = '2', third] = pinsOf(connector, bench.loops, bench.network.elements);
  if (third === undefined)
    return {
      across: [
        { connector, side, pin: one },
        { connector, side, pin: other },
      ],
      of: written,
    };
  const message = `\`${connector}\` has more than two pins here; say which two: \`[${written}.${one}, ${written}.${other}]\`.`;
  report({ rule: 'wrong-value', at: valueAt(path), message, subject: connector });
  return null;
}

function probeAt(written: string, path: Path, quantity: Quantity, context: ActionReader): Probe | null {
  const { bench, reader } = context;
  const { names, report } = reader;
  const [name = '', side, pin] = written.split('.');
  // Insulation is measured to a ground to which nothing leads.
  if (written === 'ground' && quantity === 'insulation') return { node: written };
  if (side === undefined || pin === undefined) return nodeAt(written, path, context);
  if (lookUp(names, name, ['connectors'], valueAt(path, [0, name.length]), report) === null) return null;
  const connector = bench.connectors.get(name);
  if (connector === undefined || !hasSide(connector, side, path, report)) return null;
  const pins = pinsOf(name, bench.loops, bench.network.elements);
  const isKnown = areComplete(bench.loops) && bench.network.complete;
  if (!isKnown || pins.length === 0 || pins.includes(pin)) return { connector: name, side, pin };
  const message = `Pin ${pin} of \`${name}\` stands in no loop and nowhere in the network; those that do are ${someOf(pins)}.`;
  report({ rule: 'wrong-id', at: valueAt(path), message, subject: written });
  return null;
}

function nodeAt(node: NodeName, path: Path, { bench, reader }: ActionReader): Probe | null {
  const { names, report } = reader;
  const nodes = namedNodes(bench.network);
  if (nodes.has(node)) return { node };
  if (!bench.network.complete) return null;
  const named = names.things.get(node);
  if (named !== undefined) {
    const message = `A probe touches a point: a node of the network, or a terminal such as \`${named.section === 'connectors' ? node : 'K30'}.end.1\`.`;
    report({ rule: 'wrong-id', at: valueAt(path), message, subject: node });
    return null;
  }
  const { sentence, meant } = names.guess(node, () => [...nodes]);
  const message = `The network has no node \`${node}\`.${sentence}`;
  report({ rule: 'unknown-id', at: valueAt(path), message, subject: node, ...meant });
  return null;
}
