import { greatestOf } from '../quantity/extremes.ts';
import type { Taken } from '../model/finding.ts';
import type { Procedure, Regulated, Step } from '../model/procedure.ts';
import { askedBy } from './asked.ts';
import { changesTo } from './changes.ts';
import { fragmentsOf, probed, provenAt } from './fragments.ts';
import type { FragmentIndex } from './fragments.ts';
import { hardwareAfter, hardwareAtStart, hardwareKey } from './hardware.ts';
import type { Hardware } from './hardware.ts';
import { owedBy } from './owed.ts';
import { isOff, powerAfter, powerAtStart, powerKey } from './power.ts';
import type { Power } from './power.ts';
import type { Supply, Zone } from './supplies.ts';

/*
 * What is powered on a bench, and what may still be charged. A piece is powered while something that powers a fragment of
 * it is on. From then on all that was in it is charged for the longest wait of all that powered it; both halves of a cut
 * keep that, and what is joined shares it.
 */

/** How long a fragment may still be charged, and how long it was when its last source went off; in seconds. */
export interface Charge {
  readonly owed: number;
  readonly whole: number;
}

/** The power, connectors and loads of a zone, and by fragment of the zone what it may hold. */
export interface Energy {
  readonly power: Power;
  readonly hardware: Hardware;
  /** By source of the zone, where a supply depends on it: seconds of its own wait still owed. */
  readonly rest: readonly number[];
  /** By supply that needs the ignition: seconds that it may still run without. */
  readonly runs: readonly number[];
  readonly charges: readonly Charge[];
  /** The same of sources above `arcing` alone, high voltage aside. */
  readonly arcs: readonly Charge[];
  /** What an insulation tester has charged; empty where none is held to the zone. */
  readonly tested: readonly Tested[];
}

/** What an insulation tester put on a fragment. */
export interface Tested {
  /** 0: nothing. */
  readonly volts: number;
  /** Seconds until it has taken it away again; Infinity: only a proof tells. */
  readonly owed: number;
}

const untested: Tested = { volts: 0, owed: 0 };

/** Volts. What was charged to this and above is proven dead, whatever was waited (ISO 6469-3, voltage class B). */
const provenFrom = 60;

/** Volts DC. Contacts that part above it can draw an arc (common practice, no source). */
export const arcing = 30;

const uncharged: Charge = { owed: 0, whole: 0 };

/** What is asked of the energy of one zone. */
export interface EnergyOf {
  readonly start: Energy;
  /** The energy after a step; the same object where the step concerns nothing of the zone. */
  readonly after: (energy: Energy, step: Step) => Energy;
  /** All fragments of the pieces that some fragments lie in. */
  readonly piecesWith: (energy: Energy, some: readonly FragmentIndex[]) => readonly FragmentIndex[];
  /** What powers these fragments now. */
  readonly poweredBy: (energy: Energy, some: readonly FragmentIndex[]) => readonly Supply[];
  /** The longest charge of these fragments. */
  readonly charge: (energy: Energy, some: readonly FragmentIndex[], of: 'charges' | 'arcs') => Charge;
  /** What an insulation tester left on these fragments. */
  readonly tested: (energy: Energy, some: readonly FragmentIndex[]) => Tested;
  /** Nothing of that any more, on all that hangs together with these. */
  readonly withoutTest: (energy: Energy, some: readonly FragmentIndex[]) => Energy;
  /** The energy after a way out of a step: `dead` proves that a tester left nothing there. */
  readonly taken: (energy: Energy, step: Step, taken: Taken) => Energy;
}

