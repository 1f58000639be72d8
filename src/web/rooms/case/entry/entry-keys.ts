/** Which canal and which sequence or instrument stand chosen, by their places in the lists. */
export interface EntryPlace {
  readonly canal: number;
  readonly choice: number;
}

/** How long the lists are; sequences stand before single instruments among the choices. */
export interface EntryLists {
  readonly canals: number;
  readonly sequences: number;
  readonly choices: number;
}

/** What a key asks for: another place, or to record what stands chosen. */
export type EntryAct = { readonly to: EntryPlace } | "record";

/**
 * What a key does in the entry: arrows left and right choose the canal, up and down the sequence or instrument, a digit
 * its sequence, Enter records. Gives nothing for a key that is not the entry's, or that leads nowhere.
 */
export function entryAct(key: string, at: EntryPlace, lists: EntryLists): EntryAct | undefined {
  if (key === "Enter") return lists.choices > 0 ? "record" : undefined;
  const step = steps[key];
  if (step !== undefined) return moved(at, step, lists);
  const choice = /^[1-9]$/.test(key) ? Number(key) - 1 : lists.sequences;
  return choice < lists.sequences ? { to: { ...at, choice } } : undefined;
}

const steps: Readonly<Record<string, EntryPlace>> = {
  ArrowLeft: { canal: -1, choice: 0 },
  ArrowRight: { canal: 1, choice: 0 },
  ArrowUp: { canal: 0, choice: -1 },
  ArrowDown: { canal: 0, choice: 1 },
};

function moved(at: EntryPlace, step: EntryPlace, lists: EntryLists): EntryAct {
  return {
    to: {
      canal: within(at.canal + step.canal, lists.canals),
      choice: within(at.choice + step.choice, lists.choices),
    },
  };
}

/** A place inside a list; the first of an empty one. */
const within = (place: number, length: number): number => Math.max(0, Math.min(place, length - 1));

/** Where keys lead that were pressed before the entry was drawn, and whether they ended in recording. */
export function afterKeys(
  keys: readonly string[],
  from: EntryPlace,
  lists: EntryLists,
): { readonly at: EntryPlace; readonly records: boolean } {
  let at = from;
  for (const key of keys) {
    const act = entryAct(key, at, lists);
    if (act === "record") return { at, records: true };
    at = act?.to ?? at;
  }
  return { at, records: false };
}
