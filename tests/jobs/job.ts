import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';

/* Real jobs, written out as a workshop would write them. What is a mistake in them: common practice, no source. */

/** A whole procedure, and what a careless colleague makes of it. */
export interface Job {
  readonly name: string;
  readonly text: string;
  readonly mutants: readonly Mutant[];
}

export interface Mutant {
  readonly story: string;
  /** Each stands once in the text of the job. */
  readonly changes: readonly (readonly [from: string, to: string])[];
  /** What is found, each as `severity rule subject`; more may be found beside it. */
  readonly finds: readonly string[];
}

/** The text of a mutant. */
export function mutated({ text }: Job, { story, changes }: Mutant): string {
  return changes.reduce((before, [from, to]) => {
    const parts = before.split(from);
    if (parts.length !== 2)
      throw new Error(`${story}: \`${from}\` stands ${parts.length - 1} times in the job.`);
    return parts.join(to);
  }, text);
}

/** What is found in a text, `severity rule subject`, each once. */
export function foundIn(text: string): readonly string[] {
  const file = 'job.procedure.yaml';
  const findings = finish(analyse(snapshotOf([{ id: file, text }]), file).findings('order'));
  return [...new Set(findings.map(({ severity, rule, subject }) => `${severity} ${rule} ${subject ?? '-'}`))];
}
