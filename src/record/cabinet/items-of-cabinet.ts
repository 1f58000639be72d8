import type { CabinetItem, CabinetItemOf } from "./cabinet-item.ts";

/** The instruments of a cabinet. */
export const instrumentsOf = (items: readonly CabinetItem[]): readonly CabinetItemOf<"instrument">[] =>
  items.filter((item) => item.kind === "instrument");
/** The counted files of a cabinet. */
export const filesOf = (items: readonly CabinetItem[]): readonly CabinetItemOf<"file">[] =>
  items.filter((item) => item.kind === "file");
/** The sequences of a cabinet. */
export const sequencesOf = (items: readonly CabinetItem[]): readonly CabinetItemOf<"sequence">[] =>
  items.filter((item) => item.kind === "sequence");
