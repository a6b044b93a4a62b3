import { liveTouch } from './live-touch.ts';
import { shortWait } from './short-wait.ts';
import { notProvenDead } from './not-proven-dead.ts';
import { proofTooEarly } from './proof-too-early.ts';
import { proofElsewhere } from './proof-elsewhere.ts';
import { unfitMeter } from './unfit-meter.ts';
import { unguardedSource } from './unguarded-source.ts';
import { halfOpen } from './half-open.ts';
import { ignitionFirst } from './ignition-first.ts';
import { unfedCircuit } from './unfed-circuit.ts';
import { unfedMonitor } from './unfed-monitor.ts';
import { noWait } from './no-wait.ts';
import { danglingNode } from './dangling-node.ts';
import { inNoCircuit } from './in-no-circuit.ts';
import { touchNotSaid } from './touch-not-said.ts';
import { handsInText } from './hands-in-text.ts';
import { waitWithoutEffect } from './wait-without-effect.ts';
import { impossible } from './impossible.ts';
import { uncovered } from './uncovered.ts';
import { noDifference } from './no-difference.ts';
import { unreachable } from './unreachable.ts';
import { endless } from './endless.ts';
import { repeats } from './repeats.ts';
import { notRestored } from './not-restored.ts';
import { codesNotRecorded } from './codes-not-recorded.ts';
import { codesNotCleared } from './codes-not-cleared.ts';
import { repairNotVerified } from './repair-not-verified.ts';
import { loopNotVerified } from './loop-not-verified.ts';
import { loadBridged } from './load-bridged.ts';
import { loadOutOfWindow } from './load-out-of-window.ts';
import { windowDiffers } from './window-differs.ts';
import { windowNeedsValue } from './window-needs-value.ts';
import { windowUndefined } from './window-undefined.ts';
import { expectExcludesGood } from './expect-excludes-good.ts';
import { inertStage } from './inert-stage.ts';
import { leavesTooMuch } from './leaves-too-much.ts';
import { zeroWait } from './zero-wait.ts';
import { movedWithStage } from './moved-with-stage.ts';
import { insulationOnElectronics } from './insulation-on-electronics.ts';
import { meterAcrossLive } from './meter-across-live.ts';
import { monitorInTheWay } from './monitor-in-the-way.ts';
import { poweredMeasurement } from './powered-measurement.ts';
import { workUnderPower } from './work-under-power.ts';
import { barInTheWay } from './bar-in-the-way.ts';
import { loadLikeABar } from './load-like-a-bar.ts';
import { testCurrentUnknown } from './test-current-unknown.ts';
import { unlikelyValue } from './unlikely-value.ts';
import { movedUnseen } from './moved-unseen.ts';
import { nothingFlows } from './nothing-flows.ts';
import { missingNotice } from './missing-notice.ts';
import { testCurrent } from './test-current.ts';
import { unused } from './unused.ts';
import { unusedWaiver } from './unused-waiver.ts';
import { waiverRefused } from './waiver-refused.ts';
import { notPreferred } from './not-preferred.ts';
import { outsideValidity } from './outside-validity.ts';
import { exampleValues } from './example-values.ts';
import { expectAdmitsFault } from './expect-admits-fault.ts';
import { meterTooCoarse } from './meter-too-coarse.ts';
import { tooManyStates } from './too-many-states.ts';
import type { Rule } from './rule.ts';

/** Every rule, in the order in which they are listed for people. */
export const rules: readonly Rule[] = [
  liveTouch,
  shortWait,
  notProvenDead,
  halfOpen,
  ignitionFirst,
  unfedCircuit,
  unfedMonitor,
  noWait,
  unguardedSource,
  proofTooEarly,
  proofElsewhere,
  unfitMeter,
  inNoCircuit,
  unused,
  danglingNode,
  meterAcrossLive,
  movedWithStage,
  insulationOnElectronics,
  poweredMeasurement,
  workUnderPower,
  missingNotice,
  testCurrent,
  testCurrentUnknown,
  unlikelyValue,
  exampleValues,
  inertStage,
  zeroWait,
  touchNotSaid,
  handsInText,
  waitWithoutEffect,
  impossible,
  uncovered,
  noDifference,
  unreachable,
  endless,
  repeats,
  notRestored,
  leavesTooMuch,
  codesNotRecorded,
  codesNotCleared,
  repairNotVerified,
  loopNotVerified,
  monitorInTheWay,
  barInTheWay,
  loadLikeABar,
  loadBridged,
  loadOutOfWindow,
  windowDiffers,
  windowUndefined,
  windowNeedsValue,
  expectExcludesGood,
  expectAdmitsFault,
  movedUnseen,
  nothingFlows,
  meterTooCoarse,
  unusedWaiver,
  waiverRefused,
  notPreferred,
  outsideValidity,
  tooManyStates,
];
