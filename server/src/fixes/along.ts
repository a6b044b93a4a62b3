import { changesTo } from '../bench/changes.ts';
import { greatestOf } from '../quantity/extremes.ts';
import { askedBy } from '../bench/asked.ts';
import type { Analysis } from '../project/analysis.ts';
import { clockAfter, clockAtStart, clockTaken } from '../bench/clock.ts';
import type { Clock, Cluster } from '../bench/clock.ts';
import { fragmentsOf } from '../bench/fragments.ts';
import { hardwareAfter, hardwareAtStart } from '../bench/hardware.ts';
import type { Half } from '../bench/carried.ts';
import { owedByAll } from '../bench/owed.ts';
import { halvesToProve } from '../bench/proofs.ts';
import { nodeOf } from '../bench/same-nodes.ts';
import { sourcesAsBuilt } from '../bench/supplies.ts';
import { touchesOf } from '../bench/touch.ts';
import type { Touch } from '../bench/touch.ts';
import type { Finding, Taken } from '../model/finding.ts';
import type { Id, Procedure, Step } from '../model/procedure.ts';

/** A source that is not proven dead, and the half of a connector where it has to be looked for; null: anywhere. */
export interface Unproven {
  readonly source: Id;
  readonly at: Half | null;
}

/** What is missing for hands to be safe, at one hop of the path to a finding. */
export interface Missing {
  /** Index of the step that the hop enters. */
  readonly index: number;
  readonly ignitionIsOn: boolean;
  readonly connected: readonly Id[];
  /** The wait still owed, in seconds; the whole one while anything is on. */
  readonly owed: number;
  /** High-voltage sources that are not proven dead. */
  readonly unproven: readonly Unproven[];
  /** Monitors fed by what is still connected whose codes the path has not written down. */
  readonly unread: readonly Id[];
}

/** Follows the path to hands that are not safe, or to a proof that comes too early: what is missing before each step. */
export function missingAlong(analysis: Analysis, finding: Finding): readonly Missing[] {
  const procedure = analysis.procedure().value;
  const { subject, trace } = finding;
  if (subject === undefined || trace === undefined) return [];
  const circuits = analysis.circuits();
  const ofHazards = hazardClusters(analysis, subject);
  const clusters = ofHazards.length > 0 ? ofHazards : powerCluster(procedure, finding);
  const read = new Set<Id>();
  const touches = touchesAt(procedure, finding);
  let clocks = clusters.map(({ cluster }) => clockAtStart(cluster));
  return trace.hops.flatMap((hop): readonly Missing[] => {
    const { index } = hop;
    const step = procedure.steps[index];
    if (step === undefined) return [];
    const fed = [...procedure.monitors.keys()].filter(
      (id) => circuits.feeding(id).length > 0 && !read.has(id),
    );
    const here = clusters.map(({ cluster, groups }, at) => missingIn(cluster, groups, touches, clocks[at]));
    clocks = clusters.map(({ cluster }, at) => passed(clocks[at], step, hop.taken, cluster));
    for (const { monitor, are } of changesTo('codes', step)) if (are === 'read') read.add(monitor);
    const connected = [...new Set(here.flatMap((one) => one.connected))];
    return [
      {
        index,
        ignitionIsOn: here.some(({ ignitionIsOn }) => ignitionIsOn),
        connected,
        unproven: here.flatMap((one) => one.unproven),
        unread: fed.filter((id) => circuits.feeding(id).some((source) => connected.includes(source))),
        owed: greatestOf(
          here.map(({ owed }) => owed),
          0,
        ),
      },
    ];
  });
}

function passed(clock: Clock | undefined, step: Step, taken: Taken | null, cluster: Cluster): Clock {
  const after = clockAfter(clock ?? clockAtStart(cluster), step, cluster);
  return taken === null ? after : clockTaken(after, step, taken, cluster);
}

/** How the last step of the path touches what the finding is about. */
function touchesAt(procedure: Procedure, { subject, trace }: Finding): readonly Touch[] {
  const steps = (trace?.hops ?? []).flatMap(({ index }) => procedure.steps[index] ?? []);
  const last = steps.pop();
  if (last === undefined) return [];
  const all = { connectors: new Set(procedure.connectors.keys()) };
  const { loads } = steps.reduce((before, step) => hardwareAfter(before, step, all), hardwareAtStart);
  return touchesOf(last, (load) => loads.get(load)).filter(({ id }) => id === subject);
}

interface Concerned {
  readonly cluster: Cluster;
  /** Of its groups, by their places. */
  readonly groups: readonly number[];
}

function hazardClusters(analysis: Analysis, subject: Id): readonly Concerned[] {
  const circuits = analysis.circuits();
  const concerned = analysis.procedure().value.sources.has(subject)
    ? circuits.hazards.filter(({ sources }) => sources.includes(subject))
    : circuits.hazardsAt(subject);
  return analysis.clusters().flatMap((cluster) => {
    const groups = cluster.groups.flatMap((group, at) =>
      group.hazards.some((hazard) => concerned.includes(hazard)) ? [at] : [],
    );
    return groups.length === 0 ? [] : [{ cluster, groups }];
  });
}

/** What powers the place that a step is about, where nothing live is. */
function powerCluster(procedure: Procedure, { subject = '', trace }: Finding): readonly Concerned[] {
  const step = procedure.steps[trace?.hops.at(-1)?.index ?? -1];
  if (step === undefined) return [];
  const { at, of, under } = fragmentsOf(procedure);
  const asked = askedBy(step);
  const probed = asked?.of === 'points' ? asked.step.across.map((probe) => at(nodeOf(probe))) : [];
  const places = changesTo('load', step).flatMap((change) => (change.at === null ? [] : under(change.at)));
  const some = [...probed.filter((index) => index !== null), ...places, ...of(subject)];
  const sources = sourcesAsBuilt(procedure, some);
  if (sources.length === 0) return [];
  const group = { sources, hazards: [], whole: owedByAll(procedure, sources) };
  const cluster = { sources, groups: [group], highVoltage: [], connectors: new Set<Id>(), procedure };
  return [{ cluster, groups: [0] }];
}

function missingIn(
  cluster: Cluster,
  groups: readonly number[],
  touches: readonly Touch[],
  clock: Clock = clockAtStart(cluster),
): Omit<Missing, 'index' | 'unread'> {
  const sources = groups.flatMap((at) => cluster.groups[at]?.sources ?? []);
  return {
    ignitionIsOn: clock.power.ignitionOn,
    connected: [...new Set(sources)].filter((source) => !clock.power.disconnected.includes(source)),
    unproven: cluster.highVoltage
      .filter((source) => sources.includes(source))
      .flatMap((source) => lackingOf(cluster.procedure, source, touches, clock)),
    owed: greatestOf(
      groups.map((at) => clock.owed[at] ?? 0),
      0,
    ),
  };
}

function lackingOf(
  procedure: Procedure,
  source: Id,
  touches: readonly Touch[],
  { proven, hardware }: Clock,
): readonly Unproven[] {
  const halves = touches.flatMap((touch) => halvesToProve(procedure, proven, source, touch, hardware));
  if (halves.length === 0) return proven.has(source) ? [] : [{ source, at: null }];
  return halves.map((at) => ({ source, at }));
}
