import { addElse } from './add-else.ts';
import { clearCodes, restore, verify } from './at-end.ts';
import {
  addNotice,
  addWarning,
  ignitionOffFirst,
  leaveLess,
  readCodesFirst,
  takeStepOut,
} from './at-step.ts';
import type { Mender } from './candidate.ts';
import { waysToMakeSafe } from './make-safe.ts';
import { nameSide } from './name-side.ts';
import { sayHands } from './say-hands.ts';
import { deleteUnseen } from './unseen.ts';
import { takeWaiverOut } from './waiver.ts';
import { putWord } from './word.ts';

/** How the findings of each rule can be mended. Rules that are not here need what only the author knows. */
export const menders: ReadonlyMap<string, Mender> = new Map([
  ['live-touch', waysToMakeSafe],
  ['short-wait', waysToMakeSafe],
  ['not-proven-dead', waysToMakeSafe],
  ['proof-too-early', waysToMakeSafe],
  ['powered-measurement', waysToMakeSafe],
  ['work-under-power', waysToMakeSafe],
  ['impossible', nameSide],
  ['moved-with-stage', nameSide],
  ['touch-not-said', sayHands],
  ['half-open', addWarning],
  ['missing-notice', addNotice],
  ['ignition-first', ignitionOffFirst],
  ['wait-without-effect', takeStepOut],
  ['uncovered', addElse],
  ['not-restored', restore],
  ['leaves-too-much', leaveLess],
  ['codes-not-recorded', readCodesFirst],
  ['codes-not-cleared', clearCodes],
  ['repair-not-verified', verify],
  ['loop-not-verified', verify],
  ['unused-waiver', takeWaiverOut],
  ['turned-text', deleteUnseen],
  ['hidden-character', deleteUnseen],
  ['unknown-id', putWord],
  ['unknown-key', putWord],
  ['wrong-value', putWord],
  ['wrong-id', putWord],
  ['wrong-call', putWord],
  ['waiver-refused', putWord],
]);

/** Rules about hands where something is live: mending one touch may uncover the next. */
export const touchRules: ReadonlySet<string> = new Set([
  'live-touch',
  'short-wait',
  'not-proven-dead',
  'proof-too-early',
  'powered-measurement',
  'work-under-power',
]);
