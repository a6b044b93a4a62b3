/* Which rules the oracle speaks of, and which it cannot. */

/** Found by `oracle`, with the shortest path where one belongs to it. */
export const ORACLE_RULES: readonly string[] = [
  'live-touch',
  'short-wait',
  'not-proven-dead',
  'proof-too-early',
  'proof-elsewhere',
  'unguarded-source',
  'ignition-first',
  'half-open',
  'unfed-circuit',
  'unfed-monitor',
  'in-no-circuit',
  'unused',
  'wait-without-effect',
  'impossible',
  'uncovered',
  'no-difference',
  'unreachable',
  'endless',
  'repeats',
  'not-restored',
  'leaves-too-much',
  'codes-not-recorded',
  'codes-not-cleared',
  'repair-not-verified',
  'loop-not-verified',
  'hands-in-text',
  'touch-not-said',
  'test-current',
  'load-bridged',
  'load-like-a-bar',
  'bar-in-the-way',
  'test-current-unknown',
  'unlikely-value',
  'missing-notice',
  'meter-across-live',
  'moved-with-stage',
  'powered-measurement',
  'insulation-on-electronics',
  'work-under-power',
  'monitor-in-the-way',
  'no-wait',
  'zero-wait',
  'inert-stage',
  'not-preferred',
  'outside-validity',
  'dangling-node',
  'unfit-meter',
];

/** Found by `windowRules`. */
export const WINDOW_RULES = [
  'window-differs',
  'window-undefined',
  'window-needs-value',
  'expect-excludes-good',
  'load-out-of-window',
  'meter-too-coarse',
  'expect-admits-fault',
  'nothing-flows',
] as const;

/** Found by nobody here, with the reason. */
export const EXCUSED: Readonly<Record<string, string>> = {
  'example-values':
    'words of a text and nothing that a bench knows: tests/rules/example-values.test.ts looks for them',
  'moved-unseen':
    'brute force has no circuit with one thing open by itself: tests/rules/moved-unseen.test.ts works examples out by hand',
  'too-many-states': 'a bound of the engine on its own exploration: the oracle explores everything',
};

/** Found by `ofWaivers`. */
export const WAIVER_RULES = ['unused-waiver', 'waiver-refused'] as const;
