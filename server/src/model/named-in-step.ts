import { thingsAt } from './mentioned.ts';
import type { ByHand, Id, Mentioned, Probe, Probed, Step } from './procedure.ts';

/** All ids that a step names: sources, instruments, loads, parts, connectors, assemblies and their members, loops. */
export function namedInStep(step: Step): readonly Id[] {
  switch (step.verb) {
    case 'disconnect':
    case 'reconnect':
      return step.connector === null ? [step.source] : [step.source, step.connector];
    case 'prove-dead':
      return [step.source, step.known, step.with, ...probedAt(step.at)];
    case 'unlock':
    case 'unplug':
    case 'plug':
      return [step.connector];
    case 'fit':
      return [step.load, step.at.connector];
    case 'move':
      return [step.load, step.to.connector];
    case 'remove':
      return [step.load];
    case 'read':
      return step.loops;
    case 'measure':
      return namedByHand(step);
    case 'wiggle':
      return [...step.moved.map(({ id }) => id), ...(step.by === 'monitor' ? step.loops : namedByHand(step))];
    case 'read-codes':
    case 'clear-codes':
      return [step.monitor];
    case 'inspect':
    case 'do':
      return [...thingsAt(step.at), ...step.of].flatMap(meant);
    case 'replace':
      return step.what.flatMap(meant);
    case 'conclude':
      return step.what === 'none' ? [] : step.what.flatMap(meant);
    case 'stop':
      return step.leaves;
    case 'run':
      // A side is given as `K30.monitor`.
      return [...step.given.values()].map((given) => given.replace(/\..*$/, ''));
    case 'ignition':
    case 'wait':
    case 'go':
    case 'broken':
      return [];
  }
}

function namedByHand({ with: meter, drawing, carrying, across }: ByHand): readonly Id[] {
  const clamped = carrying?.kind === 'clamp' ? [carrying.part] : [];
  return [meter, ...drawing, ...clamped, ...across.flatMap(connectorAt)];
}

function meant({ id, members }: Mentioned): readonly Id[] {
  return [id, ...members];
}

function probedAt(at: Probed): readonly Id[] {
  return 'connector' in at ? [at.connector] : at.map(({ connector }) => connector);
}

function connectorAt(probe: Probe): readonly Id[] {
  return 'node' in probe ? [] : [probe.connector];
}