export function energyOf(procedure: Procedure, zone: Zone): EnergyOf {
  const fragments = fragmentsOf(procedure);
  const { pieces } = fragments;
  const wholeRest = zone.sources.map((id) => {
    const source = procedure.sources.get(id);
    return source === undefined ? 0 : owedBy(source).seconds;
  });
  const wholeRuns = zone.running.map(({ afterRun }) => (typeof afterRun === 'number' ? afterRun : Infinity));
  const places = new Map(zone.fragments.map((fragment, at) => [fragment, at]));

  /** Seconds until it is off by itself. 0: it is off. */
  const lasts = (energy: Energy, { source, offWith }: Supply): number => {
    if (offWith === 'never') return Infinity;
    if (offWith === 'itself') return isOff(energy.power, source) ? 0 : Infinity;
    return lastsRegulated(energy, offWith);
  };
  const lastsRegulated = ({ power, runs, rest }: Energy, supply: Regulated): number => {
    const { from } = supply;
    if (from === null) return 0;
    const isFromOff = isOff(power, from);
    if (!supply.needsIgnition) return isFromOff ? 0 : Infinity;
    if (power.ignitionOn) return Infinity;
    const running = runs[zone.running.indexOf(supply)] ?? 0;
    return isFromOff ? Math.min(running, rest[zone.sources.indexOf(from)] ?? 0) : running;
  };
  const suppliesIn = (some: readonly FragmentIndex[]): readonly Supply[] =>
    some.flatMap((index) => zone.supplies.get(index) ?? []);
  const piecesOn = (hardware: Hardware): readonly (readonly FragmentIndex[])[] => {
    const pieceOf = pieces(hardware);
    const found = new Map<FragmentIndex, FragmentIndex[]>();
    for (const index of zone.fragments) {
      const piece = pieceOf[index] ?? index;
      const inside = found.get(piece);
      if (inside === undefined) found.set(piece, [index]);
      else inside.push(index);
    }
    return [...found.values()];
  };

  /** Pieces share what they hold, and what is on fills them. */
  const filled = (energy: Energy, joined = piecesOn(energy.hardware)): Energy => {
    const charges = [...energy.charges];
    const arcs = [...energy.arcs];
    for (const piece of joined) {
      const on = suppliesIn(piece).filter((supply) => lasts(energy, supply) > 0);
      const levels = [
        [charges, on],
        [arcs, on.filter(drawsArcs)],
      ] as const;
      for (const [level, powering] of levels) {
        const shared = most(piece.map((index) => level[places.get(index) ?? -1] ?? uncharged));
        const whole = greatestOf(
          powering.map(({ wait }) => wait),
          shared.whole,
        );
        const charge = powering.length > 0 ? { owed: whole, whole } : shared;
        for (const index of piece) level[places.get(index) ?? -1] = charge.owed > 0 ? charge : uncharged;
      }
    }
    return sharingTest({ ...energy, charges, arcs }, joined);
  };

  const sharingTest = (energy: Energy, joined: readonly (readonly FragmentIndex[])[]): Energy => {
    if (energy.tested.every(({ volts }) => volts === 0)) return energy;
    const tested = [...energy.tested];
    for (const piece of joined) {
      const shared = mostTested(piece.map((index) => tested[places.get(index) ?? -1] ?? untested));
      for (const index of piece) tested[places.get(index) ?? -1] = shared;
    }
    return { ...energy, tested };
  };

  const waited = (energy: Energy, seconds: number): Energy => {
    const { power } = energy;
    const charges = [...energy.charges];
    const arcs = [...energy.arcs];
    for (const piece of piecesOn(energy.hardware)) {
      const supplies = suppliesIn(piece);
      for (const [level, powering] of [
        [charges, supplies],
        [arcs, supplies.filter(drawsArcs)],
      ] as const) {
        const counts =
          seconds -
          greatestOf(
            powering.map((supply) => lasts(energy, supply)),
            0,
          );
        if (counts <= 0) continue;
        for (const index of piece) {
          const at = places.get(index) ?? -1;
          const { owed, whole } = level[at] ?? uncharged;
          const left = less(owed, counts);
          level[at] = left === 0 ? uncharged : { owed: left, whole };
        }
      }
    }
    const runs = power.ignitionOn ? energy.runs : energy.runs.map((left) => less(left, seconds));
    const rest = energy.rest.map((left, at) =>
      isOff(power, zone.sources[at] ?? '') ? less(left, seconds) : left,
    );
    const tested = energy.tested.map((left) => {
      const owed = less(left.owed, seconds);
      return owed === 0 ? untested : { ...left, owed };
    });
    return { ...energy, charges, arcs, tested, runs, rest };
  };

  const switched = (energy: Energy, power: Power, hardware: Hardware): Energy => {
    const runs = power.ignitionOn ? wholeRuns : energy.runs;
    const rest = energy.rest.map((left, at) =>
      isOff(power, zone.sources[at] ?? '') ? left : (wholeRest[at] ?? 0),
    );
    return filled({ ...energy, power, hardware, runs, rest });
  };

  const piecesWith = (energy: Energy, some: readonly FragmentIndex[]): readonly FragmentIndex[] => {
    const pieceOf = pieces(energy.hardware);
    const wanted = new Set(some.map((index) => pieceOf[index]));
    return zone.fragments.filter((index) => wanted.has(pieceOf[index]));
  };
  const withTest = (energy: Energy, some: readonly FragmentIndex[], test: Tested): Energy => {
    const inside = new Set(piecesWith(energy, some));
    const tested = energy.tested.map((one, at) => {
      const fragment = zone.fragments[at];
      return fragment !== undefined && inside.has(fragment) ? test : one;
    });
    return { ...energy, tested };
  };
  /** What a tester leaves behind at a step. */
  const afterTest = (energy: Energy, step: Step): Energy => {
    const asked = askedBy(step);
    if (asked?.of !== 'points' || asked.step.tester === null || energy.tested.length === 0) return energy;
    const { volts, discharged } = asked.step.tester;
    const discharge = procedure.multimeters.get(asked.step.with)?.insulation?.discharge ?? null;
    const owed = volts >= provenFrom || discharge === null ? Infinity : discharge;
    return discharged ? energy : withTest(energy, probed(fragments, step), { volts, owed });
  };

  /** What an instrument that carries a current joins is powered as one piece while it stands there. */
  const afterJoining = (energy: Energy, step: Step): Energy => {
    const asked = askedBy(step);
    if (asked?.of !== 'points' || asked.step.carrying?.kind !== 'series') return energy;
    const joined = piecesWith(energy, probed(fragments, step));
    return joined.length === 0 ? energy : filled(energy, [joined]);
  };

  const none = zone.fragments.map(() => uncharged);
  const isTested = procedure.steps.some(
    (step) =>
      'tester' in step && step.tester !== null && probed(fragments, step).some((index) => places.has(index)),
  );
  const start = filled({
    power: powerAtStart,
    hardware: hardwareAtStart,
    rest: zone.running.length === 0 ? [] : wholeRest,
    runs: wholeRuns,
    charges: none,
    arcs: none,
    tested: isTested ? zone.fragments.map(() => untested) : [],
  });
  return {
    start,
    after: (energy, step) => {
      const power = powerAfter(energy.power, step, zone.sources);
      const hardware = hardwareAfter(energy.hardware, step, zone);
      const stays = power === energy.power && hardware === energy.hardware;
      const before = stays ? energy : switched(energy, power, hardware);
      return changesTo('time', step).reduce(
        (after, { seconds }) => waited(after, seconds),
        afterJoining(afterTest(before, step), step),
      );
    },
    piecesWith,
    poweredBy: (energy, some) => suppliesIn(some).filter((supply) => lasts(energy, supply) > 0),
    charge: (energy, some, of) => most(some.map((index) => energy[of][places.get(index) ?? -1] ?? uncharged)),
    tested: (energy, some) =>
      mostTested(some.map((index) => energy.tested[places.get(index) ?? -1] ?? untested)),
    withoutTest: (energy, some) => withTest(energy, some, untested),
    taken: (energy, step, taken) => {
      if (step.verb !== 'prove-dead' || energy.tested.length === 0) return energy;
      if (taken.kind !== 'outcome' || taken.outcome !== 'dead') return energy;
      return withTest(energy, provenAt(fragments, step.at), untested);
    },
  };
}

