import { expect, it } from "vitest";
import { lookKinds } from "../core/tooth/missed-canal/look.ts";
import { lookResultsOf } from "./look-results.ts";
import { searchPart } from "./parts/search.ts";

it.each(lookKinds)("gives what the record takes as a result of %s, and nothing that it does not", (kind) => {
  const taken = (["seen", "notSeen", "yes", "no"] as const).filter(
    (result) =>
      searchPart.body.safeParse({
        feature: "thirdRoot",
        looks: [{ on: "2026-01-02", kind, result, note: "" }],
      }).success,
  );
  expect(lookResultsOf(kind)).toEqual(taken.includes("yes") ? ["yes", "no"] : ["seen", "notSeen"]);
  expect([...lookResultsOf(kind)].sort()).toEqual([...taken].sort());
});
