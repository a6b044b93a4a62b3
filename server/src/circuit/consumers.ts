import { currentWindow } from './current-window.ts';
import type { ConditionRanges } from './conditions.ts';
import type { Network } from './network.ts';
import { voltageWindow } from './lit-window.ts';
import type { Source } from './voltage-window.ts';

/** What draws a stated current from its plus to its minus while the voltage across it is above zero; else that is zero. */
export interface Consumer {
  readonly id: string;
  readonly between: readonly [plus: string, minus: string];
  /** Ampere. */
  readonly draws: Source['value'];
}

export type Consuming =
  | { readonly kind: 'settled'; readonly network: Network; readonly sources: readonly Source[] }
  /** Whether this one draws its current depends on values that are not known. */
  | { readonly kind: 'undecided'; readonly consumer: string };

/**
 * The network in which each consumer is the current that it draws, or a joint where no voltage is left for it. All are let
 * draw, those that surely cannot are taken out, and what is left is asked again.
 */
export function withConsumers(
  network: Network,
  sources: readonly Source[],
  consumers: readonly Consumer[],
  ranges: ConditionRanges,
): Consuming {
  let drawing = consumers;
  for (;;) {
    const built = builtWith(network, sources, consumers, drawing);
    const stopped: Consumer[] = [];
    for (const consumer of drawing) {
      const left = leftFor(consumer, built, ranges);
      if (left === 'undecided') return { kind: 'undecided', consumer: consumer.id };
      if (left === 'nothing') stopped.push(consumer);
    }
    if (stopped.length === 0) {
      const beyond = consumers.find((one) => !drawing.includes(one) && !carriesLess(one, built, ranges));
      return beyond === undefined
        ? { kind: 'settled', ...built }
        : { kind: 'undecided', consumer: beyond.id };
    }
    drawing = drawing.filter((consumer) => !stopped.includes(consumer));
  }
}

interface Built {
  readonly network: Network;
  readonly sources: readonly Source[];
}

function builtWith(
  network: Network,
  sources: readonly Source[],
  consumers: readonly Consumer[],
  drawing: readonly Consumer[],
): Built {
  const joints = consumers
    .filter((consumer) => !drawing.includes(consumer))
    .map(({ id, between }) => ({
      id,
      between,
      part: { kind: 'stated', resistance: { least: 0, nominal: 0, most: 0 } } as const,
    }));
  const currents = drawing.map(({ id, between: [plus, minus], draws }): Source => ({
    id,
    between: [minus, plus],
    kind: 'current',
    value: draws,
  }));
  return { network: [...network, ...joints], sources: [...sources, ...currents] };
}

/** Whether what has no voltage left carries no more than it would draw: others that stopped too may have left it some. */
function carriesLess({ id, draws }: Consumer, { network, sources }: Built, ranges: ConditionRanges): boolean {
  const window = currentWindow(network, sources, { kind: 'around', element: id }, ranges);
  return window.kind !== 'number' || window.value.most <= draws.least;
}

function leftFor(
  { id, between: [plus, minus] }: Consumer,
  { network, sources }: Built,
  ranges: ConditionRanges,
): 'voltage' | 'nothing' | 'undecided' {
  const window = voltageWindow(network, sources, plus, minus, ranges);
  switch (window.kind) {
    case 'floating':
      return 'nothing';
    case 'conflict':
      // Without a way back nothing flows; a conflict of others is told of them.
      return window.sources.includes(id) ? 'nothing' : 'voltage';
    case 'number':
      if (window.value.least > 0) return 'voltage';
      return window.value.most <= 0 ? 'nothing' : 'undecided';
  }
}
