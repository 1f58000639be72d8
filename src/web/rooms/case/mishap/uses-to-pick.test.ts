import { describe, expect, it } from "vitest";
import { mishapPart } from "../../../../record/parts/mishap.ts";
import type { Part } from "../../../../record/parts.ts";
import { newBodies } from "../new-bodies.ts";
import { usesToPick, withUse } from "./uses-to-pick.ts";
import type { Mishap } from "./with-kind.ts";
import { lengthOffers, withLength } from "./with-length.ts";

const file = { id: "file-a", label: "7", usesBefore: 1 } as const;
const shaped = { size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "continuous" } as const;
const visit = (id: string, on: string, instruments: object[]) =>
  ({ id, kind: "visit", revision: 1, body: { ...newBodies.visit(on, {}), instruments } }) as Part;
const parts = [
  visit("visit-a", "2026-01-02", [
    { ...shaped, canal: "MB1", size: 20, depthMm: 19 },
    { ...shaped, canal: "MB1", rpm: 300, depthMm: 18.5, depthFrom: "orifice", seconds: 8, file },
    { ...shaped, canal: "P", size: 30 },
  ]),
  visit("visit-b", "2026-02-02", [{ ...shaped, canal: "MB1" }]),
];
const mishap: Mishap = { ...newBodies.mishap("2026-01-02"), what: "separatedInstrument" };

describe("the instrument that broke", () => {
  it("is offered from the uses up to that day in its canal, the last first", () => {
    const offers = usesToPick({ ...mishap, canal: "MB1" }, parts);
    expect(offers.map(({ id }) => id)).toEqual(["visit-a-1", "visit-a-0"]);
    expect(offers[0]?.says).toBe("25/.06 “7”, nickel-titanium, continuous, 18.5\u202fmm deep in MB1, 2 Jan 2026");
  });

  it("is offered from all of them where no canal is named, or none of its uses is", () => {
    expect(usesToPick(mishap, parts)).toHaveLength(3);
    expect(usesToPick({ ...mishap, canal: "DB" }, parts)).toHaveLength(3);
    expect(usesToPick(mishap, [])).toEqual([]);
  });

  it("is taken whole by one press: geometry, speed, file, depth, canal and visit", () => {
    const [last] = usesToPick({ ...mishap, canal: "MB1" }, parts);
    const taken = withUse(mishap, last ?? { visit: "", use: shaped });
    expect(mishapPart.body.safeParse(taken).error).toBeUndefined();
    expect(taken).toMatchObject({
      ...{ visit: "visit-a", canal: "MB1", instrument: { ...shaped, rpm: 300 } },
      separated: { tipDepthMm: 18.5, depthFrom: "orifice", file, headSeen: "notLooked" },
    });
    // What only the use holds is not the instrument's.
    expect(taken.instrument).not.toHaveProperty("seconds");
  });

  it("leaves nothing of another use behind, and keeps what was seen", () => {
    const other = withUse(
      {
        ...mishap,
        separated: {
          signs: ["bent"],
          tipBound: "yes",
          stoppedAtTorqueLimit: "no",
          headSeen: "seen",
          stage: "cleaned",
          file,
        },
      },
      { visit: "visit-b", use: shaped },
    );
    expect(other.separated).toEqual({
      signs: ["bent"],
      tipBound: "yes",
      stoppedAtTorqueLimit: "no",
      headSeen: "seen",
      stage: "cleaned",
    });
  });
});

describe("the length of the piece", () => {
  const day = (on: string) => on;
  const onFilm = { mark: "m", takenOn: "2026-01-02", canal: "MB1", lengthMm: 3.12, sigmaMm: 0.15 };

  it("is offered by film with its error, then as it was noted before", () => {
    const offers = lengthOffers({ ...mishap, canal: "MB1", fragmentMm: 3 }, [onFilm], day);
    expect(offers.map(({ says }) => says)).toEqual([
      "3.12 ± 0.15\u202fmm from the film of 2026-01-02",
      "3 ± 0.2\u202fmm, noted before",
    ]);
  });

  it("of another canal is not offered, nor one that stands already", () => {
    expect(lengthOffers({ ...mishap, canal: "P" }, [onFilm], day)).toEqual([]);
    const taken = withLength(mishap, { value: 3.12, sigma: 0.15 });
    expect(taken).toMatchObject({ fragmentMm: 3.12, separated: { lengthMm: { value: 3.12, sigma: 0.15 } } });
    expect(mishapPart.body.safeParse(taken).error).toBeUndefined();
    expect(lengthOffers(taken, [onFilm], day)).toEqual([]);
  });

  it("by a film without a click error has the error of a rule on a film", () => {
    const [offer] = lengthOffers(mishap, [{ ...onFilm, sigmaMm: undefined }], day);
    expect(offer?.measured).toEqual({ value: 3.12, sigma: 0.2 });
  });
});
