import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { zlibSync } from "fflate";
import { describe, expect, it, vi } from "vitest";
import { Refusal, type RefusalCode } from "../core/refusal.ts";
import { decodeFilm } from "./decode-film.ts";
import type { FilmPixels } from "./film-pixels.ts";
import { pngChunk, pngChunksOf, pngOf } from "./png-chunks.ts";

const samples = new URL("../../data/samples/", import.meta.url);
const sample = (name: string) => new Uint8Array(readFileSync(new URL(name, samples)));

/** The refusal that reading some bytes ends in. */
async function refusalOf(bytes: Uint8Array, options = {}): Promise<Refusal> {
  const outcome = await decodeFilm(bytes, "film.bin", options).catch((error: unknown) => error);
  if (outcome instanceof Refusal) return outcome;
  throw new Error("it was read");
}
const codeOf = async (bytes: Uint8Array, options = {}): Promise<RefusalCode> => (await refusalOf(bytes, options)).code;

describe("decodeFilm on PNG", () => {
  const [columns, rows] = [13, 9];
  const plane = (value: (column: number, row: number) => number) =>
    Array.from({ length: columns * rows }, (_, index) => value(index % columns, Math.floor(index / columns)));
  const eight = (column: number, row: number) => (column * 19 + row * 7) % 256;
  const sixteen = (column: number, row: number) => (column * 5003 + row * 977) % 65_536;
  const weighed = (red: number, green: number, blue: number) =>
    Math.round(0.2126 * red + 0.7152 * green + 0.0722 * blue);
  const colour = (value: number, largest: number) => weighed(value, largest - value, Math.floor(value / 2));

  // The formulas stand in data/samples/png/make-samples.py; the files were written by Pillow and netpbm.
  it.each([
    ["grey-8.png", 8, false, plane(eight)],
    ["grey-8-interlaced.png", 8, false, plane(eight)],
    ["grey-16.png", 16, false, plane(sixteen)],
    ["grey-16-interlaced.png", 16, false, plane(sixteen)],
    ["grey-2.png", 2, false, plane((column, row) => Math.floor(eight(column, row) / 64))],
    ["grey-4.png", 4, false, plane((column, row) => Math.floor(eight(column, row) / 16))],
    ["grey-1.png", 1, false, plane((column, row) => ((column + row) % 2 === 0 ? 1 : 0))],
    ["grey-alpha-8.png", 8, false, plane(eight)],
    ["rgb-8.png", 8, true, plane((column, row) => colour(eight(column, row), 255))],
    ["rgb-8-interlaced.png", 8, true, plane((column, row) => colour(eight(column, row), 255))],
    [
      "palette-8-interlaced.png",
      8,
      true,
      plane((column, row) => {
        const value = eight(column, row);
        return weighed(row * 13 + column, 255 - value, Math.floor(value / 2));
      }),
    ],
    ["rgba-8.png", 8, true, plane((column, row) => colour(eight(column, row), 255))],
    ["rgb-16.png", 16, true, plane((column, row) => colour(sixteen(column, row), 65_535))],
    ["palette-4.png", 8, true, plane((column, row) => colour(((column + row) % 16) * 16, 255))],
    ["orientation-6.png", 8, false, plane(eight)],
  ])("reads %s", async (name, bitsStored, wasColour, known) => {
    const film = await decodeFilm(sample(`png/${name}`), name);
    expect(film).toMatchObject({ columns, rows, bitsStored, photometric: "MONOCHROME2" });
    expect(film.technical).toMatchObject({ sourceFormat: "png", wasColour, lossy: false });
    expect([...film.samples]).toEqual(known);
  });
});

