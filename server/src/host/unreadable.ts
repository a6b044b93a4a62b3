import type { MessageWriter } from 'vscode-languageserver/node';
import { writeAll } from './terminal.ts';

/** Says that something of the client cannot be read, with a code of the protocol: to the client and on standard error. */
export type Refuse = (code: number, message: string) => Promise<void>;

/** The answer has no id: of what cannot be read nobody knows which request it was. */
export function refusing(writer: MessageWriter): Refuse {
  return async (code, message) => {
    writeAll(2, `ohmwright: ${message}\n`);
    const error = { jsonrpc: '2.0', id: null, error: { code, message } };
    await writer.write(error).catch(() => undefined);
  };
}
