import { expect, it } from "vitest";
import type { BodyOf } from "../../../../record/parts.ts";
import { canalsToEnter } from "./canals-to-enter.ts";

const row = (canal: string, workingLengthMm?: number): BodyOf<"visit">["canals"][number] => ({
  ...{ canal, state: "shaped", patency: "patent", reference: "" },
  ...(workingLengthMm === undefined ? {} : { workingLengthMm }),
});

it("canals of the visit's table come first with their lengths, then those that the case knows", () => {
  expect(canalsToEnter([row("P", 21), row("MB1")], ["MB1", "MB2", "P"])).toEqual([
    { canal: "P", workingLengthMm: 21 },
    { canal: "MB1", workingLengthMm: undefined },
    { canal: "MB2" },
  ]);
});

it("one without a name stands where none is known", () => {
  expect(canalsToEnter([], [])).toEqual([{}]);
  expect(canalsToEnter([row("")], [])).toEqual([{}]);
});
