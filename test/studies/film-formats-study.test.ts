import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { filmFormatsTable, readableSamples, readSample, tableInPage } from "./film-formats-study.ts";

/** Samples that no other program was asked for: each is held to its closed form, or refused, in the tests of its format. */
const heldElsewhere =
  /jpeg\/(orientation-\d|grey-arithmetic)\.jpg|tiff\/(grey-alpha-8|palette-8|large|two-pages)\.tif|dicom-mit\/(MR_truncated|UN_sequence|emri_small_RLE|JPEG2000-embedded-sequence-delimiter)\.dcm/;

describe("film formats against dcmtk, gdcm, libjpeg-turbo, libtiff and netpbm", () => {
  it.each(readableSamples)("%s has the samples that they read", async (name) => {
    const { apart, allowed } = await readSample(name);
    expect(apart).toBeLessThanOrEqual(allowed);
  });

  it("leaves no sample out", () => {
    const folder = new URL("../../data/samples/", import.meta.url);
    const files = readdirSync(folder, { recursive: true }).map((name) => String(name).replaceAll("\\", "/"));
    const pictures = files.filter((name) => /\.(bmp|dcm|jpg|png|tif)$/.test(name) && !heldElsewhere.test(name));
    expect(pictures.sort()).toEqual([...readableSamples].sort());
  });

  it("holds every way of packing, and every depth from 8 to 16 bits that films come in", async () => {
    const read = await Promise.all(readableSamples.map(readSample));
    const packings = new Set(read.map(({ format }) => format).filter((format) => format.startsWith("DICOM")));
    expect(packings.size).toBe(13);
    expect([8, 12, 16].filter((bits) => !read.some((one) => one.bits === bits))).toEqual([]);
  });

  it("stands in docs/methods/film-formats.md as it is", async () => {
    expect(tableInPage(), "run `npm run study -- film-formats`").toBe(await filmFormatsTable());
  });
});
