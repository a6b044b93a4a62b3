import type { Finding } from '../../server/src/model/finding.ts';
import type { Procedure } from '../../server/src/model/procedure.ts';

/** What could not be read of a procedure of which no error is told. Such silence passes an unsafe procedure. */
export function unread(procedure: Procedure, findings: readonly Finding[]): readonly string[] {
  if (findings.some(({ severity }) => severity === 'error')) return [];
  const { steps, parts, loads, connectors, monitors, sources, loops, network, entries, regulated } =
    procedure;
  const missing: string[] = [];
  const needed = (what: string, value: unknown): void => {
    if (value === null) missing.push(`nothing is found, and ${what} could not be read`);
  };
  for (const { verb, number } of steps) needed(`step ${number}`, verb === 'broken' ? null : verb);
  for (const { id, resistance } of parts.values()) needed(`the resistance of ${id}`, resistance);
  for (const { id, resistance } of loads.values()) needed(`the resistance of ${id}`, resistance);
  for (const { id, contact } of connectors.values()) needed(`the contacts of ${id}`, contact);
  for (const { id, range, accuracy, resolution } of monitors.values())
    for (const value of [range, accuracy, resolution]) needed(`what ${id} measures`, value);
  for (const { id, voltage, wait, reserve } of sources.values())
    for (const value of [voltage, wait, reserve]) needed(`what is stated of ${id}`, value);
  for (const { id, voltage, from } of regulated.values())
    for (const value of [voltage, from]) needed(`what is stated of ${id}`, value);
  for (const { id, range } of entries.values()) needed(`the range of ${id}`, range);
  for (const { id, complete, monitor } of loops.values()) {
    needed(`the loop ${id}`, complete ? id : null);
    needed(`the monitor of ${id}`, monitor);
  }
  needed('the network', network.complete ? '' : null);
  for (const { outcomes } of steps.flatMap((step) =>
    'outcomes' in step && step.outcomes !== null ? [step] : [],
  ))
    for (const { target } of outcomes ?? []) needed('where an outcome leads', target);
  return missing;
}
