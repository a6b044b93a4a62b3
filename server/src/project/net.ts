import type { Work } from '../model/work.ts';
import type { Finding, Stage } from '../model/finding.ts';
import type { SourceFile } from '../text/read-document.ts';
import { version } from './version.ts';

/*
 * Reading and analysis are made so that they never throw. This is the net below them: what throws all the same, a stack
 * that is full among it, is kept as the failure of the file and told as a finding. It is never passed over.
 */

export type CheckedStage = Exclude<Stage, 'diagnosis'>;

/** Something that went wrong inside Ohmwright itself. */
export interface Failure {
  /** Where the check broke off. */
  readonly stage: CheckedStage;
  /** What was thrown says this, on one line. */
  readonly message: string;
  /** The same with all that helps to find the cause, for a log. */
  readonly detail: string;
}

/** Keeps the first failure. */
export interface Net {
  readonly failure: () => Failure | null;
  readonly catch: (stage: CheckedStage, error: unknown) => void;
  /** What is computed, or what is given in its place where that fails. */
  readonly hold: <T>(stage: CheckedStage, compute: () => T, instead: (error: unknown) => T) => T;
  readonly holdWork: <T>(stage: CheckedStage, work: () => Work<T>, instead: () => T) => Work<T>;
}

export function failureNet(): Net {
  let failure: Failure | null = null;
  const caught = (stage: CheckedStage, error: unknown): void => {
    failure ??= { stage, message: messageOf(error), detail: detailOf(error) };
  };
  return {
    failure: () => failure,
    catch: caught,
    hold: (stage, compute, instead) => {
      try {
        return compute();
      } catch (error) {
        caught(stage, error);
        return instead(error);
      }
    },
    *holdWork(stage, work, instead) {
      try {
        return yield* work();
      } catch (error) {
        caught(stage, error);
        return instead();
      }
    },
  };
}

const doing: Readonly<Record<CheckedStage, string>> = {
  text: 'read this file',
  windows: 'worked out the windows of this file',
  order: 'checked the order of this file',
};

/** The finding that stands for all that was not looked at, on the first line of the file. */
export function notChecked({ id, text }: SourceFile, { stage, message }: Failure): Finding {
  return {
    rule: 'not-checked',
    severity: 'error',
    stage,
    message:
      `Ohmwright failed while it ${doing[stage]}: ${message}. The file is not checked from there on, and what is not reported may still be wrong. ` +
      `Send the file and this message to the developers of Ohmwright (version ${version}). Nothing is sent by itself.`,
    at: { file: id, path: [], part: 'value', within: [0, text.length] },
    related: [],
    key: 'not-checked',
  };
}

/** No more of what was thrown is told than this many characters. */
const longest = 200;

/** What was thrown, on one line and without the full stop that follows it in a sentence. */
export function messageOf(error: unknown): string {
  const said = textOf(() => (error instanceof Error ? `${error.name}: ${error.message}` : String(error)));
  const line = said.replaceAll(/\s+/g, ' ').trim();
  return (line.length <= longest ? line : `${line.slice(0, longest)}…`).replace(/\.$/, '');
}

function detailOf(error: unknown): string {
  return textOf(() => (error instanceof Error ? (error.stack ?? error.message) : String(error)));
}

/** Anything can be thrown, also what cannot be made a text of. */
function textOf(say: () => string): string {
  try {
    return say();
  } catch {
    return 'something without a message was thrown';
  }
}
