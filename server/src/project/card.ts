import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { Work } from '../model/work.ts';
import { buildCard } from '../card/build.ts';
import type { CardModel, CardReading } from '../card/model.ts';
import { formatOnDisplay, formatSpan } from '../quantity/quantity.ts';
import { stepShowing } from '../readings/accepted.ts';
import type { Reading } from '../readings/reading.ts';
import { elseIsWithin } from '../readings/says-within.ts';
import { isStandingError } from '../model/finding.ts';
import type { Finding } from '../model/finding.ts';
import type { Step } from '../model/procedure.ts';
import { grouped } from '../model/remembered.ts';
import type { Analysis } from './analysis.ts';
import { nameOf, wayTo } from './file-names.ts';
import { quantityFacts } from '../model/quantity-kinds.ts';

export interface CardOptions {
  /** As it is to be printed. */
  readonly date: string;
  /** Of the program. */
  readonly version: string;
  /** Print it although it is not valid, marked on every page. */
  readonly draft: boolean;
}

export type Card = { readonly card: CardModel } | Refused;

export interface Refused {
  /** The errors that stand in the way. */
  readonly refused: readonly Finding[];
  /** Ohmwright itself failed: there is no draft either, for it would show a check that was not made. */
  readonly isFailure: boolean;
}

/** The card of a procedure; refused with the findings while there are errors, unless it is a draft. */
export function* card(analysis: Analysis, options: CardOptions): Work<Card> {
  const findings = yield* analysis.findings('order');
  const errors = findings.filter(isStandingError);
  const { value: order, complete } = yield* analysis.order();
  if (analysis.failure() !== null) return { refused: errors, isFailure: true };
  if (!options.draft && (errors.length > 0 || !complete)) return { refused: errors, isFailure: false };
  const { value: readings } = yield* analysis.windows();
  const { steps, ...procedure } = analysis.procedure().value;
  const left = grouped(order.left.map((one) => [one.index, one] as const));
  const model = buildCard({
    procedure: { ...procedure, steps },
    graph: analysis.graph(),
    readings: readings.readings.flatMap((reading) => cardReading(reading, steps[reading.index])),
    proofs: analysis.proofs().map((proof) => ({
      ...proof,
      parts: order.joined.find(({ index }) => index === proof.index)?.parts ?? [],
    })),
    codes: readings.codes,
    left: steps.flatMap((step, index) =>
      step.verb === 'stop' ? [{ index, left: left.get(index) ?? [] }] : [],
    ),
    findings,
    owed: order.owed,
    stamp: {
      sha256: stampOf(analysis),
      version: options.version,
      date: options.date,
      file: nameOf(analysis.file),
    },
    draft: options.draft,
    isUnfinished: !complete,
  });
  return { card: model };
}

/** SHA-256 of the file, and behind it of the parts files that it uses, in the order of their paths. */
function stampOf(analysis: Analysis): string {
  const own = analysis.snapshot.files.get(analysis.file)?.text ?? '';
  const parts = analysis.used().toSorted((a, b) => (wayTo(a.id) < wayTo(b.id) ? -1 : 1));
  const hash = sha256.create();
  for (const text of [own, ...parts.map((file) => file.text)]) hash.update(utf8ToBytes(text));
  return bytesToHex(hash.digest());
}

function cardReading(reading: Reading, step: Step | undefined): readonly CardReading[] {
  if (step === undefined || reading.accepted === null) return [];
  const nominals = new Set(
    reading.good.map((good) => nominalOf(good.indication?.value?.nominal ?? null, reading)),
  );
  const [nominal = null] = nominals;
  const isReading = 'expect' in step;
  return [
    {
      index: reading.index,
      of: reading.of,
      quantity: reading.quantity,
      printed: reading.printed,
      from: isReading && step.expect !== null ? 'expect' : 'computed',
      nominal: nominals.size === 1 && reading.byEntry.length === 0 ? nominal : null,
      isOuter: !reading.exact,
      elseIsWithin: isReading && elseIsWithin(step, reading),
      rows: reading.byEntry.map(({ bands, printed }) => ({
        entered: bands.map(({ entry, entered }) => ({ entry, range: formatSpan(entered, 'temperature') })),
        printed,
      })),
    },
  ];
}

/** To the last digit of the display, as the window beside it. */
function nominalOf(amount: number | null, { instrument, quantity, accepted }: Reading): string | null {
  if (amount === null || accepted === null) return null;
  return formatOnDisplay(amount, stepShowing(instrument, accepted), quantityFacts[quantity].dimension);
}
