import type { Finding } from '../../model/finding.ts';
import type { Procedure, Waiver } from '../../model/procedure.ts';
import { didYouMean, suggestion } from '../../text/nearest.ts';
import { rules } from '../rules.ts';

/* What the author takes upon himself. The findings are all there first: a waiver only marks them. */

const waivable: ReadonlySet<string> = new Set(
  rules.filter((rule) => rule.immune !== true).map((rule) => rule.name),
);

/** Findings with those marked that a waiver names. Findings of rules that cannot be waived stay as they are. */
export function withWaivers(findings: readonly Finding[], { waivers, file }: Procedure): readonly Finding[] {
  if (waivers.length === 0) return findings;
  return findings.map((finding) => {
    const waiver = waivers.find((one) => waives(one, finding));
    if (waiver === undefined) return finding;
    return { ...finding, waived: { reason: waiver.reason, at: { file, path: waiver.path, part: 'value' } } };
  });
}

function waives(waiver: Waiver, finding: Finding): boolean {
  return finding.immune !== true && isAbout(waiver, finding);
}

/** A waiver without a step is about findings that are about no step. */
function isAbout({ rule, step }: Waiver, finding: Finding): boolean {
  if (rule !== finding.rule || !waivable.has(rule)) return false;
  return (step?.join('/') ?? null) === (finding.step?.path.join('/') ?? null);
}

/**
 * Waivers that are refused, and those that waive nothing. `isWhole`: everything could be read, so that a finding that is
 * not there is not held back.
 */
export function waiverFindings(
  findings: readonly Finding[],
  procedure: Procedure,
  isWhole: boolean,
): readonly Finding[] {
  return procedure.waivers.flatMap((waiver): Finding[] => {
    const refusal = refusalOf(waiver);
    if (refusal !== null) {
      const found = about(procedure, waiver, 'waiver-refused', 'error', refusal);
      return [isKnown(waiver) ? found : { ...found, ...suggestion(waiver.rule, [...waivable]) }];
    }
    // Of a rule that can be waived some findings cannot.
    const immune = findings.find((finding) => finding.immune === true && isAbout(waiver, finding));
    if (immune !== undefined && !findings.some((finding) => waives(waiver, finding))) {
      const message = `What ${waiver.rule} finds at this step guards live stages or the proof itself and cannot be waived: ${immune.message}`;
      return [about(procedure, waiver, 'waiver-refused', 'error', message)];
    }
    if (!isWhole || findings.some((finding) => waives(waiver, finding))) return [];
    const where = waiver.step === null ? 'Nothing that is about no step' : 'Nothing at this step';
    const message = `${where} is found by ${waiver.rule}: take this waiver out.`;
    return [about(procedure, waiver, 'unused-waiver', 'warning', message)];
  });
}

function refusalOf({ rule }: Waiver): string | null {
  if (waivable.has(rule)) return null;
  return isKnown({ rule })
    ? `${rule} guards live stages or the proof itself and cannot be waived.`
    : `No rule that can be waived is named \`${rule}\`.${didYouMean(rule, [...waivable])}`;
}

function isKnown({ rule }: Pick<Waiver, 'rule'>): boolean {
  return rules.some(({ name }) => name === rule);
}

function about(
  { file }: Procedure,
  { path, rule, step }: Waiver,
  name: string,
  severity: Finding['severity'],
  message: string,
): Finding {
  return {
    rule: name,
    severity,
    stage: 'order',
    message,
    at: { file, path: [...path, 'rule'], part: 'value' },
    subject: rule,
    related: [],
    key: [name, step?.join('/') ?? '', rule].join('/'),
  };
}
