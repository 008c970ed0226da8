/** The terms of a shop by which the bands of a date may end, by the names that a flow uses. */
export const saleTerms = ['policy.return-window', 'policy.warranty'] as const;

/** A term of a shop, counted from the day of the sale. */
export type SaleTerm = (typeof saleTerms)[number];
