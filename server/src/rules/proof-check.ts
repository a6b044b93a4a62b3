import { touchesOf } from '../bench/touch.ts';
import type { Id, Procedure } from '../text/procedure.ts';
import type { Path } from '../text/where.ts';
import type { Context, Finder, Seen } from './rule.ts';
import { listed } from './words.ts';

/* Guards against a proof of nothing: what no source feeds is never live, what stands in no circuit is never checked. */

export const unfedCircuitFinder: Finder = { check: unfedCircuits };
export const unfedMonitorFinder: Finder = { check: unfedMonitors };
export const noWaitFinder: Finder = { check: sourcesWithoutWait };
export const inNoCircuitFinder: Finder = { check: stepsInNoCircuit };

function everySourceIsRead(procedure: Procedure): boolean {
  return [...procedure.sources.values()].every((source) => source.feedsComplete);
}

function unfedCircuits({ procedure, circuits }: Context): readonly Seen[] {
  if (!everySourceIsRead(procedure)) return [];
  return circuits.live
    .filter((circuit) => circuit.sources.length === 0)
    .map(({ id, loop, liveParts }) => ({
      issue: {
        rule: 'unfed-circuit',
        subject: id,
        place: { path: loop?.path ?? placeOfPart(procedure, liveParts), part: 'key' },
        message:
          `No source feeds ${loop === null ? `the circuit of ${id}` : id}, which holds ${listed(liveParts)}: ` +
          `nothing would prove it safe. Name ${loop?.monitor ?? listed(liveParts)} in the \`feeds\` of a source.`,
      },
    }));
}

function placeOfPart({ parts }: Procedure, [part = '']: readonly Id[]): Path {
  return parts.get(part)?.path ?? ['network'];
}

function unfedMonitors({ procedure, circuits }: Context): readonly Seen[] {
  if (!everySourceIsRead(procedure)) return [];
  return (
    [...procedure.monitors.values()]
      .filter((monitor) => circuits.feeding(monitor.id).length === 0)
      // Where it reads a live circuit, that is what is said: naming the monitor in `feeds` mends both.
      .filter(
        (monitor) =>
          !circuits.live.some(({ loop, sources }) => loop?.monitor === monitor.id && sources.length === 0),
      )
      .map((monitor) => ({
        issue: {
          rule: 'unfed-monitor',
          subject: monitor.id,
          place: { path: monitor.path, part: 'key' },
          message: `No source feeds ${monitor.id}: name it in the \`feeds\` of the source that it runs on.`,
        },
      }))
  );
}

function sourcesWithoutWait({ procedure, circuits }: Context): readonly Seen[] {
  return [...procedure.sources.values()]
    .filter((source) => source.wait === 'unstated' && source.reserve === 'unstated')
    .filter((source) => circuits.hazards.some(({ sources }) => sources.includes(source.id)))
    .map((source) => ({
      issue: {
        rule: 'no-wait',
        subject: source.id,
        place: { path: source.path, part: 'key' },
        message:
          `${source.id} feeds a live stage, and neither \`wait\` nor \`reserve\` says how long its energy lasts: ` +
          "state the wait of the maker's service information.",
      },
    }));
}

function stepsInNoCircuit({ procedure, graph, circuits }: Context): readonly Seen[] {
  const complete = procedure.network.complete && [...procedure.loops.values()].every((loop) => loop.complete);
  if (!complete) return [];
  return graph.steps.flatMap((step, index) =>
    touchesOf(step, () => undefined)
      .filter(({ id }) => isHardware(procedure, id) && circuits.holding(id).length === 0)
      // What leads from ground to ground is in no circuit, and nothing is to be feared of it.
      .filter(({ id }) => !procedure.network.elements.some((element) => element.id === id))
      // Of a connector that carries a source it is known what hands there have to fear.
      .filter(({ id }) => circuits.hazardsAt(id).length === 0)
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

function isHardware(procedure: Procedure, id: Id): boolean {
  return procedure.connectors.has(id) || procedure.parts.has(id);
}
