import type { CaseFile } from "../../../../src/record/case-file.ts";
import { diceOf } from "./dice.ts";
import { shortCase } from "./short-case.ts";
import { storyOf } from "./story.ts";

/** How many teeth the logbook of the demo holds. */
const casesInLogbook = 240;
const seed = 5;

/** The short cases of the logbook in the order in which they presented; each has its own dice, so that one can change alone. */
export function logbook(): CaseFile[] {
  return Array.from({ length: casesInLogbook }, (_, at) =>
    shortCase(storyOf(at + 1, casesInLogbook, diceOf(seed + 7919 * (at + 1)))),
  );
}
