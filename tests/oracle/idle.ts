import type { Id, Procedure, Step } from '../../server/src/model/procedure.ts';
import { allLoops, isIsolator, loopsThrough } from './world.ts';

/* What stands in a file and is used by nothing. */

/** Connectors, batteries, supplies and routines that nobody would miss, with their section. */
export function idle(procedure: Procedure): [section: string, id: Id][] {
  const { connectors, sources, regulated, network, assemblies, routines, steps } = procedure;
  if (steps.some(({ verb }) => verb === 'broken')) return [];
  const inSteps = steps.flatMap(idsIn);
  const stands = (id: Id): boolean =>
    loopsThrough(procedure, id).length > 0 ||
    network.elements.some((element) => element.id === id) ||
    inSteps.includes(id) ||
    [...assemblies.values()].some(({ members }) => members.includes(id)) ||
    isIsolator(procedure, id);
  const all = [...sources.values()];
  const idleConnectors = [...connectors.keys()].filter(
    (id) => !stands(id) && !all.some(({ feeds }) => feeds.includes(id)),
  );
  const idleBatteries = all.filter(
    ({ id, kind, feeds }) =>
      kind === 'battery' &&
      !stands(id) &&
      !feeds.some((fed) => stands(fed) || allLoops(procedure).some(({ monitor }) => monitor === fed)) &&
      ![...regulated.values()].some(({ from }) => from === id) &&
      ![...connectors.values()].some(({ carries }) => carries.includes(id)),
  );
  const idleSupplies = [...regulated.keys()].filter((id) => !stands(id));
  const idleRoutines = [...routines.keys()].filter(
    (id) => !steps.some((step) => step.verb === 'run' && step.runs === id),
  );
  return [
    ...idleRoutines.map((id): [string, Id] => ['routines', id]),
    ...idleConnectors.map((id): [string, Id] => ['connectors', id]),
    ...[...idleBatteries.map(({ id }) => id), ...idleSupplies].map((id): [string, Id] => ['sources', id]),
  ];
}

/** Whatever is written in a step, word by word: texts and ids of steps name nothing that could be idle. */
function idsIn(step: Step): Id[] {
  const words = (value: unknown): string[] => {
    if (typeof value === 'string') return [value.replace(/\..*/, '')];
    if (value instanceof Map) return [...(value as Map<string, unknown>).values()].flatMap(words);
    return typeof value === 'object' && value !== null ? Object.values(value).flatMap(words) : [];
  };
  const said: readonly string[] = [
    'text',
    'id',
    'note',
    'why',
    'notice',
    'caution',
    'warning',
    'danger',
    'see',
    'section',
  ];
  const places = ['path', 'outcomes', 'file', 'routine', 'calls'];
  return Object.entries(step)
    .filter(([key]) => !said.includes(key) && !places.includes(key))
    .flatMap(([, value]) => words(value));
}
