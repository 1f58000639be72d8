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
          aboveBoneMm: -1.5,
          sealedAfterMin: 40,
          sealedWith: "calcium silicate cement",
        },
      },
      [
        ...["Place: strip, inner wall of a bend", "Height: 1.5 mm below the bone's edge", "Bleeding: yes"],
        "Sealed: after 40 min, with calcium silicate cement",
      ],
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
          ...{ needle: "sideVented", needleFromStopMm: 17, time: "14:02", pain: 6, spread: "the lower lid" },
          needleBound: "notKnown",
          signs: ["pain", "ulcer", "dyingTissue"],
          sentTo: "the hospital",
        },
      },
      [
        ...["Solution: hypochlorite, 3 %, 1 ml", "Needle: side-vented", "Depth of the needle from its stop: 17 mm"],
        ...["Pain: 6 of 10", "Swelling and bruising go as far as: the lower lid"],
        ...["Signs: pain, ulcer, dying tissue", "Sent to: the hospital"],
      ],
    ],
    [
      "fillingExtrusion",
      { fillingExtrusion: { material: "sealer", beyondMm: 2, near: "mentalForamen", numbness: "no" } },
      ["Material: sealer", "Beyond the apex: 2 mm", "Near: mental foramen", "Numbness or burning: no"],
    ],
    [
      "missedCanal",
      { missedCanal: { found: "MB2", foundBy: "dye", since: "2024-01-02", treated: "left" } },
      ["Canal: MB2", "Found by: dye", "May have been left since: 24 months before", "Treated: left"],
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
          ...{ object: "a file, 21 mm", time: "09:05", counted: "9 out, 8 in" },
          went: "swallowed",
          signs: ["none"],
          rubberDam: "notUsed",
          found: "onFilm",
        },
      },
      [
        ...["Object: a file, 21 mm", "Counted out and in: 9 out, 8 in", "It was: swallowed", "Signs: none"],
        ...["Rubber dam: no rubber dam", "Found: on a film"],
      ],
    ],
  ])("%s, in words", (what, more, words) => {
    expect(mishapDetailWords(body({ what, ...more }), "twoDigit")).toEqual(words);
  });

  it.each([
    [2, "Height: 2 mm above the bone's edge"],
    [0, "Height: at the bone's edge"],
    [-0.5, "Height: 0.5 mm below the bone's edge"],
  ])("tells a perforation %d mm from the bone's edge by its side", (aboveBoneMm, says) => {
    const perforation = { side: "notKnown", bleeding: "notAsked", pocket: "notAsked", aboveBoneMm };
    expect(mishapDetailWords(body({ what: "perforation", perforation }), "twoDigit")).toEqual([says]);
  });

  it.each([
    ["2026-01-02", "0 days before"],
    ["2025-11-04", "59 days before"],
    ["2025-11-03", "2 months before"],
  ])("counts back to %s, and names no calendar date", (since, says) => {
    const missedCanal = { foundBy: "", treated: "notYet", since };
    expect(mishapDetailWords(body({ what: "missedCanal", missedCanal }), "twoDigit")).toEqual([
      `May have been left since: ${says}`,
      "Treated: not yet",
    ]);
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
