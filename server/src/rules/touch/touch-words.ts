import type { Half } from '../../bench/carried.ts';
import type { Issue } from '../../paths/issue.ts';
import { owedByAll } from '../../bench/owed.ts';
import type { Power } from '../../bench/power.ts';
import type { Touch } from '../../bench/touch.ts';
import { formatWait } from '../../quantity/quantity.ts';
import type { Id, Procedure } from '../../model/procedure.ts';
import { isHighVoltage, isolatorOf } from '../../model/source-kinds.ts';
import { listed, whatIsOn } from '../words.ts';

/*
 * What is said of hands, and of proofs, where a circuit still has power or holds energy. `live` are the stages and sections
 * concerned. What a stage can do depends on the bench, so only what is true of its circuit on every bench is said.
 */

export function liveTouch(
  procedure: Procedure,
  touch: Touch,
  live: readonly Id[],
  sources: readonly Id[],
  power: Power,
): Issue {
  const needed = [...whatTakesAway(procedure, sources, power), ...whatProves(procedure, sources)];
  const { touches, circuit } = circuitTouched(touch, live);
  const has = circuit === 'they' ? 'have' : 'has';
  return {
    rule: 'live-touch',
    subject: touch.id,
    cause: sources.join(),
    underline: touch.place,
    message: `${touches}, and ${circuit} ${has} power: ${whatIsOn(power, sources)}. Add before it: ${listed(needed)}.`,
  };
}

export function shortWait(
  procedure: Procedure,
  touch: Touch,
  live: readonly Id[],
  sources: readonly Id[],
  wait: number,
): Issue {
  const whole = formatWait(owedByAll(procedure, sources));
  const more = formatWait(wait);
  const { touches, circuit } = circuitTouched(touch, live);
  return {
    rule: 'short-wait',
    subject: touch.id,
    cause: sources.join(),
    owes: sources,
    underline: touch.place,
    message:
      `${touches}, before the waiting time is over: ${circuit} can still hold energy. ` +
      `After ${listed(sources)} is off the wait is ${whole}, and ${more === whole ? 'none of it is over' : `${more} of it remain`}. Add before it: \`wait: ${more}\`.`,
  };
}

/** What no proof has shown: a source, and where it has to be looked for if one place alone shows it. */
export interface Unshown {
  readonly source: Id;
  readonly halves: readonly Half[];
  /** It was proven at a place that says nothing of this one. */
  readonly isProvenElsewhere: boolean;
}

export function notProvenDead(touch: Touch, live: readonly Id[], missing: readonly Unshown[]): Issue {
  const proofs = missing.flatMap(({ source, halves }) =>
    halves.length === 0
      ? [`\`prove-dead: ${source}\``]
      : halves.map((half) => `\`prove-dead: ${source}\` with \`at: ${half.connector}.${half.side}\``),
  );
  return {
    rule: 'not-proven-dead',
    subject: touch.id,
    cause: missing.map(({ source }) => source).join(),
    underline: touch.place,
    message:
      `${circuitTouched(touch, live).touches}, and nobody has verified that no voltage is left there` +
      `${missing.some((one) => one.isProvenElsewhere) ? ': the place where it was verified is not connected to this one here' : ''}. ` +
      `Add before it, after the wait: ${listed(proofs)}.`,
  };
}

export function hangsOnSource(procedure: Procedure, touch: Touch, sources: readonly Id[]): Issue {
  const isolators = sources.map((id) => isolatorOf(procedure.sources.get(id))).filter((id) => id !== null);
  return {
    rule: 'live-touch',
    subject: touch.id,
    cause: `${sources.join()} itself`,
    underline: touch.place,
    message:
      `This step touches ${touch.id}, which is connected to ${listed(sources)} itself here: that side of ${listed(isolators)} always has voltage, whatever was verified. ` +
      `Work on the other side of ${listed(isolators)}, or unplug a connector between before the voltage is verified.`,
  };
}

export function seatTouched(touch: Touch, sources: readonly Id[]): Issue {
  return {
    rule: 'live-touch',
    subject: touch.id,
    cause: `${sources.join()} itself`,
    underline: touch.place,
    message:
      `This step touches ${touch.id}, which isolates ${listed(sources)}: contacts in its seat can stay connected to ${listed(sources)} and always have voltage, whatever was verified. ` +
      'End with a `stop` that sends for the high-voltage expert; what is only looked at stands in `of`.',
  };
}

export function proofTooEarly(
  procedure: Procedure,
  source: Id,
  on: readonly Id[],
  wait: number,
  power: Power,
): Issue {
  const why =
    on.length > 0
      ? `${whatIsOn(power, on)}. Add before it: ${listed(whatTakesAway(procedure, on, power))}`
      : `${formatWait(wait)} of the wait remain. Add before it: \`wait: ${formatWait(wait)}\``;
  return {
    rule: 'proof-too-early',
    subject: source,
    ...(on.length > 0 ? {} : { owes: [source] }),
    message: `This does not verify the circuit of ${source} yet: ${why}.`,
  };
}

function whatTakesAway(procedure: Procedure, sources: readonly Id[], power: Power): readonly string[] {
  return [
    ...(power.ignitionOn ? ['`ignition: off`'] : []),
    ...sources.filter((id) => !power.disconnected.includes(id)).map((id) => `\`disconnect: ${id}\``),
    `\`wait: ${formatWait(owedByAll(procedure, sources))}\``,
  ];
}

function whatProves(procedure: Procedure, sources: readonly Id[]): readonly string[] {
  return sources
    .filter((id) => isHighVoltage(procedure.sources.get(id)))
    .map((id) => `\`prove-dead: ${id}\``);
}

/** `This step touches K30, in the circuit of stage-1`, and what to call that circuit behind it. */
function circuitTouched(
  { id }: Touch,
  live: readonly Id[],
): { readonly touches: string; readonly circuit: 'its circuit' | 'the circuit' | 'they' } {
  const others = live.filter((stage) => stage !== id);
  if (others.length === 0) return { touches: `This step touches ${id}`, circuit: 'its circuit' };
  const circuits = others.length === 1 ? 'the circuit' : 'the circuits';
  return {
    touches: `This step touches ${id}, in ${circuits} of ${listed(others)}`,
    circuit: others.length === 1 ? 'the circuit' : 'they',
  };
}
