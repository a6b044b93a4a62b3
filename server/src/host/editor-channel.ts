import {
  createConnection,
  ErrorCodes,
  IPCMessageReader,
  IPCMessageWriter,
  ProposedFeatures,
} from 'vscode-languageserver/node';
import type { Connection, DataCallback, Disposable } from 'vscode-languageserver/node';
import { refusing } from './unreadable.ts';

/**
 * A connection over the channel that Node opens between a process and its child. The library throws on some messages
 * that it cannot read, and nothing is behind the channel to catch that: the process would end.
 */
export function overEditorChannel(): Connection {
  const writer = new IPCMessageWriter(process);
  const refuse = refusing(writer);
  const reader = new CatchingReader(process);
  reader.onError((error) => {
    void refuse(ErrorCodes.InvalidRequest, `A message of the client cannot be read. ${error.message}`);
  });
  return createConnection(ProposedFeatures.all, reader, writer);
}

/** Reports what is thrown while a message is taken, as the library's own reader of streams does. */
class CatchingReader extends IPCMessageReader {
  override listen(take: DataCallback): Disposable {
    return super.listen((message) => {
      try {
        take(message);
      } catch (error) {
        this.fireError(error);
      }
    });
  }
}
