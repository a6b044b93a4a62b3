import type { Span } from '../quantity/quantity.ts';
import type { ConditionRanges } from './conditions.ts';
import type { Element, Network } from './network.ts';
import { networkWindow } from './network.ts';

/**
 * The resistance in ohms between a loop, by the terminals at which a monitor holds it, and everything that counts as
 * ground or as a supply. `open`: no path. Terminals are taken together, and so are the targets: what the monitor sees is
 * all paths side by side, and no single one is less.
 */
export function leakWindow(
  network: Network,
  terminals: readonly [string, string],
  targets: readonly string[],
  ranges: ConditionRanges,
): Span | 'open' {
  const [terminal, other] = terminals;
  const [target, ...rest] = targets;
  if (target === undefined) return 'open';
  const joints = [joint(terminal, other), ...rest.map((one) => joint(target, one))];
  return networkWindow([...network, ...joints], terminal, target, ranges).value;
}

/** Whether a monitor that sees leaks below so many ohms reports one: on every sound circuit, on some, or on none. */
export function leakSeen(leak: Span | 'open', below: number): 'always' | 'sometimes' | 'never' {
  if (leak === 'open' || leak.least >= below) return 'never';
  return leak.most < below ? 'always' : 'sometimes';
}

function joint(a: string, b: string): Element {
  return {
    id: `${a}=${b}`,
    between: [a, b],
    part: { kind: 'stated', resistance: { least: 0, nominal: 0, most: 0 } },
  };
}
