/**
 * The JSON Schema (draft 2020-12) of a flow file, generated from the zod schema. Published in the
 * package as `schema/flow.schema.json`, so that an editor completes and checks a flow.
 */
import { z } from 'zod';
import { flowFile } from './flow-file.ts';

/** JSON Schema of one flow file. */
export const flowSchema: Readonly<Record<string, unknown>> = z.toJSONSchema(flowFile, {
  target: 'draft-2020-12',
  io: 'input',
});
