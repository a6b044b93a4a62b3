import type { NeedKind } from '../format/procedure.ts';
import type { Kind, Quantity, Verb } from '../format/words.ts';
import type { Accuracy, Limit, Span } from '../quantity/span.ts';
import type { OutcomeName } from './finding.ts';
import type { Resistance } from './resistance.ts';
import type { FileId, Path, StepRef } from './where.ts';

/*
 * A procedure as the engine sees it: quantities in SI units (ambient in °C), ids resolved, order kept.
 *
 * It is what could be read. Where a value could not be read, a finding of the text stage says so and the value here is
 * null; a whole entry that could not be read is left out, and everything that names it then counts as unreadable too.
 * Maps keep the order of the file.
 */

export type Id = string;

/** Something the file defines, with its place: the path of its entry, `['parts', 'coil-coupling']`. */
interface Defined {
  readonly id: Id;
  readonly path: Path;
}

interface Feeding extends Defined {
  readonly voltage: Span | null;
  /** Monitors, parts and connectors that are known. */
  readonly feeds: readonly Id[];
  /** False where an entry of `feeds` could not be read. */
  readonly feedsComplete: boolean;
  /** The stated wait in seconds. `unstated`: the key is absent. null: it is there and could not be read. */
  readonly wait: number | 'unstated' | null;
  readonly reserve: Reserve | 'unstated' | null;
  readonly resistance: InnerResistance;
}

/** Ohms of what is inside of a source, between its voltage and its terminals. null: it could not be read. */
export type InnerResistance = Span | 'unstated' | null;

export interface Battery extends Feeding {
  readonly kind: 'battery';
}

export interface HighVoltage extends Feeding {
  readonly kind: 'high-voltage';
  /** The connector whose opening is its `disconnect`; null: it could not be read. */
  readonly isolatedBy: Id | null;
  /** Volts. Below it the source counts as dead. */
  readonly safeBelow: Span | null;
}

/** A source by itself: it is taken away and given back, and feeds circuits. */
export type Source = Battery | HighVoltage;

/** A supply that holds its voltage and goes off with the source that it takes its energy from. */
export interface Regulated extends Defined {
  readonly kind: 'regulated';
  readonly voltage: Span | null;
  readonly resistance: InnerResistance;
  /** null: it could not be read. */
  readonly from: Id | null;
  /** It goes off with the ignition. */
  readonly needsIgnition: boolean;
  /** How long it stays on after the ignition is off, in seconds; until its source is off where it is not known. */
  readonly afterRun: number | 'unstated' | null;
}

/** What holds energy after the source is taken away. Farads, volts, ohms, volts. */
export interface Reserve {
  readonly capacitance: Span;
  readonly chargedTo: Span;
  readonly bleed: Span;
  readonly safeBelow: Span;
}

export interface Monitor extends Defined {
  readonly kind: 'monitor';
  /** Ohms. Beyond `most` it reads open. */
  readonly range: Span | null;
  readonly accuracy: Accuracy | null;
  readonly resolution: number | null;
  readonly testCurrent: Span | null;
  readonly tooLow: Limit | null;
  readonly tooHigh: Limit | null;
  /** It sees a path to ground or a supply below this many ohms. null: it does not look, or the value is unreadable. */
  readonly leakBelow: number | null;
}

export interface Multimeter extends Defined {
  readonly kind: 'multimeter';
  /** Ohms, in its least range and in the further ones, each larger than the one before. null: it measures none. */
  readonly resistance:
    (MeterRange & { readonly testCurrent: Span | null; readonly further: readonly MeterRange[] }) | null;
  /** Volts. */
  readonly voltage:
    | (MeterRange & {
        /** The ohms between its terminals. */
        readonly input: Span | null;
      })
    | null;
  /** Ohms, with a voltage of its own. */
  readonly insulation:
    | (MeterRange & {
        /** Seconds in which it takes away again what it charged. null: not known. */
        readonly discharge: number | null;
      })
    | null;
  /** Amperes that flow through it. */
  readonly current:
    | (MeterRange & {
        /** The ohms between its terminals. */
        readonly burden: Span | null;
      })
    | null;
  /** Amperes of a conductor that its clamp is around. */
  readonly clamp: MeterRange | null;
  /** Ohms of both leads together. null: not stated, or not readable. */
  readonly leads: Span | null;
  /** The leads are taken out of its readings. */
  readonly zeroed: boolean;
}

