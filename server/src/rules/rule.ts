import type { Circuits } from '../bench/circuits.ts';
import type { Cluster } from '../bench/clock.ts';
import type { Explorer, Run } from '../paths/run.ts';
import type { StepGraph } from '../paths/graph.ts';
import type { Issue } from '../paths/issue.ts';
import type { Way } from '../paths/trace.ts';
import type { Left } from '../readings/left.ts';
import type { Readings } from '../readings/reading.ts';
import type { SharedWatchers } from '../readings/shared-watchers.ts';
import type { Severity } from '../model/finding.ts';
import type { Procedure } from '../model/procedure.ts';
import type { Path } from '../model/where.ts';

/** All that a rule may look at. */
export interface Context {
  readonly procedure: Procedure;
  /** Whether all of the text could be read: what seems not to be used may else be used by what could not. */
  readonly isWhole: boolean;
  /** What a step does, as a name that stays when lines move. */
  readonly stepContent: (path: Path) => string;
  readonly graph: StepGraph;
  readonly explorer: Explorer;
  readonly watchers: SharedWatchers;
  readonly circuits: Circuits;
  /** The hazards by the sources that they share. */
  readonly clusters: readonly Cluster[];
  readonly readings: Readings;
  /** What the paths to each `stop` leave as it is. */
  readonly left: readonly Left[];
  /** By step: whether some path reaches it. */
  readonly reached: readonly boolean[];
  /** Whether a reachable step has ways out that are not known: what no path does may then be done all the same. */
  readonly astray: boolean;
}

/** An issue that no path is needed to see: about a step, or about a place of its own. */
export interface Seen {
  readonly issue: Issue;
  readonly index?: number;
  /** The path to it. */
  readonly way?: Way;
  /** For a cycle: index of the hop that the path returns to. */
  readonly repeatsFrom?: number;
}

/** What looks for the issues of one rule, or of several that share their automaton. */
export interface Finder {
  readonly watch?: (context: Context) => readonly Run[];
  readonly check?: (context: Context) => readonly Seen[];
}

export interface Example {
  /** What the example shows, in a few words. */
  readonly shows: string;
  readonly text: string;
}

/** A rule with its name and what people need to know of it. */
export interface Rule {
  readonly name: string;
  readonly severity: Severity;
  readonly stage: 'windows' | 'order';
  /** It guards live stages, or the proof itself: no waiver holds against it. */
  readonly immune?: true;
  /** One line. */
  readonly meaning: string;
  readonly why: string;
  /** A published source, or `common practice`. */
  readonly source: string;
  readonly finder: Finder;
  /** One that it finds something in, and one, as close to it as can be, where it does not. */
  readonly examples: { readonly triggers: Example; readonly passes: Example };
}
