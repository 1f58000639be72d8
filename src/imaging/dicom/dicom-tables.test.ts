import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { decodeFilm } from "../decode-film.ts";
import type { FilmWindow } from "../film-pixels.ts";
import { windowToGrey } from "../window-to-grey.ts";
import { type Attribute, dicom, itemOf, type Syntax, words } from "./written-dicom.ts";

const root = new URL("../../../", import.meta.url);
const looks: Record<string, string> = JSON.parse(
  readFileSync(new URL("test/reference/films/tables.json", root), "utf8"),
);
const read = (bytes: Uint8Array) => decodeFilm(bytes, "film.dcm");
const six = [0, 1, 2, 3, 4, 9];
const eightBits: Attribute[] = [
  ["00280100", "US", 8],
  ["00280101", "US", 8],
  ["00280102", "US", 7],
];

/** A sequence with one table: how many entries, what the first stands for, its bits, and the entries. */
function table(tag: string, head: number[], entries: Uint8Array, { vr = "US", syntax = "explicit" as Syntax } = {}) {
  const descriptor: Attribute = ["00283002", vr, words(head, syntax !== "bigEndian")];
  return [tag, "SQ", itemOf([descriptor, ["00283006", "OW", entries]], syntax)] satisfies Attribute;
}
const modality = "00283000";
const voi = "00283010";

describe("decodeDicom and tables against dcmtk", () => {
  // dcm2pnm applies each table itself; the greys must be the same, byte for byte.
  const wide: FilmWindow = { center: 32_768, width: 65_536, function: "linear" };
  it.each([
    ["mlut_18", wide],
    ["vlut_04", undefined],
  ])("shows %s as dcm2pnm does", async (name, window) => {
    const film = await read(new Uint8Array(readFileSync(new URL(`data/samples/dicom-mit/${name}.dcm`, root))));
    const shown = window ?? film.technical.window ?? wide;
    const table = windowToGrey(shown, film.photometric);
    const grey = Uint8Array.from(film.samples, (value) => table[value] ?? 0);
    expect(createHash("sha256").update(grey).digest("hex")).toBe(looks[name]);
  });
});

describe("decodeDicom and a modality table (DICOM PS3.3 C.11.1)", () => {
  it.each<Syntax>(["implicit", "explicit", "bigEndian"])(
    "gives what the table makes of the samples, %s",
    async (syntax) => {
      const little = syntax !== "bigEndian";
      // Of five entries that begin at 1: below the first is the first, beyond the last is the last.
      const lut = table(modality, [5, 1, 16], words([700, 600, 500, 400, 65_535], little), { syntax });
      const film = await read(dicom(words(six, little), [lut], syntax));
      expect([...film.samples]).toEqual([700, 700, 600, 500, 400, 65_535]);
      expect(film).toMatchObject({ bitsStored: 16, photometric: "MONOCHROME2" });
      expect(film.technical).toEqual({ sourceFormat: "dicom", lossy: false, wasColour: false, modalityLut: "table" });
    },
  );

  it("whose first entry stands for a negative value, of signed samples", async () => {
    const lut = table(modality, [4, -2, 8], words([10, 20, 30, 40]), { vr: "SS" });
    const signed: Attribute[] = [lut, ["00280103", "US", 1]];
    const film = await read(dicom(words([-3, -2, -1, 0, 1, 2].map((value) => value & 0xfff)), signed));
    expect([...film.samples]).toEqual([10, 10, 20, 30, 40, 40]);
    expect(film.bitsStored).toBe(8);
    expect(film.technical.signedOffset).toBeUndefined();
  });

  it("of bytes, and of more bits than it says it has", async () => {
    const bytes = table(modality, [4, 0, 8], Uint8Array.of(10, 20, 30, 255));
    expect([...(await read(dicom(words(six), [bytes]))).samples]).toEqual([10, 20, 30, 255, 255, 255]);
    const wide = table(modality, [2, 0, 8], words([10, 1000]));
    const film = await read(dicom(words(six), [wide]));
    expect([film.bitsStored, film.samples[1]]).toEqual([10, 1000]);
  });

  it("and a window, which speaks of what the table gives", async () => {
    const lut = table(modality, [5, 1, 16], words([700, 600, 500, 400, 65_535]));
    const window: Attribute[] = [
      ["00281050", "DS", "600"],
      ["00281051", "DS", "200"],
    ];
    const { technical } = await read(dicom(words(six), [lut, ...window]));
    expect(technical.window).toEqual({ center: 600, width: 200, function: "linear" });
  });

  it("that is not whole is refused", async () => {
    for (const broken of [
      table(modality, [500, 0, 16], words([1, 2])),
      table(modality, [2], words([1, 2])),
      [modality, "SQ", new Uint8Array(0)] satisfies Attribute,
    ])
      await expect(read(dicom(words(six), [broken]))).rejects.toMatchObject({ code: "file.damaged" });
  });
});