/** One range of an instrument. null: not readable. */
export interface MeterRange {
  readonly range: Span | null;
  readonly accuracy: Accuracy | null;
  readonly resolution: number | null;
}

/** What an insulation tester may be held to. */
interface Insulated extends Defined {
  /** The volts that it bears. null: none are stated, or they could not be read. */
  readonly withstands: number | null;
}

export interface Load extends Insulated {
  readonly kind: Kind<'loads'>;
  /** null: unreadable. */
  readonly resistance: Resistance | null;
  /** A keyed adapter: needs the mating face, and opens the shorting bar on its side. */
  readonly opensShortingBar: boolean;
}

/** A temperature that somebody measures and enters before a reading. */
export interface Entry extends Defined {
  /** What is measured, and where. */
  readonly ask: string;
  /** °C. null: unreadable. */
  readonly range: Span | null;
  /** How far what is entered may be off, °C. */
  readonly accuracy: number | null;
}

export type PartKind = Kind<'parts'>;

export interface Part extends Insulated {
  readonly kind: PartKind;
  /** `two-conductor` parts stand inside a loop, per conductor; `end` parts close it. */
  readonly form: 'two-conductor' | 'end';
  /** Of each conductor where it has two. null: unreadable. */
  readonly resistance: Resistance | null;
  /**
   * A pyrotechnic stage that can fire, or a section of high voltage. false also where it could not be read: its own
   * finding stands for it.
   */
  readonly live: boolean;
  /** An initiator that is written as `live: false`: the inert part of a trainer. */
  readonly statedInert: boolean;
  readonly noFire: Span | null;
  /** Of a `consumer`: its current from its first node to its second. */
  readonly draws: Draws | null;
  /** Of a `potentiometer`: where its wiper may stand, as a part of the track from its first end. `resistance` is that of the track. */
  readonly wiper: Span | null;
  /** Of an `hv-section`, in volts between its poles. */
  readonly voltage: Span | null;
}

/** What a consumer draws while there is a voltage across it. */
export interface Draws {
  /** null: not readable. */
  readonly amperes: Span | null;
  /** At every reading; else at those that name it. */
  readonly always: boolean;
}

export interface Connector extends Insulated {
  readonly contact: Span | null;
  readonly shortingBar: ShortingBar | null;
  /** Its two halves; in a loop the first is nearer the monitor. */
  readonly sides: readonly [Side, Side];
  /** Sources that it leads past the pins of its loops. */
  readonly carries: readonly Id[];
}

/** A half of a connector: `monitor`, `end`, or a name that the file gives it. */
export type Side = string;

export interface ShortingBar {
  readonly side: Side;
  readonly closes: 'unlocked' | 'unplugged';
  readonly resistance: Span | null;
  /** The two pins it bridges; null: the pins of each loop there. */
  readonly pins: readonly [string, string] | null;
}

export interface Loop extends Defined {
  /** The monitor that reads it; null where it could not be read. */
  readonly monitor: Id | null;
  /** What stands behind the monitor, outward, the end part last. */
  readonly elements: readonly { readonly kind: 'connector' | 'part'; readonly id: Id }[];
  /** False where an entry of the path could not be read: the loop then has no known resistance. */
  readonly complete: boolean;
  /** Both pins for every connector of the loop. */
  readonly pins: ReadonlyMap<Id, readonly [string, string]>;
}

/** A point of the network: a name, `ground`, or a terminal as it is written, `K30.monitor.1`. */
export type NodeName = string;

/**
 * What stands between two nodes of the network: a part, one pin of a connector, or a source with its plus first. A
 * potentiometer stands between three: one end, its wiper, the other end.
 */
export type NetworkElement = { readonly id: Id; readonly path: Path } & (
  | {
      readonly kind: 'part';
      readonly between: readonly [NodeName, NodeName] | readonly [NodeName, NodeName, NodeName];
    }
  | { readonly kind: 'source'; readonly between: readonly [NodeName, NodeName] }
  | { readonly kind: 'connector'; readonly between: readonly [NodeName, NodeName]; readonly pin: string }
);

/** Circuits that are not loops. */
export interface Network {
  readonly elements: readonly NetworkElement[];
  /** False where an element could not be read: what is computed of the network then is not known. */
  readonly complete: boolean;
}

/** A side of a connector where a load can sit, and the loop whose pins it bridges there. */
export interface Place {
  readonly connector: Id;
  readonly side: Side;
  /** null: the connector stands in no loop, or in several and the file does not say which. */
  readonly loop: Id | null;
}

