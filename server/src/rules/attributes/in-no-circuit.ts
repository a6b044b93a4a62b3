import { touchesOf } from '../../bench/touch.ts';
import type { Touch } from '../../bench/touch.ts';
import type { Id, Part, Procedure, Step } from '../../model/procedure.ts';
import { sectionAndId } from '../../model/where.ts';
import { example, giveBackOpened, makeSafe } from '../examples.ts';
import type { Context, Rule, Seen } from '../rule.ts';

/* Hands on what stands in no circuit, and live parts that stand in none: of both every order would pass as safe. */

export const inNoCircuit: Rule = {
  name: 'in-no-circuit',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning:
    'A live part of the file that stands in no circuit, or a step on a connector or part that stands in none.',
  why: 'Nothing is known of what feeds it or what it carries, so no order of steps on it can be proven: the proof would be empty.',
  source: 'a guard of this program',
  finder: {
    check: (context) => {
      const { network, loops } = context.procedure;
      const complete = network.complete && [...loops.values()].every((loop) => loop.complete);
      return complete ? [...liveInNone(context), ...touchedInNone(context)] : [];
    },
  },
  examples: {
    triggers: example(
      'K40 is in no path',
      `${makeSafe}
- unplug: K40
- plug: K40
- reconnect: battery
- ignition: on
- clear-codes: control-unit
`,
      {
        connectors: `connectors:
  K10: { contact: 2..15 mΩ }
  K30: { contact: 2..15 mΩ }
  K40: { contact: 2..15 mΩ }
`,
      },
    ),
    passes: example(
      'K30 is in the path of the driver loop',
      `${makeSafe}- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
${giveBackOpened}`,
    ),
  },
};

/** Of a parts file a procedure takes what it needs: only what is defined in its own file has to stand somewhere. */
function liveInNone(context: Context): readonly Seen[] {
  // The loop that it stands in may be what could not be read.
  if (!context.isWhole) return [];
  return [...context.procedure.parts.values()]
    .filter((part) => isStray(context, part) && isOwn(context.procedure, part))
    .map(({ id, path }) => ({
      issue: {
        rule: 'in-no-circuit',
        subject: id,
        place: { path, part: 'key' },
        message:
          `${id} is live, and it stands in no loop and nowhere in the network. No order of steps is checked for it. ` +
          'Put it in the circuit that it stands in, or take it out of the file.',
      },
    }));
}

function touchedInNone(context: Context): readonly Seen[] {
  const { procedure, graph, circuits } = context;
  return graph.steps.flatMap((step, index) =>
    [...touchesOf(step, () => undefined), ...concludedOn(context, step)]
      .filter(({ id }) => isHardware(procedure, id) && circuits.holding(id).length === 0)
      // What leads from ground to ground is in no circuit, and nothing is to be feared of it.
      .filter(({ id }) => !procedure.network.elements.some((element) => element.id === id))
      // Of a connector that carries a source it is known what hands there have to fear.
      .filter(({ id }) => circuits.hazardsAt(id).length === 0)
      .filter(({ id }) => !isToldItself(context, id))
      .map(({ id, place }): Seen => ({
        index,
        issue: {
          rule: 'in-no-circuit',
          subject: id,
          underline: place,
          message: `${id} stands in no loop and nowhere in the network, so nothing is known of what it carries: put it in the path of its loop.`,
        },
      })),
  );
}

/** A live part is part of the job as soon as a step names it, whether hands come there or not. */
function concludedOn({ procedure }: Context, step: Step): readonly Touch[] {
  if (step.verb !== 'conclude' || step.what === 'none') return [];
  return step.what
    .flatMap(({ members, place }) => members.map((id) => ({ id, place, inHands: false })))
    .filter(({ id }) => procedure.parts.get(id)?.live === true);
}

/** One mistake, one message: where a live part is defined stands for the steps that name it. */
function isToldItself(context: Context, id: Id): boolean {
  const part = context.procedure.parts.get(id);
  return context.isWhole && part !== undefined && isStray(context, part) && isOwn(context.procedure, part);
}

function isStray({ circuits }: Context, { id, live }: Part): boolean {
  return live && circuits.holding(id).length === 0;
}

function isOwn({ elsewhere }: Procedure, { path }: Part): boolean {
  return !elsewhere.has(sectionAndId(path));
}

function isHardware(procedure: Procedure, id: Id): boolean {
  return procedure.connectors.has(id) || procedure.parts.has(id);
}
