/** Words as they begin a line: first letter large. */
export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** Words as they go on in a line: first letter small. */
export const lowered = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1);
