import type { Id, Probed, Procedure, Step } from '../../server/src/model/procedure.ts';
import { held } from './touch.ts';

/* Commands in the texts beside a step: a piece of a sentence that begins with a word of doing and names its object. */

const handling =
  'measure probe touch wiggle shake bend tap pull push press lift loosen seat clean cut remove replace swap ' +
  'connect disconnect reconnect detach unclip undo release bridge apply';

const wordsFor = {
  connectors: `unlock unplug plug fit move ${handling}`,
  parts: `unlock unplug plug fit move ${handling}`,
  monitors: `unlock unplug plug fit move ${handling}`,
  sources: 'unlock unplug plug connect disconnect reconnect',
  loads:
    'unlock unplug plug fit move remove replace swap connect disconnect reconnect ' +
    'pull push press lift loosen seat clean cut',
} as const;

const before =
  'you|must|should|shall|please|now|then|first|next|again|also|always|just|only|carefully|gently|finally';
const description = 'is|are|was|were|has|had|sits|stands|stays|belongs|carries|may|must|can|should|needs';

function commandsTo(id: Id, words: string, text: string): boolean {
  return text.split(/[.,;:!?()\n]| and | or | then /i).some((piece) => {
    const rest = piece.trim().replace(new RegExp(`^(?:(?:${before})\\s+)+`, 'i'), '');
    const said = new RegExp(
      `^(?:${words.replaceAll(' ', '|')})\\s(?:.*\\s)?${id}(?![A-Za-z0-9-])(.*)$`,
      'i',
    ).exec(rest);
    // Names are told apart by case, words are not.
    if (said === null || !new RegExp(`\\s${id}(?![A-Za-z0-9-])`).test(rest)) return false;
    return !new RegExp(`^\\s+(?:${description})\\b`, 'i').test(said[1] ?? '');
  });
}

const placesOf = (at: Probed): Id[] =>
  'connector' in at ? [at.connector] : at.map((each) => each.connector);

/** What the step acts on itself. */
function actedOn(step: Step): Id[] {
  const place = step.verb === 'fit' ? step.at : step.verb === 'move' ? step.to : null;
  return [
    ...('source' in step ? [step.source] : []),
    ...('connector' in step && step.connector !== null ? [step.connector] : []),
    ...(step.verb === 'prove-dead' ? placesOf(step.at) : []),
    ...('load' in step ? [step.load] : []),
    ...(step.verb === 'replace' ? step.what.flatMap(({ members }) => members) : []),
    ...(step.verb === 'do' || step.verb === 'inspect' ? held(step.at) : []),
    ...(step.verb === 'wiggle' ? step.moved.map(({ id }) => id) : []),
    ...('across' in step ? step.across.flatMap((probe) => ('node' in probe ? [] : [probe.connector])) : []),
    ...(place === null ? [] : [place.connector]),
  ];
}

/** Ids that a text beside the step tells the reader to do something to. */
export function commanded(procedure: Procedure, step: Step): Id[] {
  const texts = [step.note, step.why, step.notice, step.caution, step.warning, step.danger, step.see];
  if (step.verb === 'stop') texts.push(step.text);
  const own = actedOn(step);
  const kinds = ['connectors', 'parts', 'monitors', 'sources', 'loads'] as const;
  return kinds.flatMap((kind) =>
    [...procedure[kind].keys()].filter(
      (id) =>
        !own.includes(id) && texts.some((text) => text !== undefined && commandsTo(id, wordsFor[kind], text)),
    ),
  );
}
