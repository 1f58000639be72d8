import { describe, expect, it } from "vitest";
import { mishapPart } from "../../record/parts/mishap.ts";
import { mishapKinds } from "../../record/parts/mishap-kinds.ts";
import { mishapDetailWords } from "./mishap-details.ts";

const body = (more: object) =>
  mishapPart.body.parse({
    ...{ on: "2026-01-02", what: "other", third: "notRecorded", bend: "notRecorded", handled: "open" },
    ...{ toldPatient: "notYet", story: "" },
    ...more,
  });

describe("what the record of a kind says", () => {
  it.each([
    [
      "separatedInstrument",
      {
        separated: {
          ...{ signs: ["bent", "dimples"], tipBound: "yes", stoppedAtTorqueLimit: "notKnown" },
          ...{ headSeen: "notLooked", stage: "cleaned" },
        },
      },
      ["Signs: bent, dimples", "Tip bound: yes", "Canal at the break: cleaned"],
    ],
    [
      "ledge",
      { ledge: { depthMm: 17.5, wall: "outer", passed: "notPassed" } },
      ["Depth: 17.5 mm", "Wall: outer wall of the bend", "Passed: not passed"],
    ],
    [
      "perforation",
      {
        perforation: {
          place: "strip",
          side: "notKnown",
          bleeding: "yes",
          pocket: "notAsked",
          sealedAfterMin: 40,
          sealedWith: "calcium silicate cement",
        },
      },
      ["Place: strip, inner wall of a bend", "Bleeding: yes", "Sealed: after 40 min, with calcium silicate cement"],
    ],
    ["block", { block: { by: "dentine", passed: "passed" } }, ["Blocked by: packed dentine", "Passed: passed"]],
    [
      "transportation",
      { transportation: { form: "zip", sizeThere: 40, seenOn: "the film" } },
      ["Form: zip", "Size there: 40", "Seen on: the film"],
    ],
    [
      "irrigantExtrusion",
      {
        irrigantExtrusion: {
          solution: "hypochlorite",
          percent: 3,
          volumeMl: 1,
          needleBound: "notKnown",
          signs: ["pain"],
          sentTo: "the hospital",
        },
      },
      ["Solution: hypochlorite, 3 %, 1 ml", "Signs: pain", "Sent to: the hospital"],
    ],
    [
      "fillingExtrusion",
      { fillingExtrusion: { material: "sealer", beyondMm: 2, near: "mentalForamen", numbness: "no" } },
      ["Material: sealer", "Beyond the apex: 2 mm", "Near: mental foramen", "Numbness or burning: no"],
    ],
    [
      "missedCanal",
      { missedCanal: { found: "MB2", foundBy: "dye", treated: "left" } },
      ["Canal: MB2", "Found by: dye", "Treated: left"],
    ],
    [
      "wrongTooth",
      { wrongTooth: { tooth: "27", done: "accessBegun", noticedBy: "the assistant", restored: "a filling" } },
      ["Worked on: 27", "How far: access begun", "Noticed by: the assistant", "Done for it: a filling"],
    ],
    [
      "swallowedOrInhaled",
      {
        swallowedOrInhaled: {
          object: "a file, 21 mm",
          went: "swallowed",
          signs: ["none"],
          rubberDam: "notUsed",
          found: "onFilm",
        },
      },
      ["Object: a file, 21 mm", "It was: swallowed", "Signs: none", "Rubber dam: no rubber dam", "Found: on a film"],
    ],
  ])("%s, in words", (what, more, words) => {
    expect(mishapDetailWords(body({ what, ...more }), "twoDigit")).toEqual(words);
  });

  it("writes the wrong tooth in the person's notation", () => {
    const wrong = body({ what: "wrongTooth", wrongTooth: { tooth: "26", noticedBy: "", restored: "" } });
    const written = (["twoDigit", "universal", "quadrant"] as const).map((one) => mishapDetailWords(wrong, one)[0]);
    expect(written).toEqual(["Worked on: 26", "Worked on: 14", "Worked on: upper left 6"]);
  });

  it.each(mishapKinds)("is nothing of %s where nothing was said, whatever stands of another kind", (what) => {
    const ledge = { depthMm: 17.5, wall: "outer", passed: "passed" };
    expect(mishapDetailWords(body({ what, ...(what === "ledge" ? {} : { ledge }) }), "twoDigit")).toEqual([]);
  });
});
