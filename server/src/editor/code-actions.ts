import { CodeActionKind } from 'vscode-languageserver-types';
import type { CodeAction, Diagnostic, TextEdit } from 'vscode-languageserver-types';
import type { Work } from '../bench/work.ts';
import { fixFor, isMendable } from '../project/mend/fix.ts';
import type { Fix } from '../project/mend/fix.ts';
import type { DiagnosticData } from './diagnostics.ts';
import { toRange } from './document.ts';
import type { EditorDocument } from './document.ts';

/** Fixes for the diagnostics asked about. Each has been tried on a copy: the finding is gone, and no new one has come. */
export function* codeActions(
  document: EditorDocument,
  diagnostics: readonly Diagnostic[],
): Work<CodeAction[]> {
  const wanted = diagnostics.filter(({ code }) => isMendable(String(code)));
  if (wanted.length === 0) return [];
  const findings = yield* document.analysis.findings('order');
  const actions: CodeAction[] = [];
  for (const diagnostic of wanted) {
    const finding = findings.find(({ key }) => key === keyOf(diagnostic));
    const fix = finding === undefined ? null : yield* fixFor(document.analysis, finding);
    if (fix !== null) add(actions, actionFor(document, diagnostic, fix));
  }
  return actions;
}

/** One edit that mends several diagnostics is offered once. */
function add(actions: CodeAction[], action: CodeAction): void {
  const same = actions.find(({ edit }) => JSON.stringify(edit) === JSON.stringify(action.edit));
  if (same === undefined) actions.push(action);
  else same.diagnostics = [...(same.diagnostics ?? []), ...(action.diagnostics ?? [])];
}

function actionFor(
  document: EditorDocument,
  diagnostic: Diagnostic,
  { title, edits, isPreferred }: Fix,
): CodeAction {
  const changes = edits.map(({ range, text }): TextEdit => ({
    range: toRange(document, range),
    newText: text,
  }));
  return {
    title,
    kind: CodeActionKind.QuickFix,
    isPreferred,
    diagnostics: [diagnostic],
    edit: { changes: { [document.text.uri]: changes } },
  };
}

function keyOf({ data }: Diagnostic): string | null {
  const known = data as Partial<DiagnosticData> | null | undefined;
  return typeof known?.key === 'string' ? known.key : null;
}
