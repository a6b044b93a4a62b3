import type { Issue } from '../bench/issue.ts';
import { owedByAll } from '../bench/owed.ts';
import type { Power } from '../bench/power.ts';
import type { Touch } from '../bench/touch.ts';
import { formatWait } from '../quantity/quantity.ts';
import { isStage } from '../text/part-kinds.ts';
import type { Id, Procedure } from '../text/procedure.ts';
import { isHighVoltage, isolatorOf } from '../text/source-kinds.ts';
import { listed, whatIsOn } from './words.ts';

/* What is said of hands, and of proofs, where something is not dead. `live` are the stages and sections concerned. */

export function liveTouch(
  procedure: Procedure,
  touch: Touch,
  live: readonly Id[],
  sources: readonly Id[],
  power: Power,
): Issue {
  const needed = [...whatTakesAway(procedure, sources, power), ...whatProves(procedure, sources)];
  const what = live.every((id) => isStage(procedure.parts.get(id))) ? 'fire' : 'be live';
  return {
    rule: 'live-touch',
    subject: touch.id,
    cause: sources.join(),
    underline: touch.place,
    message: `Hands on ${subjectOf(touch, live, `can still ${what}`)}: ${whatIsOn(power, sources)}. Needed before: ${listed(needed)}.`,
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
  const rest = more === whole ? 'and no wait stands before it' : `and ${more} of it are still owed`;
  return {
    rule: 'short-wait',
    subject: touch.id,
    cause: sources.join(),
    underline: touch.place,
    message:
      `Hands on ${subjectOf(touch, live, 'can still be charged')}: ` +
      `after ${listed(sources)} is off the wait is ${whole}, ${rest}.`,
  };
}

export function notProvenDead(touch: Touch, live: readonly Id[], missing: readonly Id[]): Issue {
  const proofs = missing.map((source) => `\`prove-dead: ${source}\``);
  return {
    rule: 'not-proven-dead',
    subject: touch.id,
    cause: missing.join(),
    underline: touch.place,
    message:
      `Hands on ${subjectOf(touch, live, 'is not proven dead')}: ` +
      `after the wait nothing shows that the voltage is gone. Needed before: ${listed(proofs)}.`,
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
      `Hands on ${touch.id}, which hangs on ${listed(sources)} itself here: that side of ${listed(isolators)} is never dead, whatever was proven. ` +
      `Work on the other side of ${listed(isolators)}, or unplug a connector between before it is proven.`,
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
      ? `${whatIsOn(power, on)}. Needed before: ${listed(whatTakesAway(procedure, on, power))}`
      : `${formatWait(wait)} of the wait are still owed`;
  return {
    rule: 'proof-too-early',
    subject: source,
    message: `This proves nothing of ${source} yet: ${why}.`,
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

/** `K30 while stage-1 can still fire`, or of the stage itself `stage-1, which can still fire`. */
function subjectOf({ id }: Touch, live: readonly Id[], what: string): string {
  const others = live.filter((stage) => stage !== id);
  if (others.length === 0) return `${id}, which ${what}`;
  const own = others.length < live.length ? [id] : [];
  return `${id} while ${listed([...own, ...others])} ${what}`;
}