/** Where the probes of an instrument go: both poles of a side, or two terminals. */
export type Probed =
  { readonly connector: Id; readonly side: Side } | readonly [one: Terminal, other: Terminal];

export interface Terminal {
  readonly connector: Id;
  readonly side: Side;
  readonly pin: string;
}

/** A point that a probe touches. */
export type Probe = Terminal | { readonly node: NodeName };

export type { Quantity };

/** How a current is measured. */
export type Carrying =
  { readonly kind: 'clamp'; readonly part: Id } | { readonly kind: 'series'; readonly connector: Id };

/** A window beside the accepted one, with its name. */
export interface NamedWindow {
  readonly name: string;
  readonly window: Span | Limit;
}

export interface Requires {
  readonly training: readonly string[];
  readonly protective: readonly string[];
  readonly information: readonly string[];
}

/** Where an outcome leads: an index into `steps`, or `end` behind the last one. null: an id that nothing carries. */
export type Target = number | 'end' | null;

export interface Outcome {
  readonly name: OutcomeName;
  /** The name of the window, where the name of the outcome is `window`. */
  readonly window?: string;
  /** For a reading of several loops: the loop whose class this is. Absent on `within` and `else` beside the loop names. */
  readonly of?: Id;
  readonly target: Target;
  readonly path: Path;
}

/** Something named in a step, with what it means: itself, or the things that an assembly is made of. */
export interface Mentioned {
  readonly id: Id;
  readonly members: readonly Id[];
  /** From the keys of the step on. */
  readonly place: Path;
}

/** What every step carries. */
export interface Written {
  /** From 1 in its list, sections not counted. */
  readonly number: number;
  readonly path: Path;
  readonly id?: Id;
  readonly section?: string;
  readonly note?: string;
  readonly why?: string;
  readonly notice?: string;
  readonly caution?: string;
  readonly warning?: string;
  readonly danger?: string;
  readonly minutes?: number;
  readonly see?: string;
}

export type Expect = Span | Limit | 'open';

/** Where a step stands among those that are done, in the order of the file with routines in the place of their calls. */
interface Placed {
  /** In `steps` of the procedure. */
  readonly index: number;
  readonly file: FileId;
  /** The routine that it stands in. */
  readonly routine?: Id;
  /** The `run` steps that lead here, outermost first. */
  readonly calls: readonly StepRef[];
}

/** Where hands are: at these things, at nothing, or the step does not say. */
export type Hands = readonly Mentioned[] | 'nothing' | 'not said';

/** What is accepted of a reading, and where its outcomes lead. */
export interface Judged {
  readonly expect: Expect | null;
  readonly windows: readonly NamedWindow[];
  /** In written order; null: no outcomes, the reading decides nothing. */
  readonly outcomes: readonly Outcome[] | null;
}

/** What monitors read. */
export interface ByMonitor extends Judged {
  /** One loop, or several of one monitor or more. */
  readonly loops: readonly Id[];
}

/** What a multimeter measures. */
export interface ByHand extends Judged {
  readonly quantity: Quantity;
  /** Of a voltage the plus first; of a current the way that counts as positive. */
  readonly across: readonly [Probe, Probe];
  /** The same as people say it: `K30.monitor`, `bus-high..bus-low`. */
  readonly of: string;
  readonly with: Id;
  /** Of insulation alone: the volts that the instrument puts there, and whether it has taken them away again. */
  readonly tester: { readonly volts: number; readonly discharged: boolean } | null;
  /** Of a current alone: a part that the clamp is around, or an unplugged connector that the instrument bridges. */
  readonly carrying: Carrying | null;
  /** Consumers that draw their current meanwhile, beside those that always do. */
  readonly drawing: readonly Id[];
}

/** Something that is moved by hand: a part, a connector with both of its halves, or one half of it. */
export interface Moved {
  readonly id: Id;
  readonly side?: Side;
  /** From the keys of the step on. */
  readonly place: Path;
}

/** What is moved, and for how many seconds. */
interface Moving {
  readonly moved: readonly Moved[];
  readonly seconds: number;
}

/**
 * What a step does. `at` of `inspect` and `do` holds the connectors, parts and monitors that hands touch, `of` all that
 * is only looked at; sides and terminals are reduced to their connector.
 */
