import { useState } from "react";
import type { Typed } from "./read-typed.ts";

/** What is being entered: the fields as typed, and whether what is missing is said yet. */
export interface Entry {
  readonly typed: Typed;
  /** Each fault by its field. */
  readonly faults: Readonly<Record<string, string>>;
  /** Says what is missing as well, once the person wanted to record. */
  readonly saysAll: boolean;
  readonly type: (at: string, text: string) => void;
}

/** The fields of an entry, all empty at first. */
export function useTyped(start: () => Typed = () => ({})) {
  const [typed, setTyped] = useState<Typed>(start);
  const [saysAll, setSaysAll] = useState(false);
  return {
    ...{ typed, saysAll },
    /** Lays values over what is typed. */
    lay: (over: Typed) => setTyped((now) => ({ ...now, ...over })),
    type: (at: string, text: string) => setTyped((now) => ({ ...now, [at]: text })),
    sayAll: () => setSaysAll(true),
    empty: (to: Typed) => {
      setTyped(to);
      setSaysAll(false);
    },
  };
}

/** What is chosen and typed in a dialog, and how it is recorded once nothing is missing. */
export function useChoosing(start?: () => Typed) {
  const [chosen, setChosen] = useState<string>();
  const [missed, setMissed] = useState(0);
  const fields = useTyped(start);
  const unlessMissing = (faults: Entry["faults"], act: () => void): void => {
    if (chosen === undefined) return;
    if (Object.keys(faults).length === 0) act();
    else {
      fields.sayAll();
      setMissed((count) => count + 1);
    }
  };
  return { chosen, setChosen, missed, fields, typed: fields.typed, unlessMissing };
}

/** What is said at a field now: a fault of what stands there at once, of an empty field only once it is asked for. */
export function faultShown({ typed, faults, saysAll }: Omit<Entry, "type">, at: string): string | undefined {
  const isEmpty = (typed[at] ?? "") === "";
  return isEmpty && !saysAll ? undefined : faults[at];
}
