import type { CabinetItem, CabinetItemOf } from "./cabinet-item.ts";

/** The instruments of a cabinet. */
export const instrumentsOf = (items: readonly CabinetItem[]): readonly CabinetItemOf<"instrument">[] =>
  items.filter((item) => item.kind === "instrument");
/** The counted files of a cabinet. */
export const filesOf = (items: readonly CabinetItem[]): readonly CabinetItemOf<"file">[] =>
  items.filter((item) => item.kind === "file");
/** The materials of a cabinet. */
export const stockOf = (items: readonly CabinetItem[]): readonly CabinetItemOf<"stock">[] =>
  items.filter((item) => item.kind === "stock");
/** The templates of visits of a cabinet. */
export const templatesOf = (items: readonly CabinetItem[]): readonly CabinetItemOf<"template">[] =>
  items.filter((item) => item.kind === "template");
/** The sequences of a cabinet. */
export const sequencesOf = (items: readonly CabinetItem[]): readonly CabinetItemOf<"sequence">[] =>
  items.filter((item) => item.kind === "sequence");
