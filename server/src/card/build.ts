import { endingOf } from '../paths/graph.ts';
import { withPaths } from '../bench/told-path.ts';
import { messageWithPath } from '../paths/trace.ts';
import { isShown, isStandingError } from '../model/finding.ts';
import type { Finding } from '../model/finding.ts';
import { stepNumber } from '../model/where.ts';
import type { Procedure } from '../model/procedure.ts';
import { assumptionsOf } from './assumptions.ts';
import { annexOf } from './by-entry.ts';
import { drawLoops } from './drawn.ts';
import type { CardInput, CardModel, CardStamp, Fact, Remark, Words } from './model.ts';
import { needsOf } from './needs.ts';
import { networkOf } from './network.ts';
import { hazardPanel } from './notices.ts';
import { proofExplanation } from './proof.ts';
import type { DraftMark } from './notices.ts';
import { sectionsOf } from './steps.ts';
import { closed } from './words.ts';

/** The card of a procedure: all that is printed, in the order in which it is printed. */
export function buildCard(input: CardInput): CardModel {
  const { procedure } = input;
  const draft = input.draft ? draftMarkOf(input) : null;
  const annex = annexOf(procedure, input.readings);
  return {
    language: 'en',
    draft: draft === null ? null : draftMark[draft],
    form: 'Test procedure card',
    title: procedure.title,
    facts: headFacts(procedure),
    hazard: hazardPanel(procedure, draft),
    job: { heading: 'This job', blanks: ['Vehicle id', 'Job number', 'Name', 'Date'] },
    needs: { heading: 'What is needed', groups: needsOf(procedure) },
    drawings: {
      heading: procedure.loops.size === 1 ? 'The loop' : 'The loops',
      explanations: [
        'Each loop is drawn from the instrument (top) outward. The monitor side of a connector is its upper half, nearer the instrument; the end side is its lower half. Numbers are pins. Unplugging a connector opens every loop through it.',
      ],
      loops: drawLoops(procedure),
    },
    network: networkOf(procedure),
    before: {
      heading: 'Before step 1',
      lines: [
        [
          'Ignition off, every source connected, every connector plugged, no load fitted, codes not yet cleared. If it is not so, stop.',
        ],
      ],
    },
    steps: {
      heading: 'Steps',
      explanations: [
        'Do one step, tick it, then read the next. Do nothing that is not on the card. If something is not as the card says, stop.',
        ...proofExplanation(procedure),
        ...(input.codes.every(({ codes }) => codes.length === 0)
          ? []
          : [
              'Codes that a step says to expect come from this work. By themselves they do not mean a new fault.',
            ]),
      ],
      done: 'Done',
      codes: 'Codes to expect',
      columns: ['Reading', 'Should show', 'It showed'],
      sections: sectionsOf(input, annex),
    },
    end: reachesEnd(input)
      ? {
          heading: 'End of the card',
          lines: [
            [
              'Every source is connected, every connector is plugged, no load is fitted, codes are cleared. If it is not so, the work is not done.',
            ],
          ],
        }
      : null,
    assumptions: {
      heading: draft === null ? 'Checked with these assumptions' : 'Assumptions',
      introduction:
        'Windows and waits hold for these values only. Where the vehicle or the instrument differs, the card does not apply.',
      facts: assumptionsOf(input),
    },
    remarks: {
      heading: 'Open remarks',
      introduction: remarksIntroduction(input),
      items: remarksOf(input.findings),
    },
    annex:
      annex.size === 0
        ? null
        : { heading: 'Annex: windows by what you measured', tables: [...annex.values()] },
    stamp: stampOf(procedure, input.stamp),
  };
}

function headFacts(procedure: Procedure): readonly Fact[] {
  const facts = [
    { label: 'Applies to', text: procedure.appliesTo },
    { label: 'Revision', text: procedure.revision },
    { label: 'Purpose', text: procedure.purpose },
  ];
  return facts.map(({ label, text }) => ({ label, words: [text === null ? 'not stated' : { said: text }] }));
}

function reachesEnd({ procedure, graph }: CardInput): boolean {
  return graph.edges.some((edges, index) =>
    edges.some((edge) => {
      const step = procedure.steps[index];
      return step !== undefined && edge.to === 'end' && endingOf(step, edge) === 'finished';
    }),
  );
}

function draftMarkOf({ procedure, findings, isUnfinished }: CardInput): DraftMark {
  if (procedure.isExample) return 'example';
  if (isUnfinished) return 'unfinished';
  return findings.some(isStandingError) ? 'errors' : 'asked';
}

/** For every page. */
const draftMark: Readonly<Record<DraftMark, string>> = {
  example: 'DRAFT - DO NOT USE: EXAMPLE VALUES',
  unfinished: 'DRAFT - DO NOT USE: not everything was checked',
  errors: 'DRAFT - DO NOT USE: errors found',
  asked: 'DRAFT - DO NOT USE: not released',
};

function remarksIntroduction({ findings, isUnfinished }: CardInput): string {
  if (isUnfinished) return 'The check met a limit, and not everything was checked. What it found so far:';
  return findings.length === 0 ? 'None.' : 'What the check found and the writer left as it is:';
}

function remarksOf(findings: readonly Finding[]): readonly Remark[] {
  return Array.from(withPaths(findings.filter(isShown)), (finding) => ({
    severity: severityText[finding.severity],
    step: finding.step === undefined ? null : stepNumber(finding.step),
    message: waivedInWords(finding) + messageWithPath(finding),
    rule: finding.rule,
  }));
}

/** What the writer takes upon himself, with his reason. */
function waivedInWords({ waived }: Finding): string {
  return waived === undefined ? '' : `Waived: ${closed(waived.reason)} `;
}

const severityText = { error: 'Error', warning: 'Warning', information: 'Information' } as const;

/** Enough of a SHA-256 to tell cards apart by eye. */
const shortLength = 12;

/** The foot of a narrow page has two lines: the date and the stamp stay on one. A bar would let a line break behind it. */
const noBreak = '\u00a0';

function stampOf(procedure: Procedure, stamp: CardStamp): CardModel['stamp'] {
  const short = stamp.sha256.slice(0, shortLength);
  const revision: Words = procedure.revision === null ? [] : [', revision ', { said: procedure.revision }];
  return {
    heading: 'Stamp',
    facts: [
      { label: 'File', words: [{ said: stamp.file }] },
      { label: 'Date', words: [stamp.date] },
      { label: 'Made with', words: [`Ohmwright ${stamp.version}`] },
      { label: 'SHA-256, short', words: [{ strong: short }] },
      { label: 'SHA-256, full', words: [stamp.sha256] },
    ],
    running: [
      { said: shortened(procedure.title) },
      ...revision,
      `, ${`${stamp.date}, ${short}`.replaceAll(' ', noBreak)}`,
    ],
  };
}

function shortened(title: string): string {
  const characters = Array.from(title.replaceAll(/\s+/g, ' '));
  return characters.length <= 60 ? characters.join('') : `${characters.slice(0, 59).join('').trimEnd()}…`;
}
