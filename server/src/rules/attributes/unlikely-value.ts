import { owedBy } from '../../bench/owed.ts';
import { resistanceWithin } from '../../circuit/circuit.ts';
import { formatQuantity, formatSpan, formatWait } from '../../quantity/quantity.ts';
import { conditionsOf } from '../../readings/conditions.ts';
import { isStage } from '../../model/part-kinds.ts';
import type { Procedure, Reserve, Source } from '../../model/procedure.ts';
import { isHighVoltage } from '../../model/source-kinds.ts';
import type { Path } from '../../model/where.ts';
import { circuit, example, readOnly } from '../examples.ts';
import type { Context, Rule, Seen } from '../rule.ts';

/* Values that no such system has: a unit or a digit was slipped, or a value was invented. Common practice, no source. */

export const unlikelyValue: Rule = {
  name: 'unlikely-value',
  severity: 'warning',
  stage: 'order',
  meaning:
    'A value that no such system has: a wait under 10 s after a restraint battery or under 1 min after high voltage, a wait of a tenth of what the reserve needs, a safe voltage near the voltage itself, a stage outside 0.5 to 10 Ω, a test current above 100 mA, a `wiggle` under 5 s or over 1 h.',
  why: 'All that is computed rests on these values. A slip of a unit or a digit makes a wait too short or a window too wide.',
  source: 'common practice, no source',
  finder: {
    check: (context) => [
      ...unlikelyWaits(context),
      ...unlikelySafe(context),
      ...unlikelyStages(context),
      ...unlikelyCurrents(context),
      ...unlikelyMoving(context),
    ],
  },
  examples: {
    triggers: example('three seconds in place of three minutes', readOnly, {
      sources: circuit.sources.replace('3 min', '3 s'),
    }),
    passes: example('three minutes', readOnly),
  },
};

/** Seconds, volts as a part of the voltage, ohms, amperes. */
const usual = {
  waitOfStages: 10,
  waitOfHighVoltage: 60,
  /** The stated wait is held against the reserve. */
  ofReserve: 1 / 10,
  safeOfVoltage: 0.9,
  stage: { least: 0.5, most: 10 },
  testCurrent: 0.1,
  moved: { least: 5, most: 3600 },
} as const;

function unlikely(subject: string, path: Path, message: string): Seen {
  return { issue: { rule: 'unlikely-value', subject, place: { path, part: 'value' }, message } };
}

function unlikelyWaits({ procedure, circuits }: Context): readonly Seen[] {
  return [...procedure.sources.values()].flatMap((source): readonly Seen[] => {
    const { stated, discharge } = owedBy(source);
    // A wait of 0 s is told by a rule of its own.
    if (stated === null || stated === 0) return [];
    const path = [...source.path, 'wait'];
    const wait = formatWait(stated);
    if (discharge !== null && stated <= discharge * usual.ofReserve)
      return [
        unlikely(
          source.id,
          path,
          `${source.id} asks for a wait of ${wait}, and its reserve needs ${formatWait(discharge)}: one of them is wrong. Compare both with the maker's service information.`,
        ),
      ];
    const feedsStage = circuits.live.some(
      ({ sources, liveParts }) =>
        sources.includes(source.id) && liveParts.some((id) => isStage(procedure.parts.get(id))),
    );
    const least = isHighVoltage(source) ? usual.waitOfHighVoltage : feedsStage ? usual.waitOfStages : 0;
    if (stated >= least) return [];
    const what = isHighVoltage(source) ? 'high voltage' : 'a restraint system';
    return [
      unlikely(
        source.id,
        path,
        `A wait of ${wait} is shorter than ${what} usually needs (${formatWait(least)} or more). Compare it with the maker's service information.`,
      ),
    ];
  });
}

function unlikelySafe({ procedure }: Context): readonly Seen[] {
  return [...procedure.sources.values()].flatMap((source): readonly Seen[] => {
    const found = safeLimit(source);
    // Where it is never above the safe voltage, that is told by a rule of its own.
    if (found === null || found.safe <= found.volts * usual.safeOfVoltage || found.safe >= found.volts)
      return [];
    const [safe, volts] = [found.safe, found.volts].map((value) => formatQuantity(value, 'voltage'));
    return [
      unlikely(
        source.id,
        found.path,
        `${source.id} counts as safe below ${safe ?? ''}, almost its own ${volts ?? ''}: then nothing has to run down. Compare it with the maker's service information.`,
      ),
    ];
  });
}

/** Volts below which it counts as safe, where the file says so, and those that it starts from. */
function safeLimit(
  source: Source,
): { readonly safe: number; readonly volts: number; readonly path: Path } | null {
  const reserve: Reserve | null = source.reserve === 'unstated' ? null : source.reserve;
  switch (source.kind) {
    case 'battery': {
      if (reserve === null) return null;
      const path = [...source.path, 'reserve', 'safe-below'];
      return { safe: reserve.safeBelow.most, volts: reserve.chargedTo.most, path };
    }
    case 'high-voltage': {
      const { safeBelow, voltage } = source;
      if (safeBelow === null || voltage === null) return null;
      return { safe: safeBelow.most, volts: voltage.most, path: [...source.path, 'voltage'] };
    }
  }
}

function unlikelyStages({ procedure }: Context): readonly Seen[] {
  return [...procedure.parts.values()].flatMap((part): readonly Seen[] => {
    if (!isStage(part) || part.resistance === null) return [];
    const { least, nominal, most } = resistanceWithin(part.resistance, conditionsOf(procedure));
    if (least >= usual.stage.least && most <= usual.stage.most) return [];
    const ohms = formatSpan({ least, nominal, most }, 'resistance');
    return [
      unlikely(
        part.id,
        [...part.path, 'resistance'],
        `A stage of ${ohms} is unusual: their bridges have ${usual.stage.least} to ${usual.stage.most} Ω. Look at the unit and the digits.`,
      ),
    ];
  });
}

function unlikelyCurrents({ procedure }: Context): readonly Seen[] {
  return [...procedure.monitors.values()].flatMap(({ id, path, testCurrent }): readonly Seen[] => {
    if (testCurrent === null || testCurrent.most <= usual.testCurrent) return [];
    if (!readsStage(procedure, id)) return [];
    const current = formatQuantity(testCurrent.most, 'current');
    return [
      unlikely(
        id,
        [...path, 'test-current'],
        `${id} reads a stage with ${current}: control units use far less than ${formatQuantity(usual.testCurrent, 'current')}. Look at the unit and the digits.`,
      ),
    ];
  });
}

/** A fault that comes and goes needs some time to come, and hands tire. */
function unlikelyMoving({ procedure }: Context): readonly Seen[] {
  const { least, most } = usual.moved;
  return procedure.steps.flatMap((step): readonly Seen[] => {
    if (step.verb !== 'wiggle' || (step.seconds >= least && step.seconds <= most)) return [];
    const time = formatWait(step.seconds);
    const message =
      `Nobody moves wires for ${time} to find a fault: ${formatWait(least)} to ${formatWait(most)} are usual. ` +
      'Look at the unit and the digits.';
    return [{ index: step.index, issue: { rule: 'unlikely-value', underline: ['for'], message } }];
  });
}

/** Whether a monitor reads a loop with an initiator, live or inert. */
function readsStage({ loops, parts }: Procedure, monitor: string): boolean {
  return [...loops.values()].some(
    (loop) => loop.monitor === monitor && loop.elements.some(({ id }) => isStage(parts.get(id))),
  );
}
