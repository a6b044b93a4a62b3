import { changesTo } from '../../bench/changes.ts';
import type { Issue } from '../../paths/issue.ts';
import { isolatedBy } from '../../bench/hazards.ts';
import type { Id, Procedure, Step } from '../../model/procedure.ts';
import type { SwitchOrder } from './commands-in.ts';
import { onlyOne } from './hands-advice.ts';
import { headingsOf } from './hands-in-headings-check.ts';
import { textsBeside } from './hands-in-notes-check.ts';
import type { Seen } from '../rule.ts';
import type { Said } from './sentences.ts';

/* Orders in a sentence to switch the ignition or a source: what is on then is not what the paths say. Never waivable. */

export function switchOrders(
  procedure: Procedure,
  steps: readonly Step[],
  said: (text: string) => Said,
): readonly Seen[] {
  const told = (text: string, key: string, own: readonly Step[]): readonly Issue[] =>
    said(text).orders.flatMap((order): Issue[] => {
      const switched = switchedBy(procedure, order);
      if (switched === null || own.some((step) => switches(step, switched))) return [];
      const { subject, advice } = switched;
      const where = key === 'section' ? 'heading' : key === 'do' || key === 'inspect' ? 'text' : key;
      const message = `This ${where} says "${order.word}", and a sentence switches nothing: what is on behind it is not checked. Write a step ${advice}.`;
      return [{ rule: 'hands-in-text', severity: 'error', immune: true, subject, underline: [key], message }];
    });
  const ofSteps = steps.flatMap((step, index) => {
    const own = step.verb === 'do' || step.verb === 'inspect' ? [[step.verb, step.text] as const] : [];
    return [...own, ...textsBeside(step)]
      .flatMap(([key, text]) => told(text, key, [step]))
      .map((issue): Seen => ({ index, issue }));
  });
  const ofHeadings = headingsOf(steps).flatMap(({ text, index, path, steps: below }) =>
    told(text, 'section', below).map((issue): Seen => {
      return { index, issue: { ...issue, place: { path, part: 'value' } } };
    }),
  );
  return [...ofSteps, ...ofHeadings];
}

interface Switched {
  /** null: the ignition. */
  readonly sources: readonly Id[] | null;
  readonly subject: string;
  readonly advice: string;
}

/** What an order switches; null: no source. */
function switchedBy(procedure: Procedure, { of, word }: SwitchOrder): Switched | null {
  if (of === 'ignition')
    return { sources: null, subject: 'ignition', advice: '`ignition: on` or `ignition: off`' };
  if (of === 'power') {
    const sources = [...procedure.sources.keys()];
    return { sources, subject: 'power', advice: '`ignition`, `disconnect` or `reconnect`' };
  }
  if (of.as === 'supply') {
    const advice =
      '`reconnect` of the source, with what is brought along as a source of the file that feeds what it feeds';
    return { sources: [], subject: word, advice };
  }
  const sources = of.ids.flatMap((id) =>
    procedure.sources.has(id) ? [id] : [isolatedBy(procedure, id)].filter((one) => one !== null),
  );
  if (sources.length === 0 || sources.length < of.ids.length) return null;
  const [source = ''] = sources;
  const named = sources.length === 1 ? source : 'SOURCE';
  return {
    sources,
    // What is told of the same words as of a command is one finding with this.
    subject: onlyOne(of) ?? word,
    advice: `\`disconnect: ${named}\` or \`reconnect: ${named}\``,
  };
}

function switches(step: Step, { sources }: Switched): boolean {
  if (sources === null) return changesTo('ignition', step).length > 0;
  return changesTo('source', step).some(({ id }) => sources.includes(id));
}
