import { useField } from "../../../parts/fields/editing.tsx";
import type { Mishap } from "./with-kind.ts";

/** The mishap that the page edits, and how several of its fields are written in one gesture. */
export interface MishapInHand {
  readonly mishap: Mishap;
  readonly readOnly: boolean;
  readonly write: (next: Mishap, says: string) => void;
}

/** See {@link MishapInHand}; `about` names what is written, as `Usual steps`. */
export function useMishap(about: string): MishapInHand {
  const field = useField("", about);
  return {
    mishap: field.value as Mishap,
    readOnly: field.readOnly,
    write: (next, says) => field.write(next, says, "now"),
  };
}
