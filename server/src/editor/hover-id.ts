import { owedBy } from '../bench/owed.ts';
import { formatAccuracy, formatQuantity, formatSpan, formatWait } from '../quantity/quantity.ts';
import { basisInWords, measuresVoltage } from '../readings/basis.ts';
import { partInWords, resistanceInWords } from '../readings/resistance-in-words.ts';
import type {
  Connector,
  Entry,
  Id,
  InnerResistance,
  Load,
  Loop,
  Monitor,
  Multimeter,
  Network,
  Part,
  Procedure,
  Regulated,
  Routine,
  Source,
  Step,
} from '../model/procedure.ts';
import type { Resistance } from '../model/resistance.ts';
import { isHighVoltage, isolatorOf } from '../model/source-kinds.ts';
import { grouped, remembered } from '../model/remembered.ts';
import { stepNumber } from '../model/where.ts';
import { stepInWords } from '../model/step-in-words.ts';

/** What the file says of an id, in plain words: of something in the circuit, a side of a connector, or a step. */
export function describeId(procedure: Procedure, written: string): string | null {
  const [id = '', side] = written.split('.');
  const connector = procedure.connectors.get(id);
  if (side !== undefined) return connector === undefined ? null : sideInWords(procedure, connector, side);
  return ofCircuit(procedure, id) ?? ofNode(procedure, id) ?? ofStep(procedure, id);
}

/** Everything but steps. null: nothing has this id. */
function ofCircuit(procedure: Procedure, id: Id): string | null {
  const part = procedure.parts.get(id);
  if (part !== undefined) return partWords(part, measuresVoltage(procedure));
  const connector = procedure.connectors.get(id);
  if (connector !== undefined) return connectorInWords(connector);
  const load = procedure.loads.get(id);
  if (load !== undefined) return loadInWords(load, measuresVoltage(procedure));
  const loop = procedure.loops.get(id);
  if (loop !== undefined) return loopInWords(loop);
  const monitor = procedure.monitors.get(id);
  if (monitor !== undefined) return monitorInWords(monitor);
  const entry = procedure.entries.get(id);
  if (entry !== undefined) return entryInWords(entry);
  const meter = procedure.multimeters.get(id);
  if (meter !== undefined) return multimeterInWords(meter);
  const supply = procedure.regulated.get(id);
  if (supply !== undefined) return supplyInWords(supply);
  const source = procedure.sources.get(id);
  if (source !== undefined) return sourceInWords(source);
  const assembly = procedure.assemblies.get(id);
  if (assembly !== undefined) return `assembly of ${assembly.members.join(', ')}`;
  const routine = procedure.routines.get(id);
  return routine === undefined ? null : routineInWords(routine);
}

const elementsAt = remembered(({ elements }: Network) =>
  grouped(elements.flatMap((element) => element.between.map((node) => [node, element] as const))),
);

/** What ends at a node of the network. */
function ofNode({ network }: Procedure, node: string): string | null {
  const here = elementsAt(network).get(node) ?? [];
  if (here.length === 0) return null;
  const words = here.map((one) => (one.kind === 'connector' ? `${one.id} pin ${one.pin}` : one.id));
  return `node of ${words.join(', ')}`;
}

/** Those of the procedure itself, of each id the first. */
const stepsById = remembered(
  ({ steps }: Procedure): ReadonlyMap<Id, Step> =>
    new Map(
      steps.toReversed().flatMap((step) => (step.calls.length > 0 ? [] : [[step.id ?? '', step] as const])),
    ),
);

function ofStep(procedure: Procedure, id: Id): string | null {
  const step = stepsById(procedure).get(id);
  return step === undefined ? null : `step ${stepNumber(step)}, ${stepInWords(step)}`;
}

function supplyInWords({ voltage, resistance, from, needsIgnition }: Regulated): string {
  const volts = voltage === null ? '' : `, ${formatSpan(voltage, 'voltage')}`;
  const behind = from === null ? '' : `, on while ${from} is connected`;
  return `regulated supply${volts}${innerInWords(resistance)}${behind}${needsIgnition ? ' and the ignition on' : ''}`;
}

function partWords(part: Part, underPower: boolean): string {
  const { kind, form, resistance, live, voltage } = part;
  const volts = voltage === null ? '' : `, ${formatSpan(voltage, 'voltage')}`;
  const what = `${kind}${volts}${live ? ', live' : ''}`;
  if (resistance === null) return what;
  const each = form === 'two-conductor' && resistance.kind !== 'copper-wire' ? ' per conductor' : '';
  return `${what}, ${partInWords(part) ?? ''}${each}${basis(resistance, underPower)}`;
}

function basis(resistance: Resistance, underPower: boolean): string {
  const words = basisInWords(resistance, underPower);
  return words === null ? '' : ` (${words})`;
}

