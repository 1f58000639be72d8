import { renderToStaticMarkup } from "react-dom/server";
import { expect, it } from "vitest";
import { cabinetBodies } from "../../../../test/samples/cabinet.ts";
import { DraftBook } from "../../record/draft-book.ts";
import { EditPart } from "./editing.tsx";
import { Rows } from "./rows.tsx";

const step = { instrument: "shaper" };
const item = {
  ...({ id: "usual", kind: "sequence", revision: 1 } as const),
  body: { ...cabinetBodies.sequence, steps: [step, step, step] },
};
function drawn(ordered: boolean, readOnly = false): string {
  const book = readOnly ? undefined : new DraftBook({ put: () => new Promise(() => undefined) });
  return renderToStaticMarkup(
    <EditPart part={item} title="Sequence" draft={undefined} book={book}>
      <Rows
        {...{ at: "steps", label: "Steps", add: "Add a step", columns: [], ordered }}
        start={() => step}
        nameOf={(_, index) => `step ${index + 1}`}
      />
    </EditPart>,
  );
}
const buttons = (html: string): string[] =>
  [...html.matchAll(/<button([^>]*)aria-label="([^"]*)"/g)].map(
    ([, more = "", name]) => `${name}${more.includes("disabled") ? " (not now)" : ""}`,
  );

it("moves rows by buttons where their order says something, the first not up and the last not down", () => {
  expect(buttons(drawn(true)).filter((name) => name.startsWith("Move"))).toEqual([
    ...["Move step 1 up (not now)", "Move step 1 down", "Move step 2 up", "Move step 2 down"],
    ...["Move step 3 up", "Move step 3 down (not now)"],
  ]);
  expect(buttons(drawn(false))).toEqual(["Remove step 1", "Remove step 2", "Remove step 3"]);
});

it("offers neither to move nor to take out where it is only looked at", () => {
  expect(buttons(drawn(true, true))).toEqual([]);
});