describe("decodeFilm on a PNG made to do harm", () => {
  const chunks = pngChunksOf(sample("png/grey-8.png"));
  /** The grey sample with its picture replaced and a chunk put before it. */
  const pngWith = (picture: Uint8Array, ...extra: Uint8Array[]) =>
    pngOf([
      ...chunks.filter(({ type }) => type === "IHDR").map(({ whole }) => whole),
      ...extra,
      pngChunk("IDAT", picture),
      pngChunk("IEND", new Uint8Array(0)),
    ]);
  // 64 MB of nothing in 64 kB.
  const bomb = zlibSync(new Uint8Array(64_000_000), { level: 9 });
  const unpackedBytes = 9 * 14;

  it("refuses a picture that unpacks to more than its size says", async () => {
    expect(await codeOf(pngWith(bomb))).toBe("file.impossibleSize");
    expect(await codeOf(pngWith(zlibSync(new Uint8Array(unpackedBytes + 1))))).toBe("file.impossibleSize");
  });

  it("refuses a picture that unpacks to less, with both counts", async () => {
    const refusal = await refusalOf(pngWith(zlibSync(new Uint8Array(unpackedBytes - 1))));
    expect(refusal.code).toBe("file.truncated");
    expect(refusal.facts).toMatchObject({ expectedBytes: unpackedBytes, foundBytes: unpackedBytes - 1 });
  });

  it("refuses packed data that break off", async () => {
    const noise = Uint8Array.from({ length: unpackedBytes }, (_, at) => (at % 14 === 0 ? 0 : (at * 197) % 251));
    const packed = zlibSync(noise);
    expect(await codeOf(pngWith(packed.subarray(0, 60)))).toMatch(/file\.(truncated|damaged)/);
    expect((await decodeFilm(pngWith(packed), "film.png")).columns).toBe(13);
  });

  it("never unpacks a colour profile or a text", async () => {
    const profile = Uint8Array.from([0x61, 0, 0, ...bomb]);
    const film = await decodeFilm(
      pngWith(zlibSync(new Uint8Array(unpackedBytes)), pngChunk("iCCP", profile), pngChunk("zTXt", profile)),
      "film.png",
    );
    expect(film.samples.every((value) => value === 0)).toBe(true);
  });

  it("refuses data that are no packed data, an unknown row filter, and a check sum that does not fit", async () => {
    expect(await codeOf(pngWith(Uint8Array.of(1, 2, 3, 4)))).toBe("file.damaged");
    expect(await codeOf(pngWith(zlibSync(new Uint8Array(unpackedBytes).fill(9))))).toBe("file.damaged");
    const whole = pngWith(zlibSync(new Uint8Array(unpackedBytes)));
    const sum = whole.length - 12 - 1;
    whole[sum] = (whole[sum] ?? 0) ^ 1;
    expect(await codeOf(whole)).toBe("file.damaged");
  });

  it("refuses a header that no PNG has, and what it can't read of interlaced files", async () => {
    const header = (...end: number[]) => pngChunk("IHDR", Uint8Array.of(0, 0, 0, 13, 0, 0, 0, 9, ...end));
    const made = (...end: number[]) =>
      pngOf([header(...end), pngChunk("IDAT", bomb), pngChunk("IEND", new Uint8Array(0))]);
    expect(await codeOf(made(3, 0, 0, 0, 0))).toBe("file.damaged");
    expect(await codeOf(made(8, 1, 0, 0, 0))).toBe("file.damaged");
    expect(await codeOf(made(8, 0, 1, 0, 0))).toBe("file.damaged");
    expect(await codeOf(made(8, 0, 0, 0))).toBe("file.damaged");
    expect(await codeOf(made(4, 0, 0, 0, 1))).toBe("file.unsupported");
  });
});

