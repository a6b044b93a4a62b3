import { ErrorCodes, LSPErrorCodes, ResponseError } from 'vscode-languageserver';
import type { CancellationToken, RemoteConsole } from 'vscode-languageserver';
import type { Work } from '../model/work.ts';
import type { EditorDocument } from '../editor/document.ts';
import type { OpenDocuments } from './open-documents.ts';
import type { Session } from './session.ts';
import { inSlices } from './slices.ts';
import type { Time } from './slices.ts';

/** A request about a document, by the name of the feature that answers it. */
export interface Asked<T> {
  readonly feature: string;
  readonly uri: string;
  readonly token: CancellationToken;
  readonly answer: (document: EditorDocument) => Work<T>;
  /** What is answered where the document is not open. */
  readonly notOpen: () => T;
  /**
   * What is done where the text, or a file that it uses, changes before the answer is there. `again`: it is made for the
   * new text. `refuse`: the request was about a place in the old one, and the protocol's word for that is the answer.
   * `cannot`: it is made without a pause.
   */
  readonly changed: 'again' | 'refuse' | 'cannot';
  /** What is answered where the feature fails; without it an error. */
  readonly failed?: (why: string) => T;
}

/** Answers requests about documents: never with what an older text says, and never with nothing because of a failure. */
export type Answering = <T>(asked: Asked<T>) => Promise<T>;

export interface AnsweringHost {
  readonly console: RemoteConsole;
  readonly documents: OpenDocuments;
  readonly session: Session;
  readonly time: Time;
}

export function answering({ console, documents, session, time }: AnsweringHost): Answering {
  return async ({ feature, uri, token, answer, notOpen, changed, failed }) => {
    session.check();
    if (token.isCancellationRequested) throw cancelled();
    try {
      for (;;) {
        const document = documents.get(uri);
        if (document === undefined) return notOpen();
        try {
          const reasonToStop = (): Error | null =>
            token.isCancellationRequested ? cancelled() : documents.isCurrent(document) ? null : modified();
          const work = changed === 'cannot' ? answer(document) : afterReading(document, answer);
          return await inSlices(work, reasonToStop, time);
        } catch (error) {
          if (changed !== 'again' || !isModified(error)) throw error;
        }
      }
    } catch (error) {
      if (error instanceof ResponseError) throw error;
      const why = `${feature} failed: ${error instanceof Error ? error.message : String(error)}`;
      console.error(error instanceof Error ? `${why}\n${error.stack ?? ''}` : why);
      if (failed !== undefined) return failed(why);
      throw new ResponseError(ErrorCodes.InternalError, why);
    }
  };
}

/** The text is read in one go, which can take as long as many slices: others are heard after that. */
function* afterReading<T>(document: EditorDocument, answer: Asked<T>['answer']): Work<T> {
  document.analysis.procedure();
  yield { stage: 'windows', done: 0 };
  return yield* answer(document);
}

function cancelled(): ResponseError {
  return new ResponseError(LSPErrorCodes.RequestCancelled, 'The request was cancelled.');
}

function modified(): ResponseError {
  return new ResponseError(LSPErrorCodes.ContentModified, 'The text has changed since the request.');
}

function isModified(error: unknown): boolean {
  return error instanceof ResponseError && error.code === LSPErrorCodes.ContentModified;
}
