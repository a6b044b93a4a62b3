import { ErrorCodes, ResponseError } from 'vscode-languageserver';
import type { Connection } from 'vscode-languageserver';

/** How far a client and the server are: it introduces itself once, and after its `shutdown` it asks nothing more. */
export interface Session {
  readonly isShutDown: () => boolean;
  /** Throws the answer of the protocol to a request that comes too early or too late. */
  readonly check: () => void;
  /** To be called when the client introduces itself; throws where it has done so before. */
  readonly begin: () => void;
}

/** Answers to requests that no other handler takes come from here. */
export function sessionOf(connection: Connection, onShutdown: () => void): Session {
  let state: 'new' | 'running' | 'shut-down' = 'new';
  const check = (): void => {
    switch (state) {
      case 'new':
        throw new ResponseError(ErrorCodes.ServerNotInitialized, 'The first request must be `initialize`.');
      case 'running':
        return;
      case 'shut-down':
        throw new ResponseError(ErrorCodes.InvalidRequest, 'Nothing can be asked after `shutdown`.');
    }
  };
  connection.onRequest((method) => {
    check();
    throw new ResponseError(ErrorCodes.MethodNotFound, `This server has no request ${method}.`);
  });
  connection.onShutdown(() => {
    check();
    state = 'shut-down';
    onShutdown();
  });
  return {
    isShutDown: () => state === 'shut-down',
    check,
    begin: () => {
      if (state !== 'new')
        throw new ResponseError(
          ErrorCodes.InvalidRequest,
          '`initialize` is the first request, and comes once.',
        );
      state = 'running';
    },
  };
}
