import { PassThrough } from 'node:stream';
import {
  createConnection,
  ErrorCodes,
  ProposedFeatures,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import type { Connection } from 'vscode-languageserver/node';
import { frames } from '../protocol/frames.ts';
import { refusing } from './unreadable.ts';

/** A client that stops in the middle of a message for so many milliseconds does not go on. */
const patience = 5000;

/**
 * A connection over standard input and output. What cannot be read is answered with an error of the protocol; where the
 * messages can no longer be told from one another the process ends, for a server that hears nothing looks like one that
 * finds nothing. It also ends with the input: with 0 after `shutdown`, else with 1.
 */
export function overStandardStreams(isShutDown: () => boolean): Connection {
  const { stdin, stdout } = process;
  const writer = new StreamMessageWriter(stdout);
  const refuse = refusing(writer);
  const lose = (why: string): void => {
    stdin.removeListener('data', take);
    const leave = (): never => process.exit(1);
    void refuse(ErrorCodes.ParseError, `What the client sends cannot be read. ${why} The server ends.`).then(
      leave,
    );
    setTimeout(leave, 1000);
  };

  const whole = new PassThrough();
  const { take: check, isInside } = frames();
  let waiting: NodeJS.Timeout | undefined;
  let came = 0;
  function take(bytes: Buffer): void {
    came += 1;
    clearTimeout(waiting);
    const problem = check(bytes);
    if (problem !== null) {
      lose(problem);
      return;
    }
    whole.write(bytes);
    if (!isInside()) return;
    const before = came;
    waiting = setTimeout(() => {
      // What came while this thread computed is read before.
      setImmediate(() => {
        if (came === before) lose('A message does not end.');
      });
    }, patience);
  }
  stdin.on('data', take);
  const end = (): never => process.exit(isShutDown() ? 0 : 1);
  stdin.on('end', end).on('close', end).on('error', end);
  stdout.on('error', end);

  const reader = new StreamMessageReader(whole);
  reader.onError((error) => {
    const code = error instanceof SyntaxError ? ErrorCodes.ParseError : ErrorCodes.InvalidRequest;
    void refuse(code, `A message of the client cannot be read. ${error.message}`);
  });
  return createConnection(ProposedFeatures.all, reader, writer);
}