function entryInWords({ ask, range, accuracy }: Entry): string {
  const words = [
    `entered before reading, ${ask}`,
    ...(range === null ? [] : [formatSpan(range, 'temperature')]),
    ...(accuracy === null ? [] : [`measured to ± ${formatQuantity(accuracy, 'temperature')}`]),
  ];
  return words.join(', ');
}

function connectorInWords({ contact, shortingBar, carries }: Connector): string {
  const contacts = contact === null ? '' : `, contacts ${formatSpan(contact, 'resistance')}`;
  const bar =
    shortingBar === null
      ? ''
      : `, shorting bar on the ${shortingBar.side} side that closes when ${shortingBar.closes}`;
  const carried = carries.length === 0 ? '' : `, carries ${carries.join(', ')} past its loops`;
  return `connector${contacts}${bar}${carried}`;
}

function sideInWords(procedure: Procedure, connector: Connector, side: string): string {
  const where = whereSideIs(procedure, connector, side);
  const bar = connector.shortingBar;
  if (bar?.side !== side) return where;
  return `${where}; its shorting bar closes when ${bar.closes}, in parallel with a load that is fitted here`;
}

const connectorsIn = remembered(({ elements }: Network) =>
  grouped(
    elements.flatMap((element) => (element.kind === 'connector' ? [[element.id, element] as const] : [])),
  ),
);

/** A side in a loop is nearer the instrument or not; in the network alone it has the nodes that its pins lead to. */
function whereSideIs({ network }: Procedure, { id, sides }: Connector, side: string): string {
  const end = side === sides[0] ? 0 : 1;
  const pins = (connectorsIn(network).get(id) ?? []).map(
    ({ pin, between }) => `pin ${pin} at ${between[end]}`,
  );
  if (pins.length > 0) return `the side with ${pins.join(', ')}`;
  return end === 0 ? 'the side towards the instrument' : 'the side away from the instrument';
}

function loadInWords({ kind, resistance, opensShortingBar }: Load, underPower: boolean): string {
  const ohms =
    resistance === null ? '' : `, ${resistanceInWords(resistance)}${basis(resistance, underPower)}`;
  return `${kind}${ohms}${opensShortingBar ? ', opens the shorting bar on its side' : ''}`;
}

function routineInWords({ needs }: Routine): string {
  if (needs.size === 0) return 'routine';
  return `routine that needs ${[...needs].map(([need, kind]) => `${need} (${kind})`).join(', ')}`;
}

function loopInWords({ monitor, elements }: Loop): string {
  const path = [...(monitor === null ? [] : [monitor]), ...elements.map(({ id }) => id)];
  return `loop ${path.join(' - ')}`;
}

function monitorInWords({ range, accuracy, resolution }: Monitor): string {
  const words = [
    'monitor',
    ...(range === null ? [] : [`reads ${formatSpan(range, 'resistance')}, beyond it open`]),
    ...(accuracy === null ? [] : [`error ${formatAccuracy(accuracy, 'resistance')}`]),
    ...(resolution === null ? [] : [`steps of ${formatQuantity(resolution, 'resistance')}`]),
  ];
  return words.join(', ');
}

function multimeterInWords({ resistance, voltage, insulation }: Multimeter): string {
  const ohms = resistance?.range ?? null;
  const volts = voltage?.range ?? null;
  const tested = insulation?.range ?? null;
  const words = [
    'multimeter',
    ...(ohms === null ? [] : [formatSpan(ohms, 'resistance')]),
    ...(volts === null ? [] : [`DC ${formatSpan(volts, 'voltage')}`]),
    ...(tested === null ? [] : [`insulation ${formatSpan(tested, 'resistance')}`]),
  ];
  return words.join(', ');
}

function innerInWords(resistance: InnerResistance): string {
  const isStated = resistance !== null && resistance !== 'unstated';
  return isStated ? `, ${formatSpan(resistance, 'resistance')} inside` : '';
}

function sourceInWords(source: Source): string {
  const owed = owedBy(source);
  const feeds = source.feeds.length === 0 ? '' : `, feeds ${source.feeds.join(', ')}`;
  const connector = isolatorOf(source);
  const isolated = connector === null ? '' : `, isolated by ${connector}`;
  const description = `${kindOfSource(source)}${innerInWords(source.resistance)}${feeds}${isolated}`;
  if (owed.seconds === 0) return description;
  const from = [
    ...(owed.stated === null ? [] : [`${formatWait(owed.stated)} stated`]),
    ...(owed.discharge === null ? [] : [`${formatWait(owed.discharge)} until the reserve is safe`]),
  ];
  const proof = isHighVoltage(source) ? ', then verify that its circuit is without voltage' : '';
  return `${description}; after it is off wait ${formatWait(owed.seconds)} (${from.join(', ')})${proof}`;
}

function kindOfSource({ kind, voltage }: Source): string {
  switch (kind) {
    case 'battery':
      return 'battery';
    case 'high-voltage':
      return `high-voltage source${voltage === null ? '' : `, ${formatSpan(voltage, 'voltage')}`}, live`;
  }
}
