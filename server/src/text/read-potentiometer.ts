import { checkEntry } from './check-entry.ts';
import type { EntryRules } from './entry-rules.ts';
import { valueAt } from './problem.ts';
import type { Part } from '../model/procedure.ts';
import { aboveZero, span } from './quantities.ts';
import type { RawEntry } from './read-entries.ts';
import type { Reader } from './reader.ts';

/** The track of a potentiometer, and where its wiper may stand on it. */
export function readTrack(
  { path, node }: RawEntry,
  rules: EntryRules,
  report: Reader['report'],
): Pick<Part, 'resistance' | 'wiper'> {
  const { values } = checkEntry('potentiometer', node, path, rules, report);
  const track = aboveZero(values.track, 'resistance', [...path, 'track'], report);
  const at = [...path, 'wiper'];
  const place = span(values.wiper, 'place', at, report);
  const isOnTrack = place === null || place.most <= 1;
  if (!isOnTrack) {
    const message = 'The wiper stands on the track: from 0 % at its first end to 100 % at the other.';
    report({ rule: 'quantity', at: valueAt(at), message });
  }
  // Without its wiper nothing is known of it.
  if (track === null || place === null || !isOnTrack) return { resistance: null, wiper: null };
  return { resistance: { kind: 'stated', resistance: track }, wiper: place };
}
