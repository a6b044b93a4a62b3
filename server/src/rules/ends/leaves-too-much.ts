import type { Left } from '../../readings/left.ts';
import type { Id, Step } from '../../model/procedure.ts';
import { example, giveBackOpened, makeSafe } from '../examples.ts';
import type { Context, Rule, Seen } from '../rule.ts';

/* What a `stop` says that it leaves, held against what paths leave there. */

const opened = `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
${giveBackOpened}`;

export const leavesTooMuch: Rule = {
  name: 'leaves-too-much',
  severity: 'warning',
  stage: 'order',
  meaning: '`leaves` of a stop names something that no path leaves so.',
  why: 'The card would tell the next person of something open or fitted that is not.',
  source: 'common practice',
  finder: { check: leavesWithoutNeed },
  examples: {
    triggers: example('K30 is plugged again on every path', opened.replace('[repair]', '[repair, K30]')),
    passes: example('only what stays is named', opened),
  },
};

/** What `leaves` names although no path leaves it so: the card must not say so. */
function leavesWithoutNeed(context: Context): readonly Seen[] {
  if (context.astray) return [];
  // A stop in a routine leaves what it leaves in any of its calls.
  const leftAt = new Map<string, Left[]>();
  for (const one of context.left) {
    const place = placeOf(context.graph.steps[one.index]);
    const there = leftAt.get(place);
    if (there === undefined) leftAt.set(place, [one]);
    else there.push(one);
  }
  return context.graph.steps.flatMap((step, index) => {
    if (step.verb !== 'stop' || context.reached[index] !== true) return [];
    const left = leftAt.get(placeOf(step)) ?? [];
    const isLeft = (name: Id): boolean =>
      left.some(({ id, as }) => (as === 'codes' || as === 'repair' ? as === name : id === name));
    return (
      step.leaves
        .filter((name) => !isLeft(name))
        // What could not be read is not held against a repair: it may be left all the same.
        .filter((name) => name !== 'repair' || context.isWhole)
        .map((name): Seen => ({
          index,
          issue: {
            rule: 'leaves-too-much',
            subject: name,
            underline: ['leaves', step.leaves.indexOf(name)],
            message: `\`leaves\` names ${name}, but no path leaves it here: take it out.`,
          },
        }))
    );
  });
}

/** Where a step is written; the same for every call. */
function placeOf(step: Step | undefined): string {
  return step?.path.join('/') ?? '';
}
