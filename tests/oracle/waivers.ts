import type { Procedure, Waiver } from '../../server/src/model/procedure.ts';
import { EXCUSED, ORACLE_RULES, WAIVER_RULES, WINDOW_RULES } from './coverage.ts';

/* What the author takes upon himself: which findings his waivers mark, and which waivers are none. */

/** A finding as far as waivers look at it: its rule, and its step by number. */
export interface Waivable {
  readonly rule: string;
  readonly step: number | null;
  readonly subject?: string | null;
}

/** They guard live stages, or the proof that hands are safe. */
const NEVER: readonly string[] = [
  'live-touch',
  'short-wait',
  'not-proven-dead',
  'half-open',
  'meter-across-live',
  'insulation-on-electronics',
  'moved-with-stage',
  'powered-measurement',
  'not-restored',
  'unfed-circuit',
  'unfed-monitor',
  'in-no-circuit',
  'no-wait',
  'unguarded-source',
  'proof-too-early',
  'proof-elsewhere',
  'unfit-meter',
  'touch-not-said',
  'too-many-states',
  'waiver-refused',
];

const known = [...ORACLE_RULES, ...WINDOW_RULES, ...WAIVER_RULES, ...Object.keys(EXCUSED)];

const canBeWaived = (rule: string): boolean => known.includes(rule) && !NEVER.includes(rule);

function marks({ steps }: Procedure, waiver: Waiver, { rule, step }: Waivable): boolean {
  if (waiver.rule !== rule || !canBeWaived(rule)) return false;
  const named = steps.find(({ path }) => path.join() === waiver.step?.join());
  return waiver.step === null ? step === null : named?.number === step;
}

/**
 * Of an open connector that is moved as a whole nobody knows which half is meant, and on one of them a stage may hang; and
 * contacts that come and go under more than 30 V are never what is wanted.
 */
function isNeverWaived({ steps, connectors }: Procedure, { rule, step, subject }: Waivable): boolean {
  const named = steps.find(({ number }) => number === step);
  if (named?.verb !== 'wiggle') return false;
  return rule === 'work-under-power' || (rule === 'impossible' && connectors.has(subject ?? ''));
}

export function isWaived(procedure: Procedure, finding: Waivable): boolean {
  return (
    !isNeverWaived(procedure, finding) &&
    procedure.waivers.some((waiver) => marks(procedure, waiver, finding))
  );
}

interface OfWaiver {
  readonly rule: (typeof WAIVER_RULES)[number];
  readonly at: number;
}

/** By place in the list of waivers. Of what cannot be read nobody knows whether it would be found. */
export function ofWaivers(
  procedure: Procedure,
  findings: readonly Waivable[],
  isWhole = true,
): readonly OfWaiver[] {
  return procedure.waivers.flatMap((waiver, at): OfWaiver[] => {
    if (!canBeWaived(waiver.rule)) return [{ rule: 'waiver-refused', at }];
    const marked = findings.filter((finding) => marks(procedure, waiver, finding));
    const isUsed = marked.some((finding) => !isNeverWaived(procedure, finding));
    if (marked.length > 0 && !isUsed) return [{ rule: 'waiver-refused', at }];
    return isUsed || !isWhole ? [] : [{ rule: 'unused-waiver', at }];
  });
}
