import { TextDocument } from 'vscode-languageserver-textdocument';
import type { EditorDocument } from '../../server/src/editor/document.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { partsFile } from './everything.ts';

/** A procedure, and the parts file that lies beside it. */
export interface Input {
  readonly text: string;
  readonly parts: string;
}

const folder = 'file:///workshop/';
export const uri = `${folder}a.procedure.yaml`;
export const partsUri = folder + partsFile;

/** The procedure as it is open in an editor; `which` is the file that is looked at. */
export function opened({ text, parts }: Input, which = uri): EditorDocument {
  const files = [
    { id: uri, text },
    { id: partsUri, text: parts },
  ];
  return {
    text: TextDocument.create(which, 'ohmwright-procedure', 1, which === uri ? text : parts),
    analysis: analyse(snapshotOf(files), which),
  };
}