describe("decodeFilm on JPEG", () => {
  const codec = "../../node_modules/@cornerstonejs/codec-libjpeg-turbo-8bit/dist/libjpegturbowasm_decode.wasm";
  const codecFile = new URL(codec, import.meta.url);
  const known = (column: number, row: number) => (column < 12 && row < 8 ? 250 : 40 + 3 * column + row);

  // At quality 100 the quantisation step is 1, which leaves at most 2 grey levels of rounding.
  it.each([1, 2, 3, 4, 5, 6, 7, 8])("turns orientation %i upright", async (orientation) => {
    const film = await decodeFilm(sample(`jpeg/orientation-${orientation}.jpg`), "o.jpg");
    expect([film.columns, film.rows]).toEqual([48, 32]);
    expect(film.technical.orientationApplied).toBe(orientation === 1 ? undefined : orientation);
    film.samples.forEach((value, index) => {
      expect(Math.abs(value - known(index % 48, Math.floor(index / 48)))).toBeLessThanOrEqual(2);
    });
  });

  it("says that a JPEG lost something, and whether it was colour", async () => {
    const grey = await decodeFilm(sample("jpeg/grey.jpg"), "grey.jpg");
    const colour = await decodeFilm(sample("jpeg/colour.jpg"), "colour.jpg");
    expect(grey.technical).toEqual({ sourceFormat: "jpeg", lossy: true, wasColour: false });
    expect(colour.technical).toEqual({ sourceFormat: "jpeg", lossy: true, wasColour: true });
  });

  it("loads the codec's WebAssembly from where it is told to", async () => {
    // A codec that was loaded before would not ask again.
    vi.resetModules();
    const { unpackWithCodec } = await import("./wasm-codec.ts");
    let asked = 0;
    const load = async () => {
      asked += 1;
      return new Uint8Array(readFileSync(codecFile));
    };
    const packed = { codec: "jpeg", bytes: sample("jpeg/grey.jpg"), loadCodec: load } as const;
    const { columns, rows, components } = await unpackWithCodec(packed);
    expect({ columns, rows, components, asked }).toEqual({ columns: 48, rows: 32, components: 1, asked: 1 });
  });

  const decodeJpegAfresh = async (loadCodec: () => Promise<Uint8Array>) => {
    vi.resetModules();
    const fresh = await import("./decode-film.ts");
    return fresh.decodeFilm(sample("jpeg/grey.jpg"), "grey.jpg", { loadCodec });
  };

  it("does not blame the film when the codec can't be loaded, and tries again the next time", async () => {
    const failed = await decodeJpegAfresh(() => Promise.reject(new Error("offline"))).catch((error) => error);
    expect(failed).toMatchObject({ code: "file.unsupported" });
    expect(failed.message).toContain("could not be loaded");
    let asked = 0;
    const failsOnce = async () => {
      asked += 1;
      if (asked === 1) throw new Error("offline");
      return new Uint8Array(readFileSync(codecFile));
    };
    await expect(decodeJpegAfresh(failsOnce)).rejects.toThrow("could not be loaded");
    const { decodeFilm: again } = await import("./decode-film.ts");
    expect((await again(sample("jpeg/grey.jpg"), "grey.jpg", { loadCodec: failsOnce })).columns).toBe(48);
  });

  it("refuses arithmetic coding by name", async () => {
    const refusal = await refusalOf(sample("jpeg/grey-arithmetic.jpg"));
    expect(refusal.code).toBe("file.unsupported");
    expect(refusal.message).toContain("arithmetic");
  });
});

