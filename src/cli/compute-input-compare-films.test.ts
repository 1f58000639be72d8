import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { boneLike, filmOf } from "../../test/bone-like-film.ts";
import type { Homography } from "../core/radiograph/compare-films/homography.ts";
import { decodeFilm } from "../imaging/decode-film.ts";
import { encodePng16 } from "../imaging/encode-png16.ts";
import type { FilmPixels } from "../imaging/film-pixels.ts";
import { compute } from "./compute.ts";

const folder = mkdtempSync(join(tmpdir(), "canalog-compare-"));
afterAll(() => rmSync(folder, { recursive: true }));

const [columns, rows] = [300, 220];
const bone = boneLike(4);
const shift: Homography = [1, 0, 6, 0, 1, -3, 0, 0, 1];

/** Writes a film of the bone, with a round place made brighter by `more`. */
function filmFile(name: string, change: { map?: Homography; more?: number; photometric?: FilmPixels["photometric"] }) {
  const { map, more = 0, photometric = "MONOCHROME2" } = change;
  const picture = (u: number, v: number) => bone(u, v) + (Math.hypot(u - 150, v - 110) < 15 ? more : 0);
  const { grey } = filmOf(picture, { columns, rows, ...(map === undefined ? {} : { map }) });
  const samples = Uint16Array.from(grey, (one) => Math.round(4095 * one));
  const technical = { sourceFormat: "png", wasColour: false, lossy: false } as const;
  const path = join(folder, name);
  writeFileSync(path, encodePng16({ columns, rows, bitsStored: 12, samples, photometric, technical }));
  return path;
}

async function run(input: unknown, schema = false) {
  const written = { stdout: "", stderr: "" };
  const into = (name: "stdout" | "stderr") => ({
    write: (text: string) => {
      written[name] += text;
    },
  });
  async function* stdin() {
    yield JSON.stringify(input);
  }
  const streams = { stdin: stdin(), stdout: into("stdout"), stderr: into("stderr") };
  return { exitCode: await compute({ topic: "compareFilms", schema }, streams), ...written };
}

const before = { film: filmFile("before.png", {}) };
const after = { film: filmFile("after.png", { map: shift, more: 0.1 }) };
const landmarks = [
  [60, 50],
  [240, 60],
  [230, 170],
  [50, 160],
].map(([u = 0, v = 0]) => ({ before: [u, v], after: [u + 6, v - 3] }));
const write = join(folder, "difference.png");

describe("canalog compute compareFilms", () => {
  it("reads both films, gives the transform and writes the difference: middle grey but where something changed", async () => {
    const { exitCode, stdout, stderr } = await run({ before, after, landmarks, write });
    expect({ exitCode, stderr }).toEqual({ exitCode: 0, stderr: "" });
    const told = JSON.parse(stdout);
    expect(told).toMatchObject({ comparable: true, written: write });
    expect(told.transform.flat().map((one: number, at: number) => one - (shift[at] ?? 0))).toEqual(
      shift.map(() => expect.closeTo(0, 1)),
    );
    expect(told).not.toHaveProperty("difference");
    const picture = await decodeFilm(readFileSync(write), "difference.png");
    expect([picture.columns, picture.rows, picture.bitsStored]).toEqual([columns, rows, 16]);
    const at = (u: number, v: number) => (picture.samples[v * columns + u] ?? 0) / 65_535 - 0.5;
    // A difference of d is half of it off the middle.
    expect(at(150, 110)).toBeCloseTo(0.05, 1);
    expect(at(150, 110)).toBeGreaterThan(0.035);
    expect(Math.abs(at(60, 50))).toBeLessThan(0.005);
  });

  it("without a file to write gives the rest", async () => {
    const told = JSON.parse((await run({ before, after, landmarks })).stdout);
    expect(told).not.toHaveProperty("written");
    expect(told.differenceSigma).toBeGreaterThan(0);
    expect(told.notComputed.map(({ name }: { name: string }) => name)).toContain("difference");
  });

  it("publishes the shell's form", async () => {
    const { input, output } = JSON.parse((await run(null, true)).stdout);
    expect(Object.keys(input.properties)).toEqual(expect.arrayContaining(["before", "after", "landmarks", "write"]));
    expect(input.properties.before.required).toEqual(["film"]);
    expect(input.properties).not.toHaveProperty("wantsDifference");
    expect(output.properties).not.toHaveProperty("difference");
    expect(output.properties).toHaveProperty("written");
  });

  it("refuses a film that is not there, and a folder that can't be written to", async () => {
    const nowhere = { film: join(folder, "nowhere.png") };
    expect(await run({ before, after: nowhere, landmarks })).toMatchObject({
      exitCode: 2,
      stdout: "",
      stderr: expect.stringMatching(/^after\.film: .* is not there/),
    });
    expect(await run({ before, after, landmarks, write: join(folder, "none", "x.png") })).toMatchObject({
      exitCode: 3,
      stdout: "",
      stderr: expect.stringMatching(/^write: .* can't be written/),
    });
    expect((await run({ before, after })).stderr).toMatch(/^landmarks: nothing stands/);
  });
});
