import fc from "fast-check";
import { deflateSync } from "fflate";
import { describe, expect, it } from "vitest";
import { Refusal } from "../../core/refusal.ts";
import { decodeFilm } from "../decode-film.ts";
import { greyAt } from "../window-to-grey.ts";
import { type Attribute, dicom, type Syntax, words } from "./written-dicom.ts";

const read = (bytes: Uint8Array) => decodeFilm(bytes, "film.dcm");
const six = [0, 1, 2, 1000, 2047, 4095];
const eightBits: Attribute[] = [
  ["00280100", "US", 8],
  ["00280101", "US", 8],
  ["00280102", "US", 7],
];

describe("decodeDicom reads samples", () => {
  it.each<[Syntax, boolean]>([
    ["implicit", true],
    ["explicit", true],
    ["bigEndian", false],
  ])("of 16 bits, %s", async (syntax, little) => {
    const film = await read(dicom(words(six, little), [], syntax));
    expect([...film.samples]).toEqual(six);
    expect(film).toMatchObject({ columns: 3, rows: 2, bitsStored: 12, photometric: "MONOCHROME2" });
  });

  it("of 8 bits, and of 8 bits in big-endian words, whose bytes stand exchanged", async () => {
    const known = [10, 20, 30, 40, 50, 60];
    const straight = Uint8Array.from(known);
    const exchanged = Uint8Array.of(20, 10, 40, 30, 60, 50);
    for (const bytes of [
      dicom(straight, eightBits, "explicit", "OB"),
      dicom(straight, eightBits, "bigEndian", "OB"),
      dicom(exchanged, eightBits, "bigEndian", "OW"),
    ]) {
      const film = await read(bytes);
      expect([...film.samples]).toEqual(known);
      expect(film.bitsStored).toBe(8);
    }
  });

  it("that are signed, with what a stored 0 stands for", async () => {
    const values = [-2048, -1, 0, 1, 1000, 2047];
    const film = await read(dicom(words(values.map((value) => value & 0xfff)), [["00280103", "US", 1]]));
    expect(film.technical.signedOffset).toBe(-2048);
    expect([...film.samples].map((sample) => sample + (film.technical.signedOffset ?? 0))).toEqual(values);
  });

  it("that stand in the high bits, and leaves out overlay bits above them", async () => {
    const high = await read(dicom(words(six.map((value) => value << 4)), [["00280102", "US", 15]]));
    expect([...high.samples]).toEqual(six);
    const overlaid = await read(dicom(words(six.map((value) => value | 0x7000))));
    expect([...overlaid.samples]).toEqual(six);
  });

  it("of colour, pixel by pixel or plane by plane", async () => {
    const rgb: Attribute[] = [...eightBits, ["00280002", "US", 3], ["00280004", "CS", "RGB"]];
    const [red, green, blue] = [
      [255, 0, 0, 255, 7, 100],
      [0, 255, 0, 255, 7, 50],
      [0, 0, 255, 255, 7, 200],
    ] as const;
    // 0.2126, 0.7152 and 0.0722 of 255; white and grey stay; 0.2126 * 100 + 0.7152 * 50 + 0.0722 * 200 = 71.46.
    const known = [54, 182, 18, 255, 7, 71];
    const byPixel = Uint8Array.from(red.flatMap((value, at) => [value, green[at] ?? 0, blue[at] ?? 0]));
    const byPlane = Uint8Array.from([...red, ...green, ...blue]);
    for (const [pixels, planar] of [
      [byPixel, 0],
      [byPlane, 1],
    ] as const) {
      const film = await read(dicom(pixels, [...rgb, ["00280006", "US", planar]]));
      expect([...film.samples]).toEqual(known);
      expect(film.technical.wasColour).toBe(true);
    }
  });

  it("with an even filling behind an odd number of bytes", async () => {
    const pixels = Uint8Array.of(1, 2, 3, 0);
    const film = await read(dicom(pixels, [...eightBits, ["00280010", "US", 1]], "explicit", "OB"));
    expect([...film.samples]).toEqual([1, 2, 3]);
  });
});

