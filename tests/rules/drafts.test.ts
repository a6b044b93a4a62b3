import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import type { Finding } from '../../server/src/model/finding.ts';
import { stepNumber } from '../../server/src/model/where.ts';
import { draftText, giveBack, makeSafe } from './drafts/circuits.ts';
import { bench, proof, routines, takenAway, ways } from './drafts/drafts.ts';
import { hidden } from './drafts/hidden.ts';
import { leftOut } from './drafts/left-out.ts';
import { measuring } from './drafts/measuring.ts';
import { moving } from './drafts/moving.ts';
import { withNotices } from './drafts/notices.ts';
import { voltage } from './drafts/voltage.ts';
import type { Draft } from './drafts/drafts.ts';

function findingsOf({ text, parts }: Pick<Draft, 'text' | 'parts'>): readonly Finding[] {
  const files = [{ id: 'draft.procedure.yaml', text: withNotices(text) }];
  if (parts !== undefined) files.push({ id: 'workshop.parts.yaml', text: withNotices(parts) });
  return finish(analyse(snapshotOf(files), 'draft.procedure.yaml').findings('order'));
}

const asWritten = ({ severity, step, rule, subject }: Finding): string =>
  `${severity} ${step === undefined ? '-' : stepNumber(step)} ${rule} ${subject ?? '-'}`;

const chapters = {
  'power taken away': takenAway,
  routines,
  'high voltage': voltage,
  'the bench': bench,
  'codes and proof': proof,
  'where the steps lead': ways,
  'measured by hand': measuring,
  'moved by hand': moving,
  'seen in the network': hidden,
  'left out of every circuit': leftOut,
};

describe.each(Object.entries(chapters))('broken drafts: %s', (_, drafts) => {
  test.each(drafts)('$story', (draft) => {
    expect(findingsOf(draft).map(asWritten).sort()).toEqual([...draft.must].sort());
  });
});

test('the draft that the others are made of has nothing to find', () => {
  const text = draftText(`${makeSafe}  - unplug: K30\n  - plug: K30\n${giveBack}`);
  expect(findingsOf({ text })).toEqual([]);
});

test('a routine that is called three times: its finding names the calls', () => {
  const draft = routines.find(({ must }) => must.includes('error 3.4 short-wait K30'));
  const [finding] = draft === undefined ? [] : findingsOf(draft);
  expect(finding?.message).toContain('called by steps 3, 4, 5.');
});
