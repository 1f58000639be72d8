import { describe, expect, it } from "vitest";
import { filmPart } from "./film.ts";

const view = { windowCentre: 2000, windowWidth: 3000, invert: false, quarterTurns: 0, mirrored: false };
const film = (look: object) => ({
  ...{ hash: "0".repeat(64), columns: 100, rows: 80, bitsStored: 12, takenOn: "2026-02-10", purpose: "diagnostic" },
  ...{ receptor: "unknown", uRunsTo: "distal", caption: "" },
  technical: { sourceFormat: "png", sourceSha256: "0".repeat(64), wasColour: false, lossy: false, inverted: false },
  view: { ...view, ...look },
});
const faults = (look: object) =>
  filmPart.body.safeParse(film(look)).error?.issues.map(({ path }) => path.join(".")) ?? [];

describe("how a film is looked at", () => {
  it("needs no look beside its window: films of before have none", () => {
    expect(faults({})).toEqual([]);
  });

  it("takes a look whole or in part, and gives it back as it was", () => {
    const look = { gamma: 1.4, localContrast: 0.5, sharpening: { amount: 1, radiusPx: 1.5 } };
    expect(faults({ gamma: 0.25 })).toEqual([]);
    expect(filmPart.body.parse(film(look)).view).toEqual({ ...view, ...look });
  });

  it.each([
    [{ gamma: 0.2 }, "view.gamma"],
    [{ gamma: 4.1 }, "view.gamma"],
    [{ localContrast: -0.1 }, "view.localContrast"],
    [{ localContrast: 1.1 }, "view.localContrast"],
    [{ sharpening: { amount: 4.1, radiusPx: 1 } }, "view.sharpening.amount"],
    [{ sharpening: { amount: 1, radiusPx: 0.4 } }, "view.sharpening.radiusPx"],
    [{ sharpening: { amount: 1 } }, "view.sharpening.radiusPx"],
  ])("refuses %j", (look, path) => {
    expect(faults(look)).toEqual([path]);
  });
});
