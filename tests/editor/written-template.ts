import { template } from '../../server/src/editor/template.ts';

/** The new procedure once its writer has filled it in: without a finding. */
export const writtenTemplate = template
  .replace(/^example: .*\n/m, '')
  .replace(/TODO what is wrong.*/, 'Driver airbag, resistance too high')
  .replace(/TODO vehicle.*/, 'Halden V4')
  .replace(/TODO what this.*/, 'Find the part that adds resistance.');
