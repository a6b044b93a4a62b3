import type { Left } from '../readings/left.ts';
import type { Id, Step } from '../text/procedure.ts';
import type { Context, Finder, Seen } from './rule.ts';

/* What a `stop` says that it leaves, held against what paths leave there. */

export const leavesFinder: Finder = { check: leavesWithoutNeed };

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
