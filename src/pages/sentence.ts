/** A sentence from words: first letter large. */
export const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
