import { FileType, Uri, workspace } from 'vscode';
import { writeTextFile } from '../../../server/src/host/write-file.ts';

/**
 * Writes a file whole or not at all: until it is written, an earlier one stays as it is. Why it could not be written, in
 * words; null where it is. On the disk this goes past the editor, whose own renaming takes the earlier file away first;
 * elsewhere it is as good as the file system that an extension provides.
 */
export async function writeWhole(to: Uri, text: string): Promise<string | null> {
  if (to.scheme === 'file') return writeTextFile(to.fsPath, text);
  try {
    return await writeBeside(to, text);
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

async function writeBeside(to: Uri, text: string): Promise<string | null> {
  const type = await typeOf(to);
  if ((type & FileType.Directory) !== 0) return 'it is a folder';
  if ((type & FileType.SymbolicLink) !== 0) return 'it is a link: choose the file that it leads to';
  const beside = Uri.joinPath(to, '..', `.ohmwright-${crypto.randomUUID()}.part`);
  try {
    await workspace.fs.writeFile(beside, new TextEncoder().encode(text));
    await workspace.fs.rename(beside, to, { overwrite: true });
  } catch (error) {
    await tryToDelete(beside);
    throw error;
  }
  return null;
}

async function typeOf(uri: Uri): Promise<FileType> {
  try {
    return (await workspace.fs.stat(uri)).type;
  } catch {
    // Nothing stands there, or writing says what is wrong.
    return FileType.Unknown;
  }
}

async function tryToDelete(uri: Uri): Promise<void> {
  try {
    await workspace.fs.delete(uri);
  } catch {
    // It was never made, or the file system is gone.
  }
}
