import type { StepGraph } from '../paths/graph.ts';
import type { Finding } from '../model/finding.ts';
import type { Id, Procedure, Quantity } from '../model/procedure.ts';

/*
 * The printable card as plain data. Every word that is printed is decided here; a form (HTML, later others) decides only
 * how it looks.
 */

// ---- what a card is made from ------------------------------------------------------------------

/** What a step should show of one loop, or between two points. */
export interface CardReading {
  /** Of the step. */
  readonly index: number;
  readonly of: string;
  readonly quantity: Quantity;
  /** The accepted window as every face prints it: `1.96..3.63 Ω`, or `open`. */
  readonly printed: string;
  readonly from: 'expect' | 'computed';
  readonly nominal: string | null;
  /** It was computed, and is wider than what sound circuits show: an outer bound. */
  readonly isOuter: boolean;
  /** Whether `else` of the step is what lies within this window: all that lies outside of it has another outcome. */
  readonly elseIsWithin: boolean;
  /** The windows as a table over what is entered; empty where there is one window only. */
  readonly rows: readonly CardRow[];
}

/** One row of such a table. */
export interface CardRow {
  readonly entered: readonly { readonly entry: Id; readonly range: string }[];
  readonly printed: string;
}

/** What the measurements of a `prove-dead` step should show; null: not known. */
export interface CardProof {
  readonly index: number;
  /** The circuit is without voltage only between this with a minus and with a plus: `59.5 V`. */
  readonly limit: string | null;
  /** The most that the reserve leaves after the wait: `3.6 V`, `5 min`. */
  readonly residual: { readonly most: string; readonly after: string } | null;
  /** The parts that hang together with the test points, however the step is reached. */
  readonly parts: readonly Id[];
  /** On the known source: `12.4..12.8 V`. */
  readonly known: string | null;
}

/** Codes that the work itself can set by the time this step is reached. */
export interface CardCodes {
  readonly index: number;
  readonly codes: readonly { readonly loop: Id; readonly code: string; readonly certain: boolean }[];
}

/** What stands as it is when the procedure ends at a `stop`. `always` is false where only some paths leave it so. */
export interface CardLeft {
  readonly index: number;
  readonly left: readonly {
    readonly id: Id;
    readonly as: 'disconnected' | 'unlocked' | 'unplugged' | 'fitted' | 'codes' | 'repair';
    readonly always: boolean;
  }[];
}

export interface CardStamp {
  /** Of the saved files, in hexadecimal. */
  readonly sha256: string;
  readonly version: string;
  /** As it is to be printed. */
  readonly date: string;
  readonly file: string;
}

export interface CardInput {
  readonly procedure: Procedure;
  readonly graph: StepGraph;
  readonly readings: readonly CardReading[];
  readonly proofs: readonly CardProof[];
  readonly codes: readonly CardCodes[];
  readonly left: readonly CardLeft[];
  readonly findings: readonly Finding[];
  /** The wait owed at each source of a live circuit, in seconds. */
  readonly owed: readonly { readonly source: Id; readonly seconds: number }[];
  readonly stamp: CardStamp;
  readonly draft: boolean;
  /** A limit of the check was met, so that not everything was checked. */
  readonly isUnfinished: boolean;
}

// ---- text --------------------------------------------------------------------------------------

/**
 * A stretch of text: plain, the id of something in the file, what is to stand out, the number of a step, or what the author
 * wrote, which may run from right to left and must not turn round what stands beside it.
 */
export type Piece =
  | string
  | { readonly id: Id }
  | { readonly strong: string }
  | { readonly step: string }
  | { readonly said: string };
export type Words = readonly Piece[];

export interface Fact {
  readonly label: string;
  readonly words: Words;
}

// ---- the card ----------------------------------------------------------------------------------

export type Signal = 'danger' | 'warning' | 'caution' | 'notice' | 'note';

export interface Notice {
  readonly signal: Signal;
  /** The signal word as printed: DANGER, WARNING, CAUTION, NOTICE, NOTE. */
  readonly word: string;
  readonly lines: readonly string[];
}

export interface NeedGroup {
  readonly label: string;
  readonly items: readonly Words[];
}

export interface DrawnBar {
  readonly half: 'upper' | 'lower';
  readonly side: string;
  readonly words: string;
}

/** What stands along a loop, from the instrument outward. `lines` are printed beside it. */
export type Drawn =
  | { readonly kind: 'monitor'; readonly id: Id; readonly lines: readonly string[] }
  | {
      readonly kind: 'connector';
      readonly id: Id;
      readonly pins: readonly [string, string];
      readonly sides: readonly [upper: string, lower: string];
      readonly bar: DrawnBar | null;
      readonly lines: readonly string[];
    }
  | { readonly kind: 'part'; readonly id: Id; readonly lines: readonly string[] }
  | { readonly kind: 'end'; readonly id: Id; readonly live: string | null; readonly lines: readonly string[] }
  | { readonly kind: 'unknown'; readonly lines: readonly string[] };