describe("decodeDicom and a table of greys (DICOM PS3.3 C.11.2)", () => {
  const technicalOf = async (...changes: Attribute[]) => (await read(dicom(words(six), changes))).technical;
  const ramp = (count: number, step: number) => words(Array.from({ length: count }, (_, at) => at * step));

  it("that is a ramp shows as the window that spans it", async () => {
    // From 100 to 100 + 50: the linear exact window about their middle.
    const lut = table(voi, [51, 100, 16], ramp(51, 10));
    expect((await technicalOf(lut)).window).toEqual({ center: 125, width: 50, function: "linearExact" });
  });

  it("under a rescale is brought to the samples", async () => {
    const lut = table(voi, [51, 100, 16], ramp(51, 10));
    const slope: Attribute[] = [
      ["00281052", "DS", "-100"],
      ["00281053", "DS", "2"],
    ];
    // value = 2 sample - 100; so 125 is sample 112.5, and 50 values are 25 samples.
    expect((await technicalOf(lut, ...slope)).window).toEqual({ center: 112.5, width: 25, function: "linearExact" });
  });

  it("that bends is met at its quarters", async () => {
    // Level, steep from 10 to 20, level: the quarters lie at 12.5 and 17.5.
    const lut = table(
      voi,
      [31, 0, 16],
      words(Array.from({ length: 31 }, (_, at) => 100 * Math.min(10, Math.max(0, at - 10)))),
    );
    expect((await technicalOf(lut)).window).toEqual({ center: 15, width: 10, function: "linearExact" });
  });

  it("that falls turns bright and dark round", async () => {
    const falling = table(voi, [51, 0, 16], words(Array.from({ length: 51 }, (_, at) => 500 - 10 * at)));
    const film = await read(dicom(words(six), [falling]));
    expect(film.photometric).toBe("MONOCHROME1");
    expect(film.technical.window).toEqual({ center: 25, width: 50, function: "linearExact" });
  });

  it("gives way to a window, and says nothing where it is level or broken", async () => {
    const lut = table(voi, [51, 100, 16], ramp(51, 10));
    const window = { center: 30, width: 10, function: "linear" };
    expect((await technicalOf(lut, ["00281050", "DS", "30"], ["00281051", "DS", "10"])).window).toEqual(window);
    expect((await technicalOf(table(voi, [4, 0, 16], words([5, 5, 5, 5])))).window).toBeUndefined();
    expect((await technicalOf(table(voi, [40, 0, 16], words([5, 5, 5, 5])))).window).toBeUndefined();
  });
});

describe("decodeDicom and colours", () => {
  const palette = (bits: number, ...channels: number[][]): Attribute[] => [
    ["00280004", "CS", "PALETTE COLOR"],
    ...channels.flatMap((levels, at): Attribute[] => [
      [`0028110${at + 1}`, "US", words([levels.length, 1, bits])],
      [`0028120${at + 1}`, "OW", words(levels)],
    ]),
  ];

  it("of a palette gives their luminance", async () => {
    const colours = palette(8, [255, 0, 0], [0, 255, 0], [0, 0, 255]);
    const film = await read(dicom(words(six), colours));
    // 0.2126, 0.7152 and 0.0722 of 255, of entries that begin at 1.
    expect([...film.samples]).toEqual([54, 54, 182, 18, 18, 18]);
    expect(film).toMatchObject({ bitsStored: 8, technical: { wasColour: true } });
  });

  it("of a palette of 16 bits keeps them", async () => {
    const film = await read(dicom(words(six), palette(16, [60_000, 1], [60_000, 1], [60_000, 1])));
    expect([film.bitsStored, film.samples[0], film.samples[2]]).toEqual([16, 60_000, 1]);
  });

  it("of a palette whose tables differ in length are refused", async () => {
    const uneven = palette(8, [255, 0, 0], [0, 255], [0, 0, 255]);
    await expect(read(dicom(words(six), uneven))).rejects.toMatchObject({ code: "file.unsupported" });
  });

  const ybr = (name: string): Attribute[] => [...eightBits, ["00280002", "US", 3], ["00280004", "CS", name]];
  // Grey, red and blue by ITU-R BT.601; the luminance of red is 0.2126 * 254 = 54 and of blue 0.0722 * 254 = 18.
  const [grey, red, blue] = [
    [90, 128, 128],
    [76, 85, 255],
    [29, 255, 107],
  ];

  it("written as brightness and differences give their luminance", async () => {
    const pixels = Uint8Array.from([grey, red, blue, blue, red, grey].flat());
    const film = await read(dicom(pixels, ybr("YBR_FULL"), "explicit", "OB"));
    expect([...film.samples]).toEqual([90, 54, 18, 18, 54, 90]);
    expect(film.technical.wasColour).toBe(true);
  });

  it("of which two pixels share the differences", async () => {
    const size: Attribute[] = [...ybr("YBR_FULL_422"), ["00280010", "US", 1], ["00280011", "US", 4]];
    const pixels = Uint8Array.of(90, 70, 128, 128, 76, 76, 85, 255);
    const film = await read(dicom(pixels, size, "explicit", "OB"));
    expect([...film.samples]).toEqual([90, 70, 54, 54]);
  });

  it("that only JPEG 2000 makes are refused elsewhere", async () => {
    const pixels = new Uint8Array(18);
    await expect(read(dicom(pixels, ybr("YBR_RCT")))).rejects.toMatchObject({ code: "file.unsupported" });
  });
});
