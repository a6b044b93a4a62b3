import type { Measuring } from '../../bench/asked.ts';
import type { Issue } from '../../paths/issue.ts';
import { owedByAll } from '../../bench/owed.ts';
import type { Power } from '../../bench/power.ts';
import type { Supply } from '../../bench/supplies.ts';
import { drawsArcs } from '../../bench/energy.ts';
import type { Tested } from '../../bench/energy.ts';
import type { Touch } from '../../bench/touch.ts';
import { formatQuantity, formatWait } from '../../quantity/quantity.ts';
import type { Id, Procedure, Step } from '../../model/procedure.ts';
import { whereMeasured } from '../../model/step-in-words.ts';
import { quantityFacts } from '../../model/quantity-kinds.ts';
import type { Path } from '../../model/where.ts';
import { listed, notSaidBecause } from '../words.ts';

/* What is said of work on what is powered, still charged, or holds an initiator. */

export function initiatorProbed(step: Measuring, stages: readonly Id[]): Issue {
  const hangs = stages.length === 1 ? 'hangs' : 'hang';
  return {
    rule: 'meter-across-live',
    subject: stages[0] ?? step.of,
    underline: [whereMeasured(step.carrying)],
    message:
      `${listed(stages)} ${hangs} on ${step.of} here: an instrument that is held there by hand can fire ${stages.length === 1 ? 'it' : 'them'}. ` +
      'First unplug a connector between the probes and the stage. To test its circuit, fit a load in its place and read the control unit.',
  };
}

export function poweredMeasurement(
  procedure: Procedure,
  { of, with: meter, quantity, carrying }: Measuring,
  on: readonly Supply[],
  power: Power,
): Issue {
  return {
    rule: 'powered-measurement',
    subject: of,
    cause: causeOf(on),
    underline: [whereMeasured(carrying)],
    message:
      `${poweredInWords(on)}: what ${meter} shows there is no ${quantityFacts[quantity].named}, and ${meter} or what it is held to can be damaged. ` +
      `Add before it: ${listed(whatTakesAway(procedure, on, power))}, or unplug a connector between them.`,
  };
}

export function chargedMeasurement(
  { of, with: meter, quantity, carrying }: Measuring,
  owed: number,
  whole: number,
): Issue {
  return {
    rule: 'powered-measurement',
    subject: of,
    underline: [whereMeasured(carrying)],
    message:
      `What ${meter} is held to can still be charged, and what it shows then is no ${quantityFacts[quantity].named}: ${stillOwed(owed, whole)}. ` +
      `Add before it: \`wait: ${formatWait(owed)}\`.`,
  };
}

export function testedElectronics(step: Measuring, volts: number, weak: readonly Id[]): Issue {
  const tested = formatQuantity(volts, 'voltage');
  const named = weak.slice(0, mostNamed);
  const left = weak.length - named.length;
  return {
    rule: 'insulation-on-electronics',
    subject: weak[0] ?? step.of,
    underline: [whereMeasured(step.carrying)],
    message:
      `${step.with} puts ${tested} on ${listed([...named, ...(left > 0 ? [`${left} more`] : [])])} here, and nothing says that ${weak.length === 1 ? 'it bears' : 'they bear'} that: it destroys electronics. ` +
      'First unplug a connector that separates them from the probes. Of parts, connectors and loads that bear it state `withstands`.',
  };
}

/** So many things are named in one message. */
const mostNamed = 4;

export function stillTested(step: Step, { id, place }: Touch, { volts, owed }: Tested): Issue {
  const way =
    owed < Infinity
      ? `\`wait: ${formatWait(owed)}\`, the time in which the instrument takes it away, or \`discharged: true\` at the measurement`
      : volts < 60
        ? '`discharged: true` at the measurement, or a `prove-dead` there'
        : 'a `prove-dead` there';
  return {
    rule: 'short-wait',
    subject: id,
    underline: place,
    message:
      `${id} can still hold the ${formatQuantity(volts, 'voltage')} of the insulation measurement before. ` +
      `Add before \`${step.verb}\`: ${way}.`,
  };
}

export function testedSomewhere(volts: number): Issue {
  const why = `the ${formatQuantity(volts, 'voltage')} of an insulation measurement can still be there`;
  return { rule: 'touch-not-said', message: notSaidBecause(why) };
}

export function arcAtContacts(
  procedure: Procedure,
  { verb }: Step,
  subject: Id,
  on: readonly Supply[],
  power: Power,
): Issue {
  return {
    rule: 'work-under-power',
    subject,
    cause: causeOf(on),
    // Opening one connector under power can be what is wanted; contacts that come and go while hands move them cannot.
    ...(verb === 'wiggle' ? { immune: true as const } : {}),
    message:
      `${poweredInWords(on)}: above 30 V DC contacts that part or meet can draw an arc. ` +
      `Add before \`${verb}\`: ${listed(whatTakesAway(procedure, on, power))}.`,
  };
}

export function chargedOpening({ verb }: Step, subject: Id, owed: number, whole: number): Issue {
  return {
    rule: 'short-wait',
    subject,
    message:
      `${subject} can still be charged above 30 V: ${stillOwed(owed, whole)}. ` +
      `Add before \`${verb}\`: \`wait: ${formatWait(owed)}\`.`,
  };
}

export function replacedUnderPower(
  procedure: Procedure,
  id: Id,
  place: Path,
  on: readonly Supply[],
  power: Power,
): Issue {
  return {
    rule: 'work-under-power',
    severity: on.some(drawsArcs) ? 'error' : 'warning',
    subject: id,
    cause: `${causeOf(on)} replaced`,
    underline: place,
    message:
      `${id} is replaced under power. ${poweredInWords(on)}. A short circuit there can burn and blind. ` +
      `Add before it: ${listed(whatTakesAway(procedure, on, power))}, or unplug a connector that separates it.`,
  };
}

function causeOf(on: readonly Supply[]): string {
  return [...new Set(on.map(({ source }) => source))].sort().join();
}

function stillOwed(owed: number, whole: number): string {
  const rest = owed === whole ? 'none of it is over' : `${formatWait(owed)} of it remain`;
  return `the wait after its source is off is ${formatWait(whole)}, and ${rest}`;
}

/** `battery feeds front-unit`, `bus-bias is on there`. */
function poweredInWords(on: readonly Supply[]): string {
  const words = on.map(({ source, fed }) =>
    fed === null ? `${source} is on there` : `${source} feeds ${fed}`,
  );
  return listed([...new Set(words)]);
}

/** Steps that take the power away, as far as these sources have steps of their own. */
function whatTakesAway(procedure: Procedure, on: readonly Supply[], power: Power): readonly string[] {
  const { sources, regulated } = procedure;
  const roots = [...new Set(on.map(({ source }) => regulated.get(source)?.from ?? source))];
  // A supply that runs on after the ignition is off takes its energy from what its source leaves.
  const owing = on.filter(({ offWith }) => typeof offWith === 'string' || offWith.needsIgnition);
  const longest = owedByAll(
    procedure,
    owing.map(({ source }) => regulated.get(source)?.from ?? source),
  );
  return [
    ...(power.ignitionOn ? ['`ignition: off`'] : []),
    ...roots
      .filter((id) => sources.has(id) && !power.disconnected.includes(id))
      .map((id) => `\`disconnect: ${id}\``),
    ...(longest > 0 ? [`\`wait: ${formatWait(longest)}\``] : []),
  ];
}
