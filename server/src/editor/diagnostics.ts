import { DiagnosticSeverity, DiagnosticTag } from 'vscode-languageserver-types';
import type { Diagnostic, DiagnosticRelatedInformation } from 'vscode-languageserver-types';
import type { Finding, Hop, Severity } from '../text/finding.ts';
import { locationOf, rangeOf } from './document.ts';
import type { EditorDocument } from './document.ts';
import { hopInWords } from './hop-in-words.ts';

/** Where the description of a rule can be read; null: nowhere. */
export type DescriptionOf = (rule: string) => string | null;

export interface DiagnosticOptions {
  readonly descriptionOf: DescriptionOf;
  /** Whether the client shows places that belong to a diagnostic. */
  readonly related: boolean;
}

/** What a code action needs to find the finding again. */
export interface DiagnosticData {
  readonly key: string;
}

const severities: Readonly<Record<Severity, DiagnosticSeverity>> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  information: DiagnosticSeverity.Information,
};

/** Findings as the editor shows them: with the way to them as places that belong to them. */
export function diagnosticsOf(
  document: EditorDocument,
  findings: readonly Finding[],
  options: DiagnosticOptions,
): Diagnostic[] {
  return findings.map((finding) => diagnosticOf(document, finding, options));
}

function diagnosticOf(document: EditorDocument, finding: Finding, options: DiagnosticOptions): Diagnostic {
  const href = options.descriptionOf(finding.rule);
  const data: DiagnosticData = { key: finding.key };
  const related = options.related ? relatedTo(document, finding) : [];
  return {
    range: rangeOf(document, finding.at),
    severity: severities[finding.severity],
    source: 'ohmwright',
    code: finding.rule,
    ...(href === null ? {} : { codeDescription: { href } }),
    message: finding.message,
    ...(finding.rule === 'unreachable' ? { tags: [DiagnosticTag.Unnecessary] } : {}),
    ...(related.length === 0 ? {} : { relatedInformation: related }),
    data,
  };
}

function relatedTo(document: EditorDocument, finding: Finding): DiagnosticRelatedInformation[] {
  const own = finding.related.map(({ at, message }) => ({ location: locationOf(document, at), message }));
  const hops = (finding.trace?.hops ?? []).slice(0, -1).filter((hop) => isTelling(document, hop));
  const way = hops.map((hop) => ({
    location: locationOf(document, { file: hop.step.file, path: hop.step.path, part: 'key' }),
    message: hopInWords(document.analysis, hop),
  }));
  return [...own, ...way];
}

/** Hops that say how the bench came to be as it is, or which way was taken. The others only follow one another. */
function isTelling({ analysis }: EditorDocument, { index, taken }: Hop): boolean {
  if (taken?.kind === 'outcome' || taken?.kind === 'go') return true;
  const verb = analysis.procedure().value.steps[index]?.verb;
  return verb !== undefined && switching.has(verb);
}

const switching: ReadonlySet<string> = new Set([
  'ignition',
  'disconnect',
  'reconnect',
  'wait',
  'unlock',
  'unplug',
  'plug',
  'fit',
  'move',
  'remove',
  'replace',
  'clear-codes',
]);
