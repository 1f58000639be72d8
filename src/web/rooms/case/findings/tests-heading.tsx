import type { BodyOf } from "../../../../record/parts.ts";
import { testsNotDone } from "../../../../record/words/test-words.ts";
import { useField } from "../../../parts/fields/editing.tsx";

/** Says over the sheet how many of its tests were not done. */
export function TestsHeading() {
  const { teeth } = useField("", "Tests").value as BodyOf<"findings">;
  const open = testsNotDone(teeth);
  return (
    <h2>
      Tests <span className="answers-open">{open === 0 ? "all done" : `${open} not done`}</span>
    </h2>
  );
}