export interface LoopDrawing {
  readonly loop: Id;
  readonly title: string;
  /** The same in words, for those who cannot see the drawing. */
  readonly description: string;
  readonly elements: readonly Drawn[];
  /** Where a long loop is cut in two: printed at the end of one part and at the start of the next. */
  readonly continues: string;
  readonly continued: string;
}

/** What stands between the points of the network, a line each. */
export interface CardNetwork {
  readonly heading: string;
  readonly explanation: string;
  readonly columns: readonly string[];
  readonly rows: readonly { readonly from: string; readonly what: Words; readonly to: string }[];
}

export interface CardWindow {
  /** What is read. */
  readonly of: Words;
  /** What it should show: `1.96..3.63 Ω`, or `open (no number)`. */
  readonly window: string;
  readonly remark: string | null;
  /** What is written down of it, where that is more than one number. */
  readonly blanks: readonly string[];
  /** Where it depends on what is entered, and the table stands here. */
  readonly table: CardTable | null;
}

export interface CardTable {
  /** Of a table in the annex; null: it stands at its step. */
  readonly title: string | null;
  readonly caption: Words;
  /** What is entered, then the window. */
  readonly headings: readonly string[];
  readonly rows: readonly { readonly entered: readonly string[]; readonly window: string }[];
}

export interface CardOutcome {
  readonly when: Words;
  readonly then: string;
  /** Where it leads; null: nowhere. */
  readonly to: { readonly step: string } | 'end' | null;
  /** The step that follows on the card: nothing is skipped. */
  readonly isNext: boolean;
}

/** What stands as it is at a stop. */
export interface Left {
  readonly heading: string;
  readonly items: readonly Words[];
}

export interface CardStep {
  /** As it is printed; behind those of the calls that lead to it: `5.2`. */
  readonly number: string;
  /** Set where the step is reached other than from the step before it. */
  readonly reachedFrom: Words | null;
  /** Printed before the action, the gravest first. */
  readonly notices: readonly Notice[];
  readonly kind: 'act' | 'read' | 'conclude' | 'call' | 'go' | 'stop' | 'broken';
  readonly action: Words;
  readonly details: readonly Words[];
  readonly windows: readonly CardWindow[];
  readonly blanks: readonly string[];
  readonly codes: { readonly lines: readonly Words[] } | null;
  readonly outcomes: { readonly introduction: string | null; readonly rows: readonly CardOutcome[] } | null;
  readonly left: (Left & { readonly sometimes: Left | null }) | null;
}

export interface CardSection {
  readonly title: string | null;
  readonly steps: readonly CardStep[];
}

export interface Remark {
  readonly severity: string;
  readonly step: string | null;
  readonly message: string;
  readonly rule: string;
}

export interface CardModel {
  readonly language: 'en';
  /** The mark for every page; null on a checked card. */
  readonly draft: string | null;
  readonly form: string;
  readonly title: string;
  readonly facts: readonly Fact[];
  readonly hazard: Notice;
  readonly job: { readonly heading: string; readonly blanks: readonly string[] };
  readonly needs: { readonly heading: string; readonly groups: readonly NeedGroup[] };
  readonly drawings: {
    readonly heading: string;
    readonly explanations: readonly string[];
    readonly loops: readonly LoopDrawing[];
  };
  readonly network: CardNetwork | null;
  readonly before: { readonly heading: string; readonly lines: readonly Words[] };
  readonly steps: {
    readonly heading: string;
    readonly explanations: readonly string[];
    readonly done: string;
    readonly codes: string;
    /** The headings of the table of readings: what is read, what it should show, where it is written down. */
    readonly columns: readonly [of: string, window: string, blank: string];
    readonly sections: readonly CardSection[];
  };
  /** What holds when the last step is done; null where no path gets there. */
  readonly end: { readonly heading: string; readonly lines: readonly Words[] } | null;
  readonly assumptions: {
    readonly heading: string;
    readonly introduction: string;
    readonly facts: readonly Fact[];
  };
  readonly remarks: {
    readonly heading: string;
    readonly introduction: string;
    readonly items: readonly Remark[];
  };
  /** Tables that are too long to stand at their steps; null where there are none. */
  readonly annex: { readonly heading: string; readonly tables: readonly CardTable[] } | null;
  readonly stamp: { readonly heading: string; readonly facts: readonly Fact[]; readonly running: Words };
}
