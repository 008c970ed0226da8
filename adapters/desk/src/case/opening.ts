import type { Engine } from '../engine/engine.ts';
import type { DeskCase } from './desk-case.ts';

/** Opens a case at the desk. `practice` is the invented caller, where there is one. */
export async function openDeskCase(
  engine: Engine,
  given: { readonly at: string; readonly practice: string | undefined },
): Promise<DeskCase> {
  const { at, practice = null } = given;
  const id = crypto.randomUUID();
  const { sitting } = await engine.open({ id, at, context: { role: 'dispatcher' } });
  return { id, openedAt: at, touchedAt: at, sitting, sent: null, practice, version: 1 };
}
