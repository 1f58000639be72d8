/** The same number; a zero loses its sign, which JSON does not keep. */
export const withoutSignOfZero = (value: number): number => value + 0;