export type Action =
  | { readonly verb: 'ignition'; readonly to: 'on' | 'off' | 'cycle' }
  | {
      readonly verb: 'disconnect' | 'reconnect';
      readonly source: Id;
      /** The connector that is opened or mated by it: that which isolates a high-voltage source. null: none. */
      readonly connector: Id | null;
    }
  | { readonly verb: 'wait'; readonly seconds: number }
  | {
      readonly verb: 'prove-dead';
      readonly source: Id;
      readonly at: Probed;
      readonly with: Id;
      /** The battery on which the instrument is proven before and after. */
      readonly known: Id;
      /** `dead` and `live` as far as they are written. Otherwise `dead` goes on, and `live` ends the work. */
      readonly outcomes: readonly Outcome[];
    }
  | { readonly verb: 'unlock' | 'unplug' | 'plug'; readonly connector: Id }
  | { readonly verb: 'fit'; readonly load: Id; readonly at: Place }
  | { readonly verb: 'remove'; readonly load: Id }
  | { readonly verb: 'move'; readonly load: Id; readonly to: Place }
  | ({ readonly verb: 'read' } & ByMonitor)
  | ({ readonly verb: 'measure' } & ByHand)
  /** The least and the most of what is seen meanwhile decide. */
  | ({ readonly verb: 'wiggle'; readonly by: 'monitor' } & Moving & ByMonitor)
  | ({ readonly verb: 'wiggle'; readonly by: 'hand' } & Moving & ByHand)
  | { readonly verb: 'read-codes'; readonly monitor: Id; readonly outcomes: readonly Outcome[] | null }
  | { readonly verb: 'clear-codes'; readonly monitor: Id }
  | {
      readonly verb: 'inspect';
      readonly text: string;
      readonly at: Hands;
      readonly of: readonly Mentioned[];
      readonly outcomes: readonly Outcome[] | null;
    }
  | { readonly verb: 'do'; readonly text: string; readonly at: Hands; readonly of: readonly Mentioned[] }
  | { readonly verb: 'replace'; readonly what: readonly Mentioned[] }
  | { readonly verb: 'conclude'; readonly what: readonly Mentioned[] | 'none' }
  | { readonly verb: 'go'; readonly to: Target }
  | { readonly verb: 'stop'; readonly text: string; readonly leaves: readonly Id[] }
  /** What follows it are the steps of the routine; it does nothing itself. */
  | { readonly verb: 'run'; readonly runs: Id; readonly given: ReadonlyMap<Id, string> }
  /** Could not be read: it has no effect, and what lies behind it on a path is held back. */
  | { readonly verb: 'broken' };

export type Step = Written & Placed & Action;

export interface Routine extends Defined {
  readonly needs: ReadonlyMap<Id, NeedKind>;
  /** Of its steps as they are written, in order. */
  readonly verbs: readonly Verb[];
}

/** Several things that are one in the hand. */
export interface Assembly extends Defined {
  readonly members: readonly Id[];
}

/** A finding that the author takes upon himself. */
export interface Waiver {
  readonly rule: string;
  /** The step that it is about, by its place in the file; null: about no step. */
  readonly step: Path | null;
  readonly reason: string;
  readonly path: Path;
}

export interface Procedure {
  readonly file: FileId;
  /** What stands in parts files that it uses, by section and id: `connectors/K30`. Everything else is its own. */
  readonly elsewhere: ReadonlyMap<string, FileId>;
  readonly title: string;
  /** Its values are invented: it says so itself. */
  readonly isExample: boolean;
  readonly appliesTo: string | null;
  readonly revision: string | null;
  readonly purpose: string | null;
  readonly requires: Requires;
  /** °C. `assumed`: not stated in the file, the default. */
  readonly ambient: Span & { readonly assumed: boolean };
  readonly sources: ReadonlyMap<Id, Source>;
  readonly regulated: ReadonlyMap<Id, Regulated>;
  readonly entries: ReadonlyMap<Id, Entry>;
  readonly monitors: ReadonlyMap<Id, Monitor>;
  readonly multimeters: ReadonlyMap<Id, Multimeter>;
  readonly loads: ReadonlyMap<Id, Load>;
  readonly parts: ReadonlyMap<Id, Part>;
  readonly connectors: ReadonlyMap<Id, Connector>;
  readonly assemblies: ReadonlyMap<Id, Assembly>;
  readonly loops: ReadonlyMap<Id, Loop>;
  readonly network: Network;
  readonly routines: ReadonlyMap<Id, Routine>;
  readonly waivers: readonly Waiver[];
  /** All that is done, in the order of the file, with the steps of a routine behind each call of it. */
  readonly steps: readonly Step[];
}
