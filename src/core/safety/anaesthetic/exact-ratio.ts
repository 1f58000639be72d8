/** A ratio of whole numbers, kept whole: a floor of it is never one short. */
export interface ExactRatio {
  readonly over: bigint;
  /** Above 0. */
  readonly under: bigint;
}

/** The ratio of two whole numbers; `under` is above 0. */
export const exactRatio = (over: number, under: number): ExactRatio => ({ over: BigInt(over), under: BigInt(under) });

/** The sum of ratios; 0 of none. */
export const sumOfRatios = (ratios: readonly ExactRatio[]): ExactRatio =>
  ratios.reduce((sum, one) => ({ over: sum.over * one.under + one.over * sum.under, under: sum.under * one.under }), {
    over: 0n,
    under: 1n,
  });

/** The whole part of a ratio; 0 below nothing. */
export const wholePart = ({ over, under }: ExactRatio): number => (over <= 0n ? 0 : Number(over / under));

/** A ratio as a number. */
export const numberOf = ({ over, under }: ExactRatio): number => Number(over) / Number(under);

/** Whether one ratio is less than another. */
export const isLess = (one: ExactRatio, other: ExactRatio): boolean => one.over * other.under < other.over * one.under;
