import { expect, it } from "vitest";
import { part } from "../../test/sample-case.ts";
import { decidedOn } from "./decided-on.ts";

const [a, b, c] = ["a", "b", "c"].map((letter) => letter.repeat(64));
const plan = (id: string, more: object) =>
  part("plan", id, { madeOn: "2024-01-01", options: [], chosen: "treat", because: "", risksNamed: [], ...more });
const diagnosis = (suggestion: string | undefined) =>
  part("diagnosis", "diagnosis-1", {
    ...{ madeOn: "2024-01-01", taxonomy: "consensus2009", pulpal: "normalPulp", apical: "notDetermined", because: "" },
    ...(suggestion === undefined ? {} : { suggestion }),
  });

it("names each entry that a decision was made on once, and none where none was kept", () => {
  const parts = [diagnosis(a), plan("one", { planEntry: b, difficultyEntry: c }), plan("two", { planEntry: b })];
  expect(decidedOn(parts)).toEqual([a, b, c]);
  const figure = { entry: "a".repeat(64), way: "retreat", outcome: "one" } as const;
  const words = { restoreWith: "", orificesMarkedBy: "", warnings: "", prognosis: "" };
  expect(decidedOn([part("handback", "back", { on: "2024-02-01", ...words, figure })])).toEqual([a]);
  expect(decidedOn([diagnosis(undefined), plan("one", {})])).toEqual([]);
});
