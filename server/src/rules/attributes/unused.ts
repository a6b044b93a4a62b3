import type { Issue } from '../../paths/issue.ts';
import { namedInStep } from '../../model/named-in-step.ts';
import type { Connector, Id, Procedure, Regulated, Routine, Source } from '../../model/procedure.ts';
import { sectionAndId } from '../../model/where.ts';
import type { Path } from '../../model/where.ts';
import { circuit, example, readOnly } from '../examples.ts';
import type { Context, Rule, Seen } from '../rule.ts';

/* Connectors, sources and routines of the file that nothing uses: a name that is written in two ways looks so. */

export const unused: Rule = {
  name: 'unused',
  severity: 'warning',
  stage: 'order',
  meaning:
    'A connector or a source of the file that nothing uses, or a routine of the file that no step calls.',
  why: 'It may be missing from the loop that it stands in, or feed what the file does not say: then the windows and the order hold for another circuit. The steps of a routine that nobody calls are on no path and on no card. What a parts file defines may go unused.',
  source: 'a guard of this program',
  finder: { check: findUnused },
  examples: {
    triggers: example('K20 stands in no loop, and no step names it', readOnly, {
      connectors: `${circuit.connectors}  K20: { contact: 2..15 mΩ }\n`,
    }),
    passes: example('K20 stands in the driver loop', readOnly, {
      connectors: `${circuit.connectors}  K20: { contact: 2..15 mΩ }\n`,
      loops: `loops:
  driver-loop: { path: [control-unit, K10, coil-coupling, K20, K30, stage-1] }
`,
    }),
  },
};

function findUnused({ procedure, isWhole }: Context): readonly Seen[] {
  // What could not be read may use it.
  if (!isWhole) return [];
  const named = namedIn(procedure);
  const { connectors, sources, regulated, routines, steps, elsewhere } = procedure;
  const called = new Set(steps.flatMap((step) => (step.verb === 'run' ? [step.runs] : [])));
  const isOwn = ({ path }: { readonly path: Path }): boolean => !elsewhere.has(sectionAndId(path));
  const isNamed = ({ id }: { readonly id: Id }): boolean => named.has(id);
  const issues = [
    ...[...connectors.values()]
      .filter((one) => isOwn(one) && !isNamed(one) && !isFed(procedure, one))
      .map(ofConnector),
    ...[...sources.values()].filter((one) => isOwn(one) && !isNamed(one) && isIdle(one, named)).map(ofSource),
    ...[...regulated.values()].filter((one) => isOwn(one) && !isNamed(one)).map(ofSupply),
    ...[...routines.values()].filter((one) => isOwn(one) && !called.has(one.id)).map(ofRoutine),
  ];
  return issues.map((issue) => ({ issue }));
}

/** What stands in a loop or in the network, or is named by a step, an assembly, a source or a connector. */
function namedIn({ loops, network, steps, assemblies, sources, regulated, connectors }: Procedure): Set<Id> {
  return new Set([
    ...[...loops.values()].flatMap(({ monitor, elements }) => [
      ...(monitor === null ? [] : [monitor]),
      ...elements.map(({ id }) => id),
    ]),
    ...network.elements.map(({ id }) => id),
    ...steps.flatMap(namedInStep),
    ...[...assemblies.values()].flatMap(({ members }) => members),
    ...[...sources.values()].flatMap((source) =>
      source.kind === 'high-voltage' && source.isolatedBy !== null ? [source.isolatedBy] : [],
    ),
    ...[...regulated.values()].flatMap(({ from }) => from ?? []),
    ...[...connectors.values()].flatMap(({ carries }) => carries),
  ]);
}

function isFed({ sources }: Procedure, { id }: Connector): boolean {
  return [...sources.values()].some(({ feeds }) => feeds.includes(id));
}

/** It feeds nothing that is itself in use. A high-voltage source that reaches nothing is `unguarded-source`. */
function isIdle({ kind, feeds }: Source, named: ReadonlySet<Id>): boolean {
  return kind !== 'high-voltage' && !feeds.some((fed) => named.has(fed));
}

function ofConnector({ id, path }: Connector): Issue {
  return idle(
    { id, path },
    `Nothing uses the connector ${id}: no loop, network, step, assembly or source names it. ` +
      'Put it in the loop that it stands in, or take it out of the file.',
  );
}

function ofSource({ id, path }: Source): Issue {
  return idle(
    { id, path },
    `Nothing uses the source ${id}: it feeds nothing that is in use, and no network, step or connector names it. ` +
      'Say what it feeds, or take it out of the file.',
  );
}

function ofSupply({ id, path }: Regulated): Issue {
  return idle(
    { id, path },
    `Nothing uses the supply ${id}: it stands nowhere in the network. ` +
      'Put it in the network, or take it out of the file.',
  );
}

function ofRoutine({ id, path }: Routine): Issue {
  return idle(
    { id, path },
    `Nothing calls the routine ${id}: no step that is done has \`run: ${id}\`, so none of its steps is checked on a path or printed. ` +
      'Call it where its steps belong, or take it out of the file.',
  );
}

function idle({ id, path }: { readonly id: Id; readonly path: Path }, message: string): Issue {
  return { rule: 'unused', subject: id, place: { path, part: 'key' }, message };
}
