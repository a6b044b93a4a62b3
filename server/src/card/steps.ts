import { askedBy, subjectsOf } from '../bench/asked.ts';
import type { Id, Procedure, Step } from '../model/procedure.ts';
import { grouped } from '../model/remembered.ts';
import { isolatorOf } from '../model/source-kinds.ts';
import { stepNumber } from '../model/where.ts';
import { noticesOf } from './notices.ts';
import type {
  CardCodes,
  CardInput,
  CardLeft,
  CardProof,
  CardReading,
  CardSection,
  CardStep,
  CardWindow,
  Words,
} from './model.ts';
import { sayOutcomes } from './outcomes.ts';
import { sayStep } from './sentences.ts';
import { windowOf } from './windows.ts';
import { askedFor, rowsToCopy, tableFor, toEnter } from './by-entry.ts';
import type { Annex } from './by-entry.ts';
import { leastAndMost } from './wiggle.ts';
import { closed, listed, listedSteps, sentence, sourceWords, subjectWords, thingWords } from './words.ts';

/** The steps under their headings, in the order and with the numbers of the file. */
export function sectionsOf(input: CardInput, annex: Annex): readonly CardSection[] {
  const arrivals = arrivalsOf(input);
  const at: AtSteps = {
    readings: byStep(input.readings),
    codes: byStep(input.codes),
    left: byStep(input.left),
    proofs: byStep(input.proofs),
    annex,
  };
  const sections: { title: string | null; steps: CardStep[] }[] = [];
  input.procedure.steps.forEach((step, index) => {
    const current = sections.at(-1);
    const made = stepOf(input, at, step, index, arrivals[index] ?? null);
    const sameSection = step.section === undefined || step.section === current?.title;
    if (current !== undefined && sameSection) current.steps.push(made);
    else sections.push({ title: step.section ?? null, steps: [made] });
  });
  return sections;
}

/** What is known of single steps, by the index of the step. */
interface AtSteps {
  readonly readings: ReadonlyMap<number, readonly CardReading[]>;
  readonly codes: ReadonlyMap<number, readonly CardCodes[]>;
  readonly left: ReadonlyMap<number, readonly CardLeft[]>;
  readonly proofs: ReadonlyMap<number, readonly CardProof[]>;
  readonly annex: Annex;
}

function byStep<T extends { readonly index: number }>(all: readonly T[]): ReadonlyMap<number, readonly T[]> {
  return grouped(all.map((one) => [one.index, one] as const));
}

function stepOf(
  input: CardInput,
  at: AtSteps,
  step: Step,
  index: number,
  reachedFrom: Words | null,
): CardStep {
  const readings = at.readings.get(index) ?? [];
  const said = sayStep(input.procedure, step, at.proofs.get(index) ?? []);
  return {
    number: stepNumber(step),
    reachedFrom,
    notices: noticesOf(step),
    ...said,
    details: [...said.details, ...toEnter(input.procedure, readings), ...asides(step)],
    blanks: [
      ...said.blanks,
      ...askedFor(input.procedure, readings).map(({ ask }) => ask),
      ...rowsToCopy(at.annex, readings),
    ],
    windows: subjectsOf(step).map((of) => windowFor(input.procedure, at.annex, step, of, readings)),
    codes: codesAt(at.codes.get(index) ?? []),
    outcomes: sayOutcomes(input.procedure, index, step, readings),
    left: step.verb === 'stop' ? leftAt(input.procedure, at.left.get(index) ?? []) : null,
  };
}

function asides(step: Step): readonly Words[] {
  const lines: Words[] = [];
  const asked = askedBy(step);
  if ((asked?.of === 'loops' || asked?.of === 'points') && asked.step.outcomes === null)
    lines.push(['Write down what it shows. Go on whatever it is.']);
  if (step.why !== undefined) lines.push([{ strong: 'Why: ' }, { said: closed(step.why) }]);
  if (step.see !== undefined) lines.push([{ strong: 'See: ' }, { said: closed(step.see) }]);
  if (step.minutes !== undefined) lines.push([`Takes about ${step.minutes} min.`]);
  return lines;
}

