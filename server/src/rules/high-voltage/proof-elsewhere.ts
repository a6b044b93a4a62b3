import type { Circuit, Circuits } from '../../bench/circuits.ts';
import { connectorsProbed } from '../../bench/hazards.ts';
import { sameNodes } from '../../bench/same-nodes.ts';
import type { Id, Probed, Procedure, Terminal } from '../../model/procedure.ts';
import type { Path } from '../../model/where.ts';
import { everyLoopIsRead, highVoltageIn } from './high-voltage-check.ts';
import { handsAndBack, highVoltageExample, proveDead, takeAway } from './high-voltage-examples.ts';
import type { Context, Rule, Seen } from '../rule.ts';

/* Proofs that are taken where the voltage of the source never is. */

export const proofElsewhere: Rule = {
  name: 'proof-elsewhere',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning: 'Absence of voltage is verified at a place that the high-voltage source does not reach.',
  why: 'There is never voltage at such a place, so a reading of 0 V proves nothing.',
  source: 'a guard of this program',
  finder: { check: proofsElsewhere },
  examples: {
    triggers: highVoltageExample(
      'K8 does not lead the traction voltage',
      `${takeAway}- wait: 5 min${proveDead.replace('K7', 'K8')}${handsAndBack}`,
    ),
    passes: highVoltageExample('K7 does', `${takeAway}- wait: 5 min${proveDead}${handsAndBack}`),
  },
};

function proofsElsewhere({ procedure, graph, circuits }: Context): readonly Seen[] {
  const whole = highVoltageIn(procedure).every(({ feedsComplete }) => feedsComplete);
  if (!whole || !everyLoopIsRead(procedure)) return [];
  return graph.steps.flatMap((step, index): readonly Seen[] => {
    if (step.verb !== 'prove-dead') return [];
    const { source, at } = step;
    const why = offConnector(circuits, source, at) ?? offPins(procedure, circuits, source, at);
    if (why === null) return [];
    const message =
      `${why.message}, so a measurement there verifies nothing: ` +
      'measure between its poles, where it is fed or where a connector `carries` it.';
    return [{ index, issue: { rule: 'proof-elsewhere', subject: source, underline: why.at, message } }];
  });
}

interface Why {
  readonly message: string;
  /** In the step. */
  readonly at: Path;
}

function offConnector(circuits: Circuits, source: Id, at: Probed): Why | null {
  const off = connectorsProbed(at).find(
    (connector) => !circuits.hazardsAt(connector).some(({ sources }) => sources.includes(source)),
  );
  return off === undefined ? null : { message: `${source} does not reach ${off}`, at: ['at'] };
}

/** Pins that are written out: of a circuit that the source does not feed, or twice the same one. */
function offPins(procedure: Procedure, circuits: Circuits, source: Id, at: Probed): Why | null {
  if ('connector' in at) return null;
  const [one, other] = at;
  if (one.connector === other.connector && one.pin === other.pin) {
    const message = `Pin ${one.pin} of ${one.connector} is one pole of ${source} on both sides`;
    return { message, at: ['at'] };
  }
  for (const [index, terminal] of at.entries()) {
    const circuit = circuitAt(procedure, circuits, terminal);
    if (circuit === null || circuit.sources.includes(source)) continue;
    const message = `Pin ${terminal.pin} of ${terminal.connector} belongs to ${circuit.id}, which ${source} does not feed`;
    return { message, at: ['at', index] };
  }
  return null;
}

/** The circuit that uses a pin; null for a pin of no loop and no contact of the network: there a source may be carried. */
function circuitAt(
  procedure: Procedure,
  { all, holding }: Circuits,
  { connector, pin }: Terminal,
): Circuit | null {
  const ofLoop = all.find(({ loop }) => loop?.pins.get(connector)?.includes(pin) === true);
  if (ofLoop !== undefined) return ofLoop;
  const contact = procedure.network.elements.find(
    (element) => element.kind === 'connector' && element.id === connector && element.pin === pin,
  );
  if (contact === undefined) return null;
  const same = sameNodes(procedure);
  const nodes = contact.between.map(same);
  const there = holding(connector);
  return there.find(({ members }) => [...members].some((id) => nodes.includes(same(id)))) ?? there[0] ?? null;
}