export function drawsArcs({ volts, isHighVoltage }: Supply): boolean {
  return volts > arcing && !isHighVoltage;
}

/** Less than this many seconds is nothing but the rounding of sums. */
const noTime = 1e-6;

function less(seconds: number, by: number): number {
  const left = seconds - by;
  return left < noTime ? 0 : left;
}

function most(charges: readonly Charge[]): Charge {
  return {
    owed: greatestOf(
      charges.map(({ owed }) => owed),
      0,
    ),
    whole: greatestOf(
      charges.map(({ whole }) => whole),
      0,
    ),
  };
}

function mostTested(tests: readonly Tested[]): Tested {
  const most = (of: keyof Tested): number =>
    greatestOf(
      tests.map((one) => one[of]),
      0,
    );
  return { volts: most('volts'), owed: most('owed') };
}

export function energyKey({ power, hardware, rest, runs, charges, arcs, tested }: Energy): string {
  const held = [...charges, ...arcs].map(({ owed, whole }) => `${owed}/${whole}`);
  const left = tested.map(({ volts, owed }) => `${volts}/${owed}`);
  return [powerKey(power), hardwareKey(hardware), rest.join(), runs.join(), held.join(), left.join()].join(
    '|',
  );
}

/** Whether all that one bench owes another owes too: then it need not be followed. */
export function owesAsMuch(seen: Energy, state: Energy): boolean {
  const atLeast = (one: readonly number[], other: readonly number[]): boolean =>
    one.every((value, at) => value >= (other[at] ?? 0));
  const owed = ({ charges, arcs, tested }: Energy): readonly number[] => [
    ...[...charges, ...arcs].flatMap((charge) => [charge.owed, charge.whole]),
    ...tested.flatMap(({ volts, owed: left }) => [volts, left]),
  ];
  return (
    powerKey(seen.power) === powerKey(state.power) &&
    hardwareKey(seen.hardware) === hardwareKey(state.hardware) &&
    atLeast(seen.rest, state.rest) &&
    atLeast(seen.runs, state.runs) &&
    atLeast(owed(seen), owed(state))
  );
}
