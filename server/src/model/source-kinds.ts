import type { HighVoltage, Id, Regulated, Source } from './procedure.ts';

/** Whether it kills by its voltage: after it is taken away and waited for, it has to be proven dead. */
export function isHighVoltage(source: Source | Regulated | undefined): source is HighVoltage {
  switch (source?.kind) {
    case 'high-voltage':
      return true;
    case 'battery':
    case 'regulated':
    case undefined:
      return false;
  }
}

/** The connector whose opening takes it away; null: it has none, or that could not be read. */
export function isolatorOf(source: Source | undefined): Id | null {
  switch (source?.kind) {
    case 'high-voltage':
      return source.isolatedBy;
    case 'battery':
    case undefined:
      return null;
  }
}
