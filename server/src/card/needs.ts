import { isMeant, membersOf } from '../text/mentioned.ts';
import { stepNumber } from '../text/where.ts';
import type { Id, Monitor, Procedure } from '../text/procedure.ts';
import { formatAccuracy, formatSpan } from '../quantity/print.ts';
import type { NeedGroup, Words } from './model.ts';
import { digitText, thingWords } from './words.ts';

/** What has to be at hand before step 1. Groups with nothing in them are left out. */
export function needsOf(procedure: Procedure): readonly NeedGroup[] {
  const { requires } = procedure;
  const groups: readonly NeedGroup[] = [
    { label: 'Training', items: requires.training.map((text): Words => [text]) },
    { label: 'Protective equipment', items: requires.protective.map((text): Words => [text]) },
    { label: 'Information', items: requires.information.map((text): Words => [text]) },
    { label: 'Instruments', items: [...procedure.monitors.values()].map(monitorWords) },
    { label: 'Loads', items: usedLoads(procedure).map((id) => loadWords(procedure, id)) },
    { label: 'Parts, if a step asks for them', items: partsToReplace(procedure) },
  ];
  return groups.filter((group) => group.items.length > 0);
}

function monitorWords(monitor: Monitor): Words {
  const figures = [
    monitor.range === null ? null : `range ${formatSpan(monitor.range, 'resistance')}`,
    monitor.accuracy === null ? null : `error up to ${formatAccuracy(monitor.accuracy, 'resistance')}`,
    monitor.resolution === null ? null : `shows steps of ${digitText(monitor.resolution)}`,
    monitor.testCurrent === null ? null : `test current ${formatSpan(monitor.testCurrent, 'current')}`,
  ].filter((figure) => figure !== null);
  const rest = figures.length === 0 ? '' : `: ${figures.join(', ')}`;
  return [
    { id: monitor.id },
    `, which reads its own loops${rest}; and a tool that displays its readings and codes`,
  ];
}

function usedLoads(procedure: Procedure): readonly Id[] {
  const used = new Set(
    procedure.steps.flatMap((step) => (step.verb === 'fit' || step.verb === 'move' ? [step.load] : [])),
  );
  return [...procedure.loads.keys()].filter((id) => used.has(id));
}

function loadWords(procedure: Procedure, id: Id): Words {
  const load = procedure.loads.get(id);
  if (load === undefined) return [{ id }];
  const kind = load.kind === 'lamp' ? 'lamp, measured cold' : 'resistor';
  const adapter = load.opensShortingBar ? ', in an adapter that opens the shorting bar' : '';
  const value = load.resistance === null ? '' : `: ${formatSpan(load.resistance, 'resistance')}`;
  return [{ id }, ` (${kind}${adapter})${value}`];
}

function partsToReplace(procedure: Procedure): readonly Words[] {
  const ids = new Set(
    procedure.steps.flatMap((step) => (step.verb === 'replace' ? membersOf(step.what) : [])),
  );
  return [...ids].map((id): Words => {
    const numbers = procedure.steps.filter((step) => step.verb === 'replace' && isMeant(step.what, id));
    const steps = numbers.map(stepNumber).join(', ');
    return ['new ', ...thingWords(procedure, id), ` (step ${steps})`];
  });
}
