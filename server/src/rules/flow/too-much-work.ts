import type { Finding, Stage } from '../../model/finding.ts';
import type { Procedure } from '../../model/procedure.ts';

const missing: Readonly<Record<Exclude<Stage, 'text' | 'diagnosis'>, string>> = {
  windows: 'Its windows and its order are not checked to the end',
  order: 'Its order is not checked to the end',
};

/** What stands in place of all that a stage would have found, had it gone on; see `TooMuchWork`. */
export function tooMuchWork({ file }: Procedure, stage: keyof typeof missing): Finding {
  return {
    rule: 'too-many-states',
    severity: 'error',
    stage,
    message:
      'The steps of this procedure and all that stands on its bench make more states than are followed for one file. ' +
      `${missing[stage]}, and what is not reported may still be wrong. ` +
      'Make several procedures of it, each with the circuits that its own steps need.',
    at: { file, path: ['steps'], part: 'key' },
    subject: 'the whole procedure',
    related: [],
    key: 'too-many-states//the whole procedure',
  };
}