describe("decodeFilm refuses", () => {
  const changed = (name: string, at: number, ...bytes: number[]): Uint8Array => {
    const copy = sample(name);
    copy.set(bytes, at);
    return copy;
  };
  const startOfFrame = (name: string): number => {
    const bytes = sample(name);
    return bytes.findIndex((byte, at) => byte === 0xff && bytes[at + 1] === 0xc0);
  };
  const frame = startOfFrame("jpeg/grey.jpg");

  it.each<[string, Uint8Array, string]>([
    ["an empty file", new Uint8Array(0), "an empty file"],
    ["a text", new TextEncoder().encode("Dear colleague, I refer this tooth"), "a plain text"],
    ["a PDF", new TextEncoder().encode("%PDF-1.7\n\u0001"), "a PDF document"],
    ["an archive", Uint8Array.of(0x50, 0x4b, 3, 4, 0, 0), "a ZIP archive"],
    ["unknown bytes", Uint8Array.of(1, 2, 3, 255), "it begins 01 02 03 ff"],
  ])("%s, and says what it looks like", async (_, bytes, looksLike) => {
    const refusal = await refusalOf(bytes);
    expect(refusal.code).toBe("file.notImage");
    expect(refusal.message).toContain("Cannot read film.bin: ");
    expect(refusal.message).toContain(looksLike);
  });

  it.each<[string, number[]]>([
    ["GIF", [0x47, 0x49, 0x46, 0x38, 0x39, 0x61]],
    ["TIFF with places of 64 bits", [0x49, 0x49, 0x2b, 0, 8, 0, 0, 0]],
    ["TIFF with places of 64 bits", [0x4d, 0x4d, 0, 0x2b, 0, 8, 0, 0]],
    ["WebP", [0x52, 0x49, 0x46, 0x46, 0, 0, 0, 0, 0x57, 0x45, 0x42, 0x50]],
  ])("a %s as one that is not read", async (kind, bytes) => {
    const refusal = await refusalOf(Uint8Array.from(bytes));
    expect(refusal.code).toBe("file.unsupported");
    expect(refusal.message).toContain(kind);
  });

  it("a DICOM file that breaks off, with both counts of bytes", async () => {
    const refusal = await refusalOf(sample("dicom-mit/MR_truncated.dcm"));
    expect(refusal.code).toBe("file.truncated");
    expect(refusal.facts).toMatchObject({ expectedBytes: 8192, foundBytes: 8130 });
  });

  it("a PNG that breaks off, with both counts of bytes", async () => {
    const whole = sample("png/grey-16.png");
    const refusal = await refusalOf(whole.subarray(0, whole.length - 20));
    expect(refusal.code).toBe("file.truncated");
    expect(refusal.facts.foundBytes).toBe(whole.length - 20);
    expect(Number(refusal.facts.expectedBytes)).toBeGreaterThan(whole.length - 20);
  });

  it("a JPEG that breaks off", async () => {
    const whole = sample("jpeg/grey.jpg");
    expect(await codeOf(whole.subarray(0, whole.length - 30))).toBe("file.truncated");
  });

  it("sizes of 0, of too long a side and of too many pixels, from the header alone", async () => {
    // Columns of a PNG stand in bytes 16 to 19, rows in 20 to 23; rows of a JPEG three bytes behind its frame's length.
    expect(await codeOf(changed("png/grey-8.png", 16, 0, 0, 0, 0))).toBe("file.impossibleSize");
    expect(await codeOf(changed("png/grey-8.png", 16, 0, 0, 0x4e, 0x21))).toBe("file.impossibleSize");
    expect(await codeOf(changed("png/grey-8.png", 16, 0, 0, 0x40, 0, 0, 0, 0x40, 0))).toBe("file.impossibleSize");
    expect(await codeOf(changed("jpeg/grey.jpg", frame + 5, 0, 0))).toBe("file.impossibleSize");
    expect(await codeOf(changed("jpeg/grey.jpg", frame + 5, 0xff, 0xff))).toBe("file.impossibleSize");
  });

  it("a baseline JPEG of 12 bits, which can't be, and one of four components", async () => {
    expect(await codeOf(changed("jpeg/grey.jpg", frame + 4, 12))).toBe("file.unsupported");
    expect(await codeOf(changed("jpeg/grey.jpg", frame + 9, 4))).toBe("file.unsupported");
  });

  it("a file beyond the limit, before looking into it", async () => {
    const refusal = await refusalOf(sample("png/grey-16.png"), { maxBytes: 100 });
    expect(refusal.code).toBe("file.tooLarge");
    expect(refusal.facts.limit).toBe(100);
  });

  it("a deflated DICOM file that unpacks beyond the limit", async () => {
    expect(await codeOf(sample("dicom-synthetic/io_deflated.dcm"), { maxBytes: 20_000 })).toBe("file.tooLarge");
  });

  it("a JPEG spread over more scans than any film", async () => {
    const bytes = sample("jpeg/grey.jpg");
    const scan = bytes.findIndex((byte, at) => byte === 0xff && bytes[at + 1] === 0xda);
    const scans = Array.from({ length: 101 }, () => [...bytes.subarray(scan, bytes.length - 2)]).flat();
    const many = Uint8Array.from([...bytes.subarray(0, scan), ...scans, 0xff, 0xd9]);
    const refusal = await refusalOf(many);
    expect(refusal.code).toBe("file.unsupported");
    expect(refusal.message).toContain("101 scans");
  });

  it("a JPEG without a frame", async () => {
    expect(await codeOf(Uint8Array.of(0xff, 0xd8, 0xff, 0xd9))).toBe("file.damaged");
  });

  it("a film beyond smaller limits of side and pixels", async () => {
    expect(await codeOf(sample("dicom-mit/CT_small.dcm"), { maxSide: 127 })).toBe("file.impossibleSize");
    expect(await codeOf(sample("dicom-mit/CT_small.dcm"), { maxPixels: 128 * 128 - 1 })).toBe("file.impossibleSize");
  });
});

