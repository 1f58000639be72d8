import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import dcmjs from "dcmjs";
import { describe, expect, it } from "vitest";
import { decodeFilm } from "../imaging/decode-film.ts";
import type { FilmPixels } from "../imaging/film-pixels.ts";
import { filmToDicom } from "./film-to-dicom.ts";

const film: FilmPixels = {
  columns: 5,
  rows: 3,
  bitsStored: 12,
  samples: Uint16Array.from({ length: 15 }, (_, i) => i * 290),
  photometric: "MONOCHROME2",
  technical: {
    sourceFormat: "png",
    detectorSpacingMm: [0.04, 0.04],
    magnification: 1.043333,
    wasColour: false,
    lossy: false,
  },
};
const description = { name: "A", date: "20240115", number: 3, laterality: "L", arch: "upper" } as const;
const bytes = filmToDicom(film, description);

describe("filmToDicom", () => {
  it("is read back by another library with every sample, spacing and magnification", () => {
    const parsed = dcmjs.data.DicomMessage.readFile(bytes.slice().buffer);
    const data = dcmjs.data.DicomMetaDictionary.naturalizeDataset(parsed.dict);
    expect(data.SOPClassUID).toBe("1.2.840.10008.5.1.4.1.1.1.3");
    expect([data.Rows, data.Columns, data.BitsStored, data.HighBit]).toEqual([3, 5, 12, 11]);
    expect(data.PhotometricInterpretation).toBe("MONOCHROME2");
    expect(data.ImagerPixelSpacing?.map(Number)).toEqual([0.04, 0.04]);
    expect(Number(data.EstimatedRadiographicMagnificationFactor)).toBeCloseTo(1.043333, 6);
    expect(Array.from(new Uint16Array(data.PixelData[0] ?? new ArrayBuffer(0)))).toEqual(Array.from(film.samples));
  });
  it("is read back by the light box", async () => {
    const back = await decodeFilm(bytes, "film.dcm");
    expect(back.samples).toEqual(film.samples);
    expect(back.technical.detectorSpacingMm).toEqual([0.04, 0.04]);
  });
  it("names nobody", () => {
    const text = new TextDecoder("latin1").decode(bytes);
    expect(text).toContain("Demo^A");
    expect(text).toContain("Invented: no patient");
  });
  it("is understood by dcmdump, where that is installed", (context) => {
    const folder = mkdtempSync(join(tmpdir(), "canalog-dicom-"));
    try {
      writeFileSync(join(folder, "film.dcm"), bytes);
      const said = execFileSync("dcmdump", ["+P", "0018,1164", "+P", "0028,0010", join(folder, "film.dcm")], {
        encoding: "utf8",
      });
      expect(said).toMatch(/DS \[0\.04\\0\.04\]/);
      expect(said).toMatch(/US 3 /);
    } catch (error) {
      if (error instanceof Error && "code" in error && error.code === "ENOENT")
        context.skip("dcmdump is not installed");
      throw error;
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
  it("leaves out spacing and magnification that the film does not have", () => {
    const bare = filmToDicom(
      { ...film, technical: { sourceFormat: "png", wasColour: false, lossy: false } },
      description,
    );
    const data = dcmjs.data.DicomMetaDictionary.naturalizeDataset(
      dcmjs.data.DicomMessage.readFile(bare.slice().buffer).dict,
    );
    expect(data.ImagerPixelSpacing).toBeUndefined();
    expect(data.EstimatedRadiographicMagnificationFactor).toBeUndefined();
  });
  it("writes the right side and the lower jaw", () => {
    const text = new TextDecoder("latin1").decode(
      filmToDicom(film, { ...description, laterality: "R", arch: "lower" }),
    );
    expect(text).toContain("Mandible");
    expect(text).toContain("A\\F");
  });
  it("refuses samples that do not fill the picture", () => {
    expect(() => filmToDicom({ ...film, rows: 4 }, description)).toThrow(/15 samples for 4 rows of 5/);
  });
});
