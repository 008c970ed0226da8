/**
 * The tables of both kinds of database. Times are milliseconds since 1970.
 */
import type { Generated } from 'kysely';

/** All tables. */
export interface Tables {
  readonly cases: {
    readonly id: string;
    readonly version: number;
    readonly snapshot: string;
    readonly digest: string;
    readonly changed_at: number;
  };
  readonly events: { readonly case_id: string; readonly number: number; readonly body: string };
  readonly personal: { readonly case_id: string; readonly field: string; readonly value: string };
  readonly conversations: {
    readonly key: string;
    readonly version: number;
    readonly body: string;
  };
  readonly received: { readonly key: string; readonly at: number };
  readonly outgoing: {
    readonly id: Generated<number>;
    readonly to: string;
    readonly body: string;
    readonly due_at: number;
    readonly attempts: number;
    readonly taken_until: number | null;
  };
  readonly timers: {
    readonly conversation: string;
    readonly name: string;
    readonly due_at: number;
    readonly taken_until: number | null;
  };
}

/** The two kinds of database. */
export type Kind = 'sqlite' | 'postgres';
