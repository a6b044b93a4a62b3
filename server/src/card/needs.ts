import { isMeant, membersOf } from '../text/mentioned.ts';
import { stepNumber } from '../text/where.ts';
import type { Id, Load, MeterRange, Monitor, Multimeter, Procedure, Quantity } from '../text/procedure.ts';
import { formatAccuracy, formatSpan } from '../quantity/print.ts';
import { resistanceInWords } from '../readings/resistance-in-words.ts';
import type { NeedGroup, Words } from './model.ts';
import { digitText, thingWords } from './words.ts';

/** What has to be at hand before step 1. Groups with nothing in them are left out. */
export function needsOf(procedure: Procedure): readonly NeedGroup[] {
  const { requires } = procedure;
  const groups: readonly NeedGroup[] = [
    { label: 'Training', items: requires.training.map(saidWords) },
    { label: 'Protective equipment', items: requires.protective.map(saidWords) },
    { label: 'Information', items: requires.information.map(saidWords) },
    {
      label: 'Instruments',
      items: [
        ...[...procedure.monitors.values()].map(monitorWords),
        ...[...procedure.multimeters.values()].map(multimeterWords),
      ],
    },
    { label: 'Loads', items: usedLoads(procedure).map((id) => loadWords(procedure, id)) },
    { label: 'Parts, if a step asks for them', items: partsToReplace(procedure) },
  ];
  return groups.filter((group) => group.items.length > 0);
}

function saidWords(text: string): Words {
  return [{ said: text }];
}

function monitorWords(monitor: Monitor): Words {
  const { range, accuracy, resolution, testCurrent } = monitor;
  const assumed = [
    range === null ? null : `a range of ${formatSpan(range, 'resistance')}`,
    accuracy === null ? null : `an error up to ${formatAccuracy(accuracy, 'resistance')}`,
    resolution === null ? null : `steps of ${digitText(resolution)}`,
  ].filter((figure) => figure !== null);
  const windows = assumed.length === 0 ? '' : `. The windows assume ${assumed.join(', ')}, all at its worst`;
  const current = testCurrent === null ? '' : `. Test current ${formatSpan(testCurrent, 'current')}`;
  return [
    { id: monitor.id },
    `, which reads its own loops; and a tool that displays its readings and codes${windows}${current}`,
  ];
}

function multimeterWords({ id, resistance, voltage, leads, zeroed }: Multimeter): Words {
  const figures = [
    ...(voltage === null ? [] : [`DC ${rangeText(voltage, 'voltage')}`]),
    ...(resistance === null
      ? []
      : [resistance, ...resistance.further].map((range) => rangeText(range, 'resistance'))),
    ...(leads === null ? [] : [`leads ${formatSpan(leads, 'resistance')}`]),
    ...(zeroed ? ['leads zeroed'] : []),
  ].filter((figure) => figure !== '');
  const windows = figures.length === 0 ? '' : `. The windows assume, at its worst: ${figures.join('; ')}`;
  return [{ id }, `, a multimeter${windows}`];
}

/** `0..400 Ω, an error up to 0.8 % + 3 digits, steps of 0.1 Ω`. */
function rangeText({ range, accuracy, resolution }: MeterRange, quantity: Quantity): string {
  const figures = [
    range === null ? null : formatSpan(range, quantity),
    accuracy === null ? null : `an error up to ${formatAccuracy(accuracy, quantity)}`,
    resolution === null ? null : `steps of ${digitText(resolution, quantity === 'voltage' ? 'V' : 'Ω')}`,
  ];
  return figures.filter((figure) => figure !== null).join(', ');
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
  const kind = load.kind === 'lamp' ? lampText(load) : 'resistor';
  const adapter = load.opensShortingBar ? ', in an adapter that opens the shorting bar' : '';
  const value = load.resistance === null ? '' : `: ${resistanceInWords(load.resistance)}`;
  return [{ id }, ` (${kind}${adapter})${value}`];
}

function lampText({ resistance }: Load): string {
  return resistance?.kind === 'lamp-rating' ? 'lamp, by its rating' : 'lamp, measured cold';
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
