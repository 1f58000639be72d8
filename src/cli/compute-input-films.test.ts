import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, it } from "vitest";
import { z } from "zod";
import { encodePng16 } from "../imaging/encode-png16.ts";
import type { FilmPixels } from "../imaging/film-pixels.ts";
import { type ComputeAsked, compute } from "./compute.ts";

const folder = mkdtempSync(join(tmpdir(), "canalog-films-"));
afterAll(() => rmSync(folder, { recursive: true }));

async function run(asked: ComputeAsked, input: unknown) {
  const written = { stdout: "", stderr: "" };
  const into = (name: "stdout" | "stderr") => ({
    write: (text: string) => {
      written[name] += text;
    },
  });
  async function* stdin() {
    yield JSON.stringify(input);
  }
  const exitCode = await compute(asked, { stdin: stdin(), stdout: into("stdout"), stderr: into("stderr") });
  return { exitCode, ...written };
}

/** A film of even grey with a line along an arc of 100 px about the first pixel, `deep` grey levels off. */
function arcFilm(name: string, deep: number): string {
  const [columns, rows] = [160, 140];
  const samples = Uint16Array.from({ length: columns * rows }, (_, index) => {
    const away = Math.hypot(index % columns, Math.floor(index / columns)) - 100;
    return Math.round(2000 - deep * Math.exp(-(away * away) / 18));
  });
  const technical = { sourceFormat: "png", wasColour: false, lossy: false } as const;
  const film: FilmPixels = { columns, rows, bitsStored: 12, samples, photometric: "MONOCHROME2", technical };
  const path = join(folder, name);
  writeFileSync(path, encodePng16(film));
  return path;
}

const course = z.object({ points: z.array(z.tuple([z.number(), z.number()])), cost: z.number() });
const arc = { from: [100, 0], to: [0, 100] };

describe("canalog compute trace", () => {
  it.each([
    ["dark", 600, {}],
    ["bright", -600, { polarity: "bright" }],
  ])("reads the film and follows its %s line within a pixel", async (name, deep, polarity) => {
    const film = arcFilm(`${name}.png`, deep);
    const { exitCode, stdout, stderr } = await run({ topic: "trace" }, { film, ...arc, ...polarity });
    expect({ exitCode, stderr }).toEqual({ exitCode: 0, stderr: "" });
    const { points } = course.parse(JSON.parse(stdout));
    for (const [u, v] of points) expect(Math.abs(Math.hypot(u, v) - 100)).toBeLessThan(1);
    expect(points.at(-1)).toEqual([0, 100]);
  });

  it("told to follow bright lines, does not follow the dark one", async () => {
    const film = arcFilm("dark.png", 600);
    const dark = course.parse(JSON.parse((await run({ topic: "trace" }, { film, ...arc })).stdout));
    const bright = course.parse(
      JSON.parse((await run({ topic: "trace" }, { film, ...arc, polarity: "bright" })).stdout),
    );
    const farthest = Math.max(...bright.points.map(([u, v]) => Math.abs(Math.hypot(u, v) - 100)));
    expect(farthest).toBeGreaterThan(3);
    expect(bright.cost).toBeGreaterThan(1.5 * dark.cost);
  });

  it("publishes the shell's form: a film's name, no picture of costs", async () => {
    const { input, output } = JSON.parse((await run({ topic: "trace", schema: true }, null)).stdout);
    expect(Object.keys(input.properties)).toEqual(["film", "from", "to", "via", "polarity"]);
    expect(input.required).toEqual(["film", "from", "to"]);
    expect(Object.keys(output.properties)).toEqual(expect.arrayContaining(["points", "cost", "basis"]));
  });

  it("refuses a film that is not there, a file that is none, and what is wrong in the input", async () => {
    const nowhere = join(folder, "nowhere.png");
    expect(await run({ topic: "trace" }, { film: nowhere, ...arc })).toMatchObject({
      exitCode: 2,
      stdout: "",
      stderr: expect.stringMatching(/^film: .* is not there/),
    });
    expect(await run({ topic: "trace" }, { film: folder, ...arc })).toMatchObject({ exitCode: 2, stdout: "" });
    const text = fileURLToPath(import.meta.url);
    expect(await run({ topic: "trace" }, { film: text, ...arc })).toMatchObject({
      exitCode: 2,
      stderr: expect.stringContaining("is not a picture"),
    });
    const { stderr } = await run({ topic: "trace" }, { film: 3, from: [1], to: [0, 1], polarity: "grey" });
    expect(
      stderr
        .trimEnd()
        .split("\n")
        .map((line) => line.split(":")[0]),
    ).toEqual(["film", "from", "polarity"]);
    const film = arcFilm("dark.png", 600);
    expect((await run({ topic: "trace" }, { film, ...arc, via: [[500, 3]] })).stderr).toMatch(/^via\[0\]: \[500,3\]/);
  });
});
