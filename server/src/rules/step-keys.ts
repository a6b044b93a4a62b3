import type { Procedure, Step } from '../text/procedure.ts';

/**
 * A name for each step that survives when lines move: its id, else what it does, with a count where several steps do
 * the same.
 */
export function stepKeys(procedure: Procedure): readonly string[] {
  const used = new Map<string, number>();
  return procedure.steps.map((step) => {
    const name = step.id ?? `${step.verb} ${objectOf(step)}`.trim();
    const count = (used.get(name) ?? 0) + 1;
    used.set(name, count);
    return count === 1 ? name : `${name}#${count}`;
  });
}

function objectOf(step: Step): string {
  switch (step.verb) {
    case 'ignition':
      return step.to;
    case 'disconnect':
    case 'reconnect':
      return step.source;
    case 'wait':
      return String(step.seconds);
    case 'unlock':
    case 'unplug':
    case 'plug':
      return step.connector;
    case 'fit':
    case 'remove':
    case 'move':
      return step.load;
    case 'read':
      return step.loops.join('+');
    case 'read-codes':
    case 'clear-codes':
      return step.monitor;
    case 'inspect':
    case 'do':
    case 'stop':
      return step.text;
    case 'replace':
      return step.what.join('+');
    case 'conclude':
      return step.what === 'none' ? 'none' : step.what.join('+');
    case 'go':
    case 'broken':
      return '';
  }
}
