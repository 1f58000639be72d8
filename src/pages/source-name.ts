/** `Ng Gulabivala 2011` from the id of a published source; words that name no source stay as they are. */
export const sourceName = (id: string): string =>
  /\d/.test(id)
    ? id
        .replace(/(^|-)([a-z])/g, (_all, gap: string, letter: string) => gap + letter.toUpperCase())
        .replaceAll("-", " ")
    : id;
