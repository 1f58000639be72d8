import type { BodyOf } from "../../../../../record/parts.ts";

type History = BodyOf<"medicalHistory">;
type Flag = History["flags"][number]["flag"];

/** A history with one more answer: a yes is a flag, a no is told as asked for and denied. What stands of the same is replaced. */
export function withAnswer(history: History, flag: Flag, isSo: boolean): History {
  const flags = history.flags.filter((one) => one.flag !== flag);
  const denied = (history.denied ?? []).filter((one) => one !== flag);
  const standing = history.flags.find((one) => one.flag === flag);
  return isSo
    ? { ...history, nothingToNote: false, flags: [...flags, standing ?? { flag }], denied }
    : { ...history, flags, denied: [...denied, flag] };
}
