import { describe, expect, it } from "vitest";
import { partId } from "../../../core/ids.ts";
import { filmViewed } from "./film-gestures.ts";
import { plainLook } from "./film-look.ts";
import type { Film } from "./film-name.ts";

const film: Film = {
  id: partId("film-1"),
  kind: "film",
  revision: 3,
  body: {
    ...{ hash: "0".repeat(64), columns: 10, rows: 10, bitsStored: 8, takenOn: "2026-01-14", purpose: "recall" },
    ...{ receptor: "unknown", uRunsTo: "unknown", caption: "" },
    technical: { sourceFormat: "png", sourceSha256: "0".repeat(64), wasColour: false, lossy: false, inverted: false },
  },
};
const window = { centre: 100, width: 200, invert: true };
const orientation = { quarterTurns: 1, mirrored: true };
const viewed = (look: typeof plainLook) =>
  filmViewed({ film, presentedOn: "2026-01-01" }, { window, look, orientation }, "Gamma 1.4");

describe("a film looked at", () => {
  it("is recorded with window, look and how it is held, in words", () => {
    const look = { ...plainLook, gamma: 1.4 };
    expect(viewed(look).words).toBe("Gamma 1.4: the recall film of day 13");
    expect(viewed(look).operations).toEqual([
      {
        ...{ op: "put", id: film.id, kind: "film", baseRevision: 3 },
        body: {
          ...film.body,
          view: { windowCentre: 100, windowWidth: 200, invert: true, gamma: 1.4, quarterTurns: 1, mirrored: true },
        },
      },
    ]);
  });

  it("carries nothing of a look that is plain", () => {
    const [operation] = viewed(plainLook).operations;
    const body: unknown = operation && Reflect.get(operation, "body");
    expect(body).toHaveProperty("view");
    for (const name of ["gamma", "localContrast", "sharpening"]) expect(body).not.toHaveProperty(`view.${name}`);
  });
});
