import { CodeActionKind } from 'vscode-languageserver-types';
import type { CodeAction, Diagnostic, TextEdit } from 'vscode-languageserver-types';
import { finish } from '../bench/work.ts';
import { fixFor, mendable } from '../project/mend/fix.ts';
import type { DiagnosticData } from './diagnostics.ts';
import { toRange } from './document.ts';
import type { EditorDocument } from './document.ts';

/** Fixes for the diagnostics asked about. Each has been tried on a copy: the finding is gone, and no new one has come. */
export function codeActions(document: EditorDocument, diagnostics: readonly Diagnostic[]): CodeAction[] {
  const findings = finish(document.analysis.findings('order'));
  return diagnostics.flatMap((diagnostic): CodeAction[] => {
    const key = keyOf(diagnostic);
    if (!mendable.has(String(diagnostic.code)) || key === null) return [];
    const finding = findings.find((one) => one.key === key);
    const fix = finding === undefined ? null : fixFor(document.analysis, finding);
    if (fix === null) return [];
    const edits = fix.edits.map(({ range, text }): TextEdit => ({
      range: toRange(document, range),
      newText: text,
    }));
    return [
      {
        title: fix.title,
        kind: CodeActionKind.QuickFix,
        isPreferred: true,
        diagnostics: [diagnostic],
        edit: { changes: { [document.text.uri]: edits } },
      },
    ];
  });
}

function keyOf({ data }: Diagnostic): string | null {
  const known = data as Partial<DiagnosticData> | null | undefined;
  return typeof known?.key === 'string' ? known.key : null;
}
