import type { Finding } from '../model/finding.ts';
import type { ReadFile } from '../text/read-procedure.ts';
import type { FileId, Where } from '../model/where.ts';

/**
 * A finding of a procedure is shown in the procedure: what is about a place in a parts file is told where that is called
 * or used, and names the place.
 */
export function inFile(file: FileId, finding: Finding, { used }: ReadFile): Finding {
  if (finding.at.file === file) return finding;
  const call = finding.step?.calls[0];
  const by = used.find((one) => one.file.id === finding.at.file)?.by ?? ['uses'];
  const at: Where =
    call === undefined
      ? { file, path: by, part: 'value' }
      : { file, path: [...call.path, 'run'], part: 'value' };
  return {
    ...finding,
    at,
    related: [{ at: finding.at, message: 'Here in the parts file.' }, ...finding.related],
  };
}
