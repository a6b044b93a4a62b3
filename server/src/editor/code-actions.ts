import { CodeActionKind } from 'vscode-languageserver-types';
import type { CodeAction, Diagnostic, TextEdit, WorkspaceEdit } from 'vscode-languageserver-types';
import type { Work } from '../model/work.ts';
import type { Edit } from '../project/edit.ts';
import { fixAll } from '../fixes/fix-all.ts';
import { fixesFor, isMendable } from '../fixes/fix.ts';
import type { Fix } from '../fixes/fix.ts';
import { printable } from '../model/printable.ts';
import type { DiagnosticData } from './diagnostics.ts';
import { toRange } from './document.ts';
import type { EditorDocument } from './document.ts';

/** The kind under which everything that has a sure way is mended at once. */
export const fixAllKind = `${CodeActionKind.SourceFixAll}.ohmwright`;

/** Whether actions of a kind are asked for; without a wish those of every kind are, but for what is made of the whole file. */
export function isAskedFor(kind: string, only: readonly string[] | undefined): boolean {
  if (only === undefined) return !kind.startsWith(CodeActionKind.Source);
  return only.some((wanted) => wanted === '' || kind === wanted || kind.startsWith(`${wanted}.`));
}

/** Mends all that has one sure way, in one edit; nothing where there is no such finding. */
export function* fixAllActions(document: EditorDocument): Work<CodeAction[]> {
  const fixes = yield* fixAll(document.analysis);
  if (fixes === null) return [];
  const { count, edits } = fixes;
  const title = count === 1 ? 'Mend what has a sure way' : `Mend what has a sure way, ${count} fixes`;
  return [{ title, kind: fixAllKind, edit: editOf(document, edits) }];
}

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
    const fixes = finding === undefined ? [] : yield* fixesFor(document.analysis, finding);
    for (const fix of fixes) add(actions, actionFor(document, diagnostic, fix));
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
  return {
    title: printable(title),
    kind: CodeActionKind.QuickFix,
    isPreferred,
    diagnostics: [diagnostic],
    edit: editOf(document, edits),
  };
}

function editOf(document: EditorDocument, edits: readonly Edit[]): WorkspaceEdit {
  const changes = edits.map(({ range, text }): TextEdit => ({
    range: toRange(document, range),
    newText: text,
  }));
  return { changes: { [document.text.uri]: changes } };
}

function keyOf({ data }: Diagnostic): string | null {
  const known = data as Partial<DiagnosticData> | null | undefined;
  return typeof known?.key === 'string' ? known.key : null;
}
