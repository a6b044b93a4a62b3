import { liveTouch } from './touch/live-touch.ts';
import { shortWait } from './touch/short-wait.ts';
import { notProvenDead } from './touch/not-proven-dead.ts';
import { proofTooEarly } from './touch/proof-too-early.ts';
import { proofElsewhere } from './high-voltage/proof-elsewhere.ts';
import { unfitMeter } from './high-voltage/unfit-meter.ts';
import { unguardedSource } from './high-voltage/unguarded-source.ts';
import { halfOpen } from './touch/half-open.ts';
import { ignitionFirst } from './touch/ignition-first.ts';
import { unfedCircuit } from './attributes/unfed-circuit.ts';
import { unfedMonitor } from './attributes/unfed-monitor.ts';
import { noWait } from './attributes/no-wait.ts';
import { danglingNode } from './attributes/dangling-node.ts';
import { inNoCircuit } from './attributes/in-no-circuit.ts';
import { touchNotSaid } from './hands/touch-not-said.ts';
import { handsInText } from './hands/hands-in-text.ts';
import { waitWithoutEffect } from './touch/wait-without-effect.ts';
import { impossible } from './flow/impossible.ts';
import { uncovered } from './flow/uncovered.ts';
import { noDifference } from './flow/no-difference.ts';
import { unreachable } from './flow/unreachable.ts';
import { endless } from './flow/endless.ts';
import { repeats } from './flow/repeats.ts';
import { notRestored } from './ends/not-restored.ts';
import { codesNotRecorded } from './ends/codes-not-recorded.ts';
import { codesNotCleared } from './ends/codes-not-cleared.ts';
import { repairNotVerified } from './ends/repair-not-verified.ts';
import { loopNotVerified } from './ends/loop-not-verified.ts';
import { loadBridged } from './windows/load-bridged.ts';
import { loadOutOfWindow } from './windows/load-out-of-window.ts';
import { windowDiffers } from './windows/window-differs.ts';
import { windowNeedsValue } from './windows/window-needs-value.ts';
import { windowUndefined } from './windows/window-undefined.ts';
import { expectExcludesGood } from './windows/expect-excludes-good.ts';
import { inertStage } from './attributes/inert-stage.ts';
import { leavesTooMuch } from './ends/leaves-too-much.ts';
import { zeroWait } from './attributes/zero-wait.ts';
import { movedWithStage } from './power/moved-with-stage.ts';
import { insulationOnElectronics } from './power/insulation-on-electronics.ts';
import { meterAcrossLive } from './power/meter-across-live.ts';
import { monitorInTheWay } from './windows/monitor-in-the-way.ts';
import { poweredMeasurement } from './power/powered-measurement.ts';
import { workUnderPower } from './power/work-under-power.ts';
import { barInTheWay } from './windows/bar-in-the-way.ts';
import { loadLikeABar } from './windows/load-like-a-bar.ts';
import { testCurrentUnknown } from './attributes/test-current-unknown.ts';
import { unlikelyValue } from './attributes/unlikely-value.ts';
import { movedUnseen } from './windows/moved-unseen.ts';
import { nothingFlows } from './windows/nothing-flows.ts';
import { missingNotice } from './touch/missing-notice.ts';
import { testCurrent } from './attributes/test-current.ts';
import { unused } from './attributes/unused.ts';
import { unusedWaiver } from './waivers/unused-waiver.ts';
import { waiverRefused } from './waivers/waiver-refused.ts';
import { notPreferred } from './attributes/not-preferred.ts';
import { outsideValidity } from './attributes/outside-validity.ts';
import { exampleValues } from './attributes/example-values.ts';
import { expectAdmitsFault } from './windows/expect-admits-fault.ts';
import { meterTooCoarse } from './windows/meter-too-coarse.ts';
import { tooManyStates } from './flow/too-many-states.ts';
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
