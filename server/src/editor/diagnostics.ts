import { DiagnosticSeverity, DiagnosticTag } from 'vscode-languageserver-types';
import type { Diagnostic, DiagnosticRelatedInformation } from 'vscode-languageserver-types';
import { pathLines } from '../bench/path-lines.ts';
import { hopInWords, tellPath, withPaths } from '../bench/told-path.ts';
import { messageWithPath } from '../paths/trace.ts';
import { isShown } from '../model/finding.ts';
import type { Finding, Severity } from '../model/finding.ts';
import { visible } from '../model/printable.ts';
import type { FileId, Where } from '../model/where.ts';
import { locationOf, rangeOf } from './document.ts';
import type { EditorDocument } from './document.ts';

/** Where the description of a rule can be read; null: nowhere. */
export type DescriptionOf = (rule: string) => string | null;

export interface DiagnosticOptions {
  readonly descriptionOf: DescriptionOf;
  /** Whether the client shows places that belong to a diagnostic. */
  readonly related: boolean;
  /** The URI of a parts file as the client spells it. */
  readonly uriOf?: (file: FileId) => string;
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
  return Array.from(withPaths(findings.filter(isShown)), (finding) =>
    diagnosticOf(document, finding, options),
  );
}

/** Stands for all that would have been found, where a file could not be checked. */
export function notChecked(why: string): Diagnostic {
  const start = { line: 0, character: 0 };
  return {
    range: { start, end: start },
    severity: DiagnosticSeverity.Error,
    source: 'ohmwright',
    code: 'not-checked',
    message: `This file is not checked. ${why}`,
  };
}

function diagnosticOf(document: EditorDocument, finding: Finding, options: DiagnosticOptions): Diagnostic {
  const href = options.descriptionOf(finding.rule);
  const data: DiagnosticData = { key: finding.key };
  const related = options.related ? relatedTo(document, finding, options) : [];
  return {
    range: rangeOf(document, finding.at),
    severity: finding.waived === undefined ? severities[finding.severity] : DiagnosticSeverity.Hint,
    source: 'ohmwright',
    code: finding.rule,
    ...(href === null ? {} : { codeDescription: { href } }),
    message: visible(waivedInWords(finding) + (options.related ? finding.message : messageWithPath(finding))),
    ...(finding.rule === 'unreachable' ? { tags: [DiagnosticTag.Unnecessary] } : {}),
    ...(related.length === 0 ? {} : { relatedInformation: related }),
    data,
  };
}

/** A waived finding stays in sight, faintly, with its reason. */
function waivedInWords({ waived }: Finding): string {
  return waived === undefined ? '' : `Waived (${waived.reason.trim()}): `;
}

function relatedTo(
  document: EditorDocument,
  { related, trace }: Finding,
  { uriOf = (file) => file }: DiagnosticOptions,
): DiagnosticRelatedInformation[] {
  const { analysis } = document;
  const placed = (at: Where, message: string): DiagnosticRelatedInformation => ({
    location: locationOf(document, at, uriOf),
    message: visible(message),
  });
  const told = trace === undefined ? [] : pathLines(tellPath(analysis.procedure().value, trace).slice(0, -1));
  const way = told.flatMap((line) => {
    if (line.kind !== 'hop' || line.hop.weight === 'unimportant') return [];
    return [
      placed({ file: line.hop.step.file, path: line.hop.step.path, part: 'key' }, hopInWords(line.hop)),
    ];
  });
  return [...related.map(({ at, message }) => placed(at, message)), ...way];
}
