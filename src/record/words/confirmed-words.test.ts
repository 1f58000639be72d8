import { expect, it } from "vitest";
import { sampleParts } from "../../../test/sample-case.ts";
import { type BodyOf, partsOf } from "../parts.ts";
import { confirmationsOf } from "./confirmed-words.ts";

const confirmed = { by: "supervisor", asked: ["216 micrograms are above the limit of 200."], because: "pain" };
const lidocaine = { agent: "lidocaine", percent: 2, cartridgeMl: 1.8 } as const;
const [sample] = partsOf(sampleParts(), "visit");
const used: Partial<BodyOf<"visit">> = {
  anaesthetic: [
    { ...lidocaine, cartridges: 1 },
    { ...lidocaine, cartridges: 12, confirmed },
  ],
  solvent: [{ solvent: "xylene", volumeMl: 2, atMin: 0, confirmed: { by: "S", asked: ["2 ml: is it so?"] } }],
};

it("tells of each row that a person stood by who it was, why, and what was asked", () => {
  if (sample === undefined) throw new Error("there is a visit");
  const visit = { ...sample.body, ...used };
  expect(confirmationsOf(visit, "anaesthetic")).toEqual([
    "lidocaine, row 2: confirmed by supervisor, because: pain. Asked: 216 micrograms are above the limit of 200.",
  ]);
  expect(confirmationsOf(visit, "solvent")).toEqual(["xylene, row 1: confirmed by S. Asked: 2 ml: is it so?"]);
  expect(confirmationsOf(visit, "irrigation")).toEqual([]);
});
