import { changesTo } from '../bench/changes.ts';
import { replacedBy, replacedIn } from '../bench/verification.ts';
import { grouped } from '../model/remembered.ts';
import { stepNumber } from '../model/where.ts';
import type { Id, Load, MeterRange, Monitor, Multimeter, Procedure, Quantity } from '../model/procedure.ts';
import { formatAccuracy, formatSpan } from '../quantity/print.ts';
import { resistanceInWords } from '../readings/resistance-in-words.ts';
import type { NeedGroup, Words } from './model.ts';
import { digitText, thingWords } from './words.ts';
import { quantityFacts } from '../model/quantity-kinds.ts';

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

function multimeterWords({
  id,
  resistance,
  voltage,
  insulation,
  current,
  clamp,
  leads,
  zeroed,
}: Multimeter): Words {
  const figures = [
    ...(voltage === null ? [] : [`DC ${rangeText(voltage, 'voltage')}`]),
    ...(resistance === null
      ? []
      : [resistance, ...resistance.further].map((range) => rangeText(range, 'resistance'))),
    ...(insulation === null ? [] : [`insulation ${rangeText(insulation, 'insulation')}`]),
    ...(current === null ? [] : [`current ${rangeText(current, 'current')}`]),
    ...(clamp === null ? [] : [`clamp ${rangeText(clamp, 'current')}`]),
    ...(leads === null ? [] : [`leads ${formatSpan(leads, 'resistance')}`]),
    ...(zeroed ? ['leads zeroed'] : []),
  ].filter((figure) => figure !== '');
  const windows = figures.length === 0 ? '' : `. The windows assume, at its worst: ${figures.join('; ')}`;
  return [{ id }, `, a multimeter${windows}`];
}

/** `0..400 Ω, an error up to 0.8 % + 3 digits, steps of 0.1 Ω`. */
function rangeText({ range, accuracy, resolution }: MeterRange, quantity: Quantity): string {
  const figures = [
    range === null ? null : formatSpan(range, quantityFacts[quantity].dimension),
    accuracy === null
      ? null
      : `an error up to ${formatAccuracy(accuracy, quantityFacts[quantity].dimension)}`,
    resolution === null ? null : `steps of ${digitText(resolution, quantityFacts[quantity].unit)}`,
  ];
  return figures.filter((figure) => figure !== null).join(', ');
}

function usedLoads(procedure: Procedure): readonly Id[] {
  const used = new Set(
    procedure.steps.flatMap((step) =>
      changesTo('load', step).flatMap(({ id, at }) => (at === null ? [] : [id])),
    ),
  );
  return [...procedure.loads.keys()].filter((id) => used.has(id));
}

function loadWords(procedure: Procedure, id: Id): Words {
  const load = procedure.loads.get(id);
  if (load === undefined) return [{ id }];
  const adapter = load.opensShortingBar ? ', in an adapter that opens the shorting bar' : '';
  const value = load.resistance === null ? '' : `: ${resistanceInWords(load.resistance)}`;
  return [{ id }, ` (${loadText(load)}${adapter})${value}`];
}

function loadText({ kind, resistance }: Load): string {
  switch (kind) {
    case 'lamp':
      return resistance?.kind === 'lamp-rating' ? 'lamp, by its rating' : 'lamp, measured cold';
    case 'resistor':
      return 'resistor';
  }
}

function partsToReplace(procedure: Procedure): readonly Words[] {
  const replacing = grouped(
    procedure.steps.flatMap((step) => [...new Set(replacedBy(step))].map((id) => [id, step] as const)),
  );
  return replacedIn(procedure).map((id): Words => {
    const steps = (replacing.get(id) ?? []).map(stepNumber).join(', ');
    return ['new ', ...thingWords(procedure, id), ` (step ${steps})`];
  });
}