function windowFor(
  procedure: Procedure,
  annex: Annex,
  step: Step,
  of: string,
  readings: readonly CardReading[],
): CardWindow {
  const reading = readings.find((candidate) => candidate.of === of);
  const window = windowOf(reading);
  const what = subjectWords(of);
  const blanks = step.verb === 'wiggle' ? leastAndMost : [];
  if (reading === undefined) return { of: what, window: window.large, remark: null, blanks, table: null };
  const computed = `computed from the parts${reading.isOuter ? ', an outer bound' : ''}`;
  const origin = reading.from === 'expect' ? 'stated in the procedure' : computed;
  const middle = reading.nominal === null ? '' : `typically ${reading.nominal}; `;
  const table = tableFor(procedure, annex, reading);
  if (table !== null && 'title' in table)
    return {
      of: what,
      window: table.title,
      remark: `in the annex: use the row of the value that you measured; ${origin}`,
      blanks,
      table: null,
    };
  return { of: what, window: window.large, remark: `${middle}${origin}`, blanks, table: table?.here ?? null };
}

function codesAt(here: readonly CardCodes[]): CardStep['codes'] {
  const codes = here.flatMap((entry) => entry.codes);
  if (codes.length === 0) return null;
  const line = (certain: boolean, verb: string): readonly Words[] => {
    const named = codes
      .filter((code) => code.certain === certain)
      .map(({ loop, code }): Words => [{ id: loop }, ': ', { strong: code }]);
    const noun = named.length === 1 ? 'A code for ' : 'Codes for ';
    return named.length === 0
      ? []
      : [[noun, ...listed(named, 'and'), ` ${named.length === 1 ? verb : plural(verb)} here.`]];
  };
  return { lines: [...line(true, 'is expected'), ...line(false, 'is possible')] };
}

function plural(verb: string): string {
  return verb.replace(/^is /, 'are ');
}

/** For each step, from where it is reached other than by going on from the step before it; null where only so. */
function arrivalsOf({ procedure, graph }: CardInput): readonly (Words | null)[] {
  const jumps = procedure.steps.map((): string[] => []);
  const follows = procedure.steps.map((_, index) => index === 0);
  graph.edges.forEach((edges, index) => {
    const targets = new Set(edges.map((edge) => edge.to));
    for (const target of targets) {
      if (typeof target !== 'number') continue;
      if (target === index + 1) follows[target] = true;
      else jumps[target]?.push(numberAt(procedure, index));
    }
  });
  return jumps.map((numbers, index): Words | null => {
    if (numbers.length === 0) return follows[index] === true ? null : ['No step leads here.'];
    const from = listedSteps(numbers);
    return follows[index] === true
      ? ['Also reached from ', ...from, '.']
      : ['Reached only from ', ...from, '.'];
  });
}

function numberAt({ steps }: Procedure, index: number): string {
  const step = steps[index];
  return step === undefined ? '' : stepNumber(step);
}

function leftAt(procedure: Procedure, here: readonly CardLeft[]): CardStep['left'] {
  if (here.length === 0) return null;
  const entries = here.flatMap((entry) => entry.left);
  if (entries.length === 0)
    return {
      heading: 'Left as it is',
      items: [['Nothing is left open, fitted or disconnected.']],
      sometimes: null,
    };
  const named = (always: boolean): readonly Words[] =>
    entries
      .filter((entry) => entry.always === always)
      .map(({ id, as }): Words => [...leftWords(procedure, id, as), '.']);
  return {
    heading: 'Left as it is. Tell whoever takes over, and tag the vehicle',
    items: named(true),
    sometimes: entries.every((entry) => entry.always)
      ? null
      : { heading: 'Depending on the way you came, tick what holds', items: named(false) },
  };
}

function isolatorWords({ sources }: Procedure, id: Id): Words {
  const connector = isolatorOf(sources.get(id));
  return connector === null ? [] : [', connector ', { id: connector }, ' is open'];
}

function leftWords(procedure: Procedure, id: Id, as: CardLeft['left'][number]['as']): Words {
  switch (as) {
    case 'disconnected':
      return [
        ...sentence(sourceWords(procedure, id)),
        ' is ',
        { strong: 'disconnected' },
        ...isolatorWords(procedure, id),
      ];
    case 'unlocked':
    case 'unplugged':
      return [...sentence(thingWords(procedure, id)), ' is ', { strong: as }];
    case 'fitted':
      return [...sentence(thingWords(procedure, id)), ' is still ', { strong: 'fitted' }];
    case 'codes':
      return ['The codes of ', { id }, ' are ', { strong: 'not cleared' }];
    case 'repair':
      if (procedure.loops.has(id))
        return ['Loop ', { id }, ' was opened and is ', { strong: 'not verified' }];
      return ['The repair of ', ...thingWords(procedure, id), ' is ', { strong: 'not verified' }];
  }
}
