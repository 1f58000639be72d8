import { type Ends, numberInWords } from "../../parts/figures-in-words.ts";

/** A band of turns in whole ones: `120 to 4300`. */
export const turnsInWords = ({ low, high }: Ends): string => `${numberInWords(low, 0)} to ${numberInWords(high, 0)}`;
