import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { filmHash } from "../core/ids.ts";
import { type Attribute, dicom, words } from "../imaging/dicom/written-dicom.ts";
import { filmPart } from "../record/parts/film.ts";
import type { Store } from "../store/store.ts";
import { filmWorkHere } from "./film-work.ts";
import { takeInFilm } from "./take-in-film.ts";

const hash = filmHash("a".repeat(64));
/** A store of which only the keeping of a film is asked. */
const store: Pick<Store, "keepFilm"> = { keepFilm: async () => hash };

/** The film part that taking in a file would record. */
async function bodyOf(bytes: Uint8Array): Promise<unknown> {
  const asked = { name: "film.dcm", takenOn: "2026-02-11", purpose: "diagnostic" } as const;
  const { gesture } = await takeInFilm({ store, films: filmWorkHere }, bytes, { ...asked, invert: "no" });
  const [put] = gesture.operations;
  return put?.op === "put" ? put.body : undefined;
}

const number = fc.oneof(
  fc.double().map(String),
  fc.double({ min: 0, max: 6, noNaN: true }).map(String),
  fc.constantFrom("", "0", "-1", "NaN", "Infinity", "1e-320", "0.05", "103", " 4 "),
  fc.string({ maxLength: 12, unit: "grapheme-ascii" }),
);
const pair = fc.tuple(number, number).map((both) => both.join("\\"));

describe("what a file says of its making", () => {
  it("is always something that the record takes, or is left out", async () => {
    const said = fc.record({
      "00181164": pair,
      "00280030": pair,
      "00280a02": fc.constantFrom("FIDUCIAL", "GEOMETRY", "GUESS"),
      "00181114": number,
      "00281050": number,
      "00281051": number,
      "00281052": number,
      "00281053": number,
      "00281056": fc.constantFrom("LINEAR", "LINEAR_EXACT", "SIGMOID", "OTHER"),
      "00280004": fc.constantFrom("MONOCHROME1", "MONOCHROME2"),
    });
    await fc.assert(
      fc.asyncProperty(said, async (values) => {
        const changes = Object.entries(values).map(([tag, value]): Attribute => [tag, "DS", value]);
        const parsed = filmPart.body.safeParse(await bodyOf(dicom(words([0, 1, 2, 1000, 2047, 4095]), changes)));
        expect(parsed.error?.issues).toBeUndefined();
      }),
      { numRuns: 300, seed: 20_261_129 },
    );
  });
});
