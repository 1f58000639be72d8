import type { BodyOf } from "../../../../record/parts.ts";
import { testNames } from "../../../../record/words/test-words.ts";
import { wordsOfName } from "../../../words/words-of-name.ts";

/** A place of a sheet as one would say it: `Tooth 25, cold, lingers seconds`. */
export function placeInFindings(path: string, { teeth }: BodyOf<"findings">): string {
  const [list = "", index = "", ...rest] = path.split(".");
  const [of, names] =
    list === "teeth"
      ? [`Tooth ${teeth[Number(index)]?.tooth ?? Number(index) + 1}`, rest]
      : ["", [list, index, ...rest]];
  return [of, ...names.map(named)]
    .filter((word) => word !== "")
    .join(", ")
    .replace(/^./, (letter) => letter.toUpperCase());
}

function named(name: string): string {
  const known: Readonly<Record<string, string>> = testNames;
  return (known[name] ?? wordsOfName(name)).toLowerCase();
}
