/**
 * How accurate a meter is: ±(`percent` of the reading + `digits` of its display), the form of
 * manufacturers' accuracy statements.
 *
 * `counts` is how many steps a range of the display has: 2000 shows 1.999, 19.99 and 199.9. Where
 * it is absent the meter is taken for one of 2000 counts, unless a reading was typed more finely.
 * `percent` and `digits` are 0 or more, `counts` is above 0.
 */
export type MeterAccuracy = {
  readonly percent: number;
  readonly digits: number;
  readonly counts?: number | undefined;
};
