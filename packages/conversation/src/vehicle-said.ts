import type { VehicleProof } from '@keyturn/core';

/** What a text that is the code of a vehicle's case says of the part. */
export type VehicleSaid =
  | {
      readonly type: 'case';
      readonly code: string;
      /** When the vehicle was measured last, ISO 8601. */
      readonly measured: string;
      /** What the vehicle is rated for, in volts, where that is known. */
      readonly nominal: number | undefined;
      readonly proof: VehicleProof;
    }
  /** Its letters are wrong, a newer version wrote it, or it is of another kind of case. */
  | { readonly type: 'damaged' | 'too-new' | 'other-flow' };