describe("decodeFilm on damaged files", () => {
  const folders = ["bmp", "dicom-jpeg", "dicom-mit", "dicom-synthetic", "jpeg", "png", "tiff"];
  const names = folders.flatMap((folder) =>
    readdirSync(new URL(`${folder}/`, samples))
      .filter((name) => /\.(bmp|dcm|jpg|png|tif)$/.test(name))
      .map((name) => `${folder}/${name}`),
  );
  // `CANALOG_SOAK_FILMS=20 npx vitest run src/imaging/decode-film` tries twenty times as many, and others.
  const soak = Number(process.env.CANALOG_SOAK_FILMS ?? 1);
  const seed = 20_260_101 + (soak === 1 ? 0 : soak);
  const most = { maxPixels: 2_000_000, maxBytes: 64_000_000 };

  /** Reads what may be anything: a whole film or a refusal, and nothing else. */
  async function expectFilmOrRefusal(bytes: Uint8Array): Promise<void> {
    const outcome: FilmPixels | Refusal = await decodeFilm(bytes, "film.bin", most).catch((error) => {
      if (error instanceof Refusal) return error;
      throw error;
    });
    if (outcome instanceof Refusal) expect(outcome.code).toMatch(/^file\./);
    else {
      expect(outcome.samples).toHaveLength(outcome.columns * outcome.rows);
      expect(outcome.samples.every((value) => value < 2 ** outcome.bitsStored)).toBe(true);
    }
  }

  it.each(names)(
    "reads or refuses %s cut anywhere",
    async (name) => {
      const whole = sample(name);
      const cut = fc.integer({ min: 0, max: whole.length - 1 });
      // Most cuts fall into the picture; the headers are short and deserve as many.
      const cuts = fc.oneof(cut, fc.integer({ min: 0, max: Math.min(whole.length, 2_000) - 1 }));
      await fc.assert(
        fc.asyncProperty(cuts, (length) => expectFilmOrRefusal(whole.subarray(0, length))),
        { numRuns: 6 * soak, seed },
      );
    },
    60_000 * soak,
  );

  it.each(names)(
    "reads or refuses %s with bytes changed anywhere",
    async (name) => {
      const whole = sample(name);
      const at = fc.oneof(
        fc.integer({ min: 0, max: whole.length - 1 }),
        fc.integer({ min: 0, max: Math.min(whole.length, 2_000) - 1 }),
      );
      const changes = fc.array(fc.record({ at, byte: fc.integer({ min: 0, max: 255 }) }), {
        minLength: 1,
        maxLength: 4,
      });
      await fc.assert(
        fc.asyncProperty(changes, async (list) => {
          const copy = whole.slice();
          for (const { at: place, byte } of list) copy[place] = byte;
          await expectFilmOrRefusal(copy);
        }),
        { numRuns: 12 * soak, seed },
      );
    },
    60_000 * soak,
  );

  it("never took more memory than a few films of the limit, all of them together", () => {
    // Node and the codecs take 400 MB as they are; a film of 64 MB may be held three times over.
    expect(process.resourceUsage().maxRSS * 1024).toBeLessThan(1_000_000_000);
  });

  it("still reads a whole JPEG after a damaged one", async () => {
    const whole = sample("jpeg/grey.jpg");
    const before = await decodeFilm(whole, "grey.jpg");
    const damaged = whole.slice();
    damaged.fill(0xaa, 30, 60);
    await decodeFilm(damaged, "damaged.jpg").catch(() => undefined);
    expect(await decodeFilm(whole, "grey.jpg")).toEqual(before);
  });
});
