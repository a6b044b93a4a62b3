import type { Id, Mentioned, Place, Step } from '../model/procedure.ts';
import type { Path } from '../model/where.ts';

export type ConnectorState = 'mated' | 'unlocked' | 'unplugged';

/** One thing that a step changes, on the bench or of what is known of it. */
export type Change =
  | { readonly of: 'ignition'; readonly to: 'on' | 'off' | 'cycle' }
  | { readonly of: 'source'; readonly id: Id; readonly isConnected: boolean }
  | {
      readonly of: 'connector';
      readonly id: Id;
      readonly to: ConnectorState;
      /** The source that it takes away or gives back. null: none. */
      readonly source: Id | null;
    }
  | {
      readonly of: 'load';
      readonly id: Id;
      /** What has to be so before. */
      readonly before: 'loose' | 'fitted';
      /** null: it comes off. */
      readonly at: Place | null;
      /** What says so in the step, from its keys on. */
      readonly named: Path;
    }
  | { readonly of: 'things'; readonly replaced: readonly Mentioned[] }
  | { readonly of: 'codes'; readonly monitor: Id; readonly are: 'read' | 'cleared' }
  | { readonly of: 'time'; readonly seconds: number };

/**
 * What each verb changes, in the order in which it comes about. All that follows a path reads it here. A proof is not
 * among them: what it shows depends on the outcome (`clock.ts`).
 */
export function changesOf(step: Step): readonly Change[] {
  switch (step.verb) {
    case 'ignition':
      return [{ of: 'ignition', to: step.to }];
    case 'disconnect':
      return [
        { of: 'source', id: step.source, isConnected: false },
        ...connector(step.connector, 'unplugged', step.source),
      ];
    case 'reconnect':
      return [
        { of: 'source', id: step.source, isConnected: true },
        ...connector(step.connector, 'mated', step.source),
      ];
    case 'unlock':
      return connector(step.connector, 'unlocked');
    case 'unplug':
      return connector(step.connector, 'unplugged');
    case 'plug':
      return connector(step.connector, 'mated');
    case 'fit':
      return [{ of: 'load', id: step.load, before: 'loose', at: step.at, named: ['at'] }];
    case 'move':
      return [{ of: 'load', id: step.load, before: 'fitted', at: step.to, named: ['to'] }];
    case 'remove':
      return [{ of: 'load', id: step.load, before: 'fitted', at: null, named: ['remove'] }];
    case 'replace':
      return [{ of: 'things', replaced: step.what }];
    case 'read-codes':
      return [{ of: 'codes', monitor: step.monitor, are: 'read' }];
    case 'clear-codes':
      return [{ of: 'codes', monitor: step.monitor, are: 'cleared' }];
    case 'wait':
      return [{ of: 'time', seconds: step.seconds }];
    case 'prove-dead':
    case 'read':
    case 'measure':
    case 'wiggle':
    case 'inspect':
    case 'do':
    case 'conclude':
    case 'go':
    case 'stop':
    case 'run':
    case 'broken':
      return nothing;
  }
}

const nothing: readonly Change[] = [];

function connector(id: Id | null, to: ConnectorState, source: Id | null = null): readonly Change[] {
  return id === null ? nothing : [{ of: 'connector', id, to, source }];
}

export type ChangeTo<K extends Change['of']> = Extract<Change, { readonly of: K }>;

/** Those of one kind. */
export function changesTo<K extends Change['of']>(kind: K, step: Step): readonly ChangeTo<K>[] {
  return changesOf(step).filter((change): change is ChangeTo<K> => change.of === kind);
}