describe("decodeDicom says how the film was made", () => {
  const technicalOf = async (...changes: Attribute[]) => (await read(dicom(words(six), changes))).technical;

  it("with nothing where the file says nothing", async () => {
    expect(await technicalOf()).toEqual({ sourceFormat: "dicom", lossy: false, wasColour: false });
  });

  it("with both spacings, rows first, their origin and the magnification", async () => {
    const technical = await technicalOf(
      ["00181164", "DS", "0.05\\0.06"],
      ["00280030", "DS", "0.04\\0.048"],
      ["00280a02", "CS", "FIDUCIAL"],
      ["00181114", "DS", "1.25"],
      ["00282110", "CS", "01"],
    );
    expect(technical).toEqual({
      sourceFormat: "dicom",
      detectorSpacingMm: [0.05, 0.06],
      pixelSpacingMm: [0.04, 0.048],
      calibrationType: "fiducial",
      magnification: 1.25,
      lossy: true,
      wasColour: false,
    });
    expect((await technicalOf(["00280a02", "CS", "GEOMETRY"])).calibrationType).toBe("geometry");
  });

  it.each<[string, Attribute[], string[]]>([
    ["a spacing of 0", [["00181164", "DS", "0\\0.05"]], ["spacing at the detector"]],
    ["a spacing below 0", [["00280030", "DS", "-0.05\\-0.05"]], ["pixel spacing"]],
    ["half a spacing", [["00280030", "DS", "0.05"]], ["pixel spacing"]],
    ["a spacing in words", [["00280030", "DS", "NaN\\NaN"]], ["pixel spacing"]],
    ["a spacing in another unit", [["00280030", "DS", "40\\40"]], ["pixel spacing"]],
    ["a magnification below 0", [["00181114", "DS", "-1"]], ["magnification"]],
    ["a magnification below 1", [["00181114", "DS", "0.9"]], ["magnification"]],
    ["a magnification in percent", [["00181114", "DS", "103.4"]], ["magnification"]],
    [
      "a window of no width",
      [
        ["00281050", "DS", "100"],
        ["00281051", "DS", "0"],
      ],
      ["window"],
    ],
    ["a window without its width", [["00281050", "DS", "100"]], ["window"]],
    [
      "a window beyond all samples",
      [
        ["00281050", "DS", "1e300"],
        ["00281051", "DS", "100"],
      ],
      ["window"],
    ],
    ["a rescale that is no number", [["00281053", "DS", "NaN"]], ["rescale"]],
    ["a rescale by 0", [["00281053", "DS", "0"]], ["rescale"]],
    [
      "a rescale that is no number, and with it the window that speaks of its values",
      [
        ["00281050", "DS", "100"],
        ["00281051", "DS", "100"],
        ["00281052", "DS", "none"],
        ["00281053", "DS", "1"],
      ],
      ["rescale", "window"],
    ],
  ])("without %s, which it names", async (_, changes, leftOut) => {
    expect(await technicalOf(...changes)).toEqual({ sourceFormat: "dicom", lossy: false, wasColour: false, leftOut });
  });

  it("and is quiet about what the file leaves empty", async () => {
    const empty: Attribute[] = ["00181164", "00280030", "00281050", "00281053"].map((tag) => [tag, "DS", ""]);
    expect(await technicalOf(...empty)).toEqual({ sourceFormat: "dicom", lossy: false, wasColour: false });
  });

  it.each([
    ["LINEAR", "linear"],
    ["LINEAR_EXACT", "linearExact"],
    ["SIGMOID", "sigmoid"],
  ])("with the first window, %s", async (written, known) => {
    const technical = await technicalOf(
      ["00281050", "DS", "2048\\100"],
      ["00281051", "DS", "4096\\50"],
      ["00281056", "CS", written],
    );
    expect(technical.window).toEqual({ center: 2048, width: 4096, function: known });
  });

  it("with a window that shows the samples as the file's does its values", async () => {
    const [slope, intercept, center, width] = [0.684, 200, 1600, 2800];
    const { window, modalityLut } = await technicalOf(
      ["00281050", "DS", `${center}`],
      ["00281051", "DS", `${width}`],
      ["00281052", "DS", `${intercept}`],
      ["00281053", "DS", `${slope}`],
    );
    expect(modalityLut).toBe("rescale");
    if (window === undefined) throw new Error("no window");
    for (const sample of [0, 1, 500, 1994, 3000, 4095])
      expect(greyAt(sample, window)).toBeCloseTo(
        greyAt(slope * sample + intercept, { center, width, function: "linear" }),
        9,
      );
  });

  it("with dark and bright exchanged where the rescale falls", async () => {
    const falling: Attribute[] = [
      ["00281052", "DS", "4095"],
      ["00281053", "DS", "-1"],
    ];
    expect((await read(dicom(words(six), falling))).photometric).toBe("MONOCHROME1");
    const dark: Attribute = ["00280004", "CS", "MONOCHROME1"];
    expect((await read(dicom(words(six), [dark]))).photometric).toBe("MONOCHROME1");
    expect((await read(dicom(words(six), [dark, ...falling]))).photometric).toBe("MONOCHROME2");
  });
});

