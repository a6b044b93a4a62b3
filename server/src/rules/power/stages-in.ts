import { fragmentsOf } from '../../bench/fragments.ts';
import type { FragmentIndex } from '../../bench/fragments.ts';
import { isStage } from '../../model/part-kinds.ts';
import type { Id, Procedure } from '../../model/procedure.ts';

/** The initiators that stand in these fragments, live or inert, each once. */
export function stagesIn(procedure: Procedure, some: readonly FragmentIndex[]): readonly Id[] {
  const { all } = fragmentsOf(procedure);
  const parts = some.flatMap((index) => all[index]?.parts ?? []);
  return [...new Set(parts)].filter((id) => isStage(procedure.parts.get(id)));
}
