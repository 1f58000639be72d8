/** A mark is called by the first word of what a person wrote on it: "lesion at MB1", "Apex". */
export const isCalled = (what: string, word: string): boolean => what.trim().toLowerCase().split(/\W/)[0] === word;

/** What a note names beside the thing itself: roots and canals, in small letters. */
export const namesIn = (what: string): string[] =>
  what
    .toLowerCase()
    .split(/\W+/)
    .slice(1)
    .filter((word) => word !== "" && !["at", "of", "on", "the", "root", "canal"].includes(word));