describe("decodeDicom refuses", () => {
  it.each<[string, Uint8Array, string]>([
    ["a palette without its tables", dicom(words(six), [["00280004", "CS", "PALETTE COLOR"]]), "file.unsupported"],
    ["colours with one number a pixel", dicom(words(six), [["00280004", "CS", "YBR_FULL"]]), "file.unsupported"],
    ["colours that are not read", dicom(words(six), [["00280004", "CS", "HSV"]]), "file.unsupported"],
    ["several frames", dicom(words(six), [["00280008", "IS", "2"]]), "file.unsupported"],
    ["no frame", dicom(words(six), [["00280008", "IS", "0"]]), "file.damaged"],
    ["fewer frames than none", dicom(words(six), [["00280008", "IS", "-1"]]), "file.damaged"],
    ["frames in words", dicom(words(six), [["00280008", "IS", "many"]]), "file.damaged"],
    ["32 bits", dicom(words(six), [["00280100", "US", 32]]), "file.unsupported"],
    ["no picture at all", dicom(undefined, [["00280010", "SH", ""]]), "file.unsupported"],
    ["no rows", dicom(words(six), [["00280010", "US", 0]]), "file.impossibleSize"],
    ["more columns than a film has", dicom(words(six), [["00280011", "US", 20_001]]), "file.impossibleSize"],
    ["fewer bytes than the size needs", dicom(words(six.slice(1))), "file.impossibleSize"],
    ["more bytes than the size needs", dicom(words([...six, 1])), "file.impossibleSize"],
    ["bits that can't be", dicom(words(six), [["00280102", "US", 20]]), "file.damaged"],
    ["a picture that is not there", dicom(undefined), "file.truncated"],
  ])("%s", async (_, bytes, code) => {
    await expect(read(bytes)).rejects.toThrow(expect.objectContaining({ code }));
  });

  it("a file that does not say how it is written", async () => {
    const whole = dicom(words(six));
    // The one attribute of its header: 8 bytes and an identifier of 20.
    const without = Uint8Array.from([...whole.subarray(0, 132), ...whole.subarray(132 + 28)]);
    const message = expect.stringContaining("does not say how it is written");
    await expect(read(without)).rejects.toMatchObject({ code: "file.damaged", message });
  });

  it("samples that are floating numbers, by name", async () => {
    const floats = dicom(undefined, [["7fe00008", "OW", new Uint8Array(24)]]);
    const message = expect.stringContaining("floating numbers");
    await expect(read(floats)).rejects.toMatchObject({ code: "file.unsupported", message });
  });

  describe("a deflated file", () => {
    const plain = dicom(words(six), [["00020010", "UI", "1.2.840.10008.1.2.1.99"]]);
    // Preamble, mark, and one attribute of 8 + 22 bytes.
    const dataSetFrom = 132 + 30;
    const deflated = (...body: Uint8Array[]) => {
      const whole = new Uint8Array(body.reduce((sum, part) => sum + part.length, 0));
      let at = 0;
      for (const part of body) {
        whole.set(part, at);
        at += part.length;
      }
      return Uint8Array.from([...plain.subarray(0, dataSetFrom), ...deflateSync(whole, { level: 9 })]);
    };
    const body = plain.subarray(dataSetFrom);

    it("as soon as it holds more than its size needs, however much follows", async () => {
      expect([...(await read(deflated(body))).samples]).toEqual(six);
      const bomb = deflated(body, new Uint8Array(60_000_000));
      expect(bomb.length).toBeLessThan(100_000);
      const refusal = await read(bomb).catch((error: unknown) => error);
      expect(refusal).toMatchObject({ code: "file.impossibleSize" });
      // What stands before the picture, its twelve bytes, and a million for what may stand behind.
      expect(refusal instanceof Refusal && refusal.facts.limit).toBe(plain.length + 1_000_000);
    });

    it("whose header has no end", async () => {
      const endless = new Uint8Array([0x01, 0x00, 0x01, 0x10, 0x4f, 0x42, 0, 0, 0xff, 0xff, 0xff, 0x0f]);
      const bomb = deflated(endless, new Uint8Array(30_000_000));
      const refusal = decodeFilm(bomb, "film.dcm", { maxBytes: 20_000_000 });
      await expect(refusal).rejects.toMatchObject({ code: "file.tooLarge", facts: { limit: 20_000_000 } });
    });
  });

  it("a file that ends within its header, whether inside a value or inside a tag", async () => {
    const whole = dicom(words(six));
    const sizes = whole.length - 12 - 12 - 8 * 10;
    for (const length of [190, 191, 200, sizes + 1, sizes + 3, sizes + 7]) {
      const refusal = await read(whole.slice(0, length)).catch((error: unknown) => error);
      expect(refusal).toMatchObject({ code: "file.truncated", facts: { foundBytes: length } });
    }
  });

  it("without a word about the patient, wherever the file is cut or changed", async () => {
    const whole = dicom(words(six), [["00280030", "DS", "0.04\\0.04"]], "explicit");
    const place = fc.record({
      at: fc.integer({ min: 132, max: whole.length - 1 }),
      byte: fc.integer({ min: 0, max: 255 }),
      cut: fc.boolean(),
    });
    await fc.assert(
      fc.asyncProperty(place, async ({ at, byte, cut }) => {
        const bytes = cut ? whole.slice(0, at) : whole.slice();
        if (!cut) bytes[at] = byte;
        const outcome = await read(bytes).catch((error: unknown) => error);
        const told = outcome instanceof Refusal ? [outcome.message, outcome.facts, String(outcome.cause)] : outcome;
        expect(JSON.stringify(told)).not.toMatch(/SECRET|NAME|1969/);
      }),
      { numRuns: 400, seed: 1 },
    );
  });
});
