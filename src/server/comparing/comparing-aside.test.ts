import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { build } from "vite";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { boneLike, type FilmMaking, filmOf } from "../../../test/bone-like-film.ts";
import { encodePng16 } from "../../imaging/encode-png16.ts";
import { comparingAside } from "./comparing-aside.ts";
import { comparingHere } from "./comparing-here.ts";

const folder = resolve(`node_modules/.cache/comparing-worker-${process.pid}`);
let program: string;

/** The thread's program as the build makes it. */
async function built(): Promise<string> {
  const output = { entryFileNames: "comparing-worker.mjs" };
  const ssr = resolve("src/server/comparing/comparing-worker.ts");
  await build({
    configFile: false,
    logLevel: "silent",
    build: { ssr, outDir: folder, emptyOutDir: false, rolldownOptions: { output } },
  });
  return join(folder, "comparing-worker.mjs");
}
beforeAll(async () => {
  mkdirSync(folder, { recursive: true });
  program = await built();
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const [columns, rows] = [300, 260];
function file(making: Partial<FilmMaking>): Uint8Array {
  const { grey } = filmOf(boneLike(11), { columns, rows, noise: 0.01, ...making });
  const samples = Uint16Array.from(grey, (share) => Math.round(4095 * share));
  const technical = { sourceFormat: "png", wasColour: false, lossy: false } as const;
  return encodePng16({ columns, rows, bitsStored: 12, samples, photometric: "MONOCHROME2", technical });
}
const landmarks = [
  [60, 50],
  [240, 60],
  [230, 200],
  [50, 190],
].map((place) => ({ before: place, after: place }));
const asked = { input: { landmarks, sigmaPx: 1 }, before: file({ seed: 1 }), after: file({ seed: 2 }) };
const never = new AbortController().signal;
const script = (name: string, text: string): string => {
  writeFileSync(join(folder, name), text);
  return join(folder, name);
};

describe("films compared in a thread aside", () => {
  it("come out as they do here, with their pictures, one pair after the other", async () => {
    const said: string[] = [];
    const aside = comparingAside(program);
    const tell = (_fraction: number, says: string) => said.push(says);
    const [one, two] = await Promise.all([aside(asked, tell, never), aside(asked, () => undefined, never)]);
    const here = await comparingHere(asked, () => undefined, never);
    expect(one.outcome).toEqual(here.outcome);
    expect(two.outcome).toEqual(here.outcome);
    for (const name of ["aligned", "difference"] as const)
      expect(Buffer.from(one.pictures[name] ?? []).equals(Buffer.from(here.pictures[name] ?? [0]))).toBe(true);
    expect(said).toEqual([
      "Reading the first film",
      "Reading the second film",
      "Bringing the films together",
      "Drawing what changed",
    ]);
  });

  it("are refused in the words of the reader where a file is none", async () => {
    const broken = comparingAside(program)({ ...asked, after: Uint8Array.of(1, 2, 3) }, () => undefined, never);
    await expect(broken).rejects.toMatchObject({ code: expect.stringMatching(/^file\./) });
  });

  it("end at once where they are stopped, before or while they are computed", async () => {
    const waiting = comparingAside(script("waiting.mjs", "setInterval(() => undefined, 1000);"));
    const stop = new AbortController();
    const stopped = waiting(asked, () => undefined, stop.signal);
    const behind = waiting(asked, () => undefined, stop.signal);
    stop.abort(new Error("asked to stop"));
    await expect(stopped).rejects.toThrow("asked to stop");
    await expect(behind).rejects.toThrow("asked to stop");
  });

  it.each([
    ["ends", "process.exit(0);", /ended over these films/],
    ["breaks", 'throw new Error("out of hand");', /ended over these films/],
    ["never answers", "setInterval(() => undefined, 1000);", /took too long/],
  ])("that %s is told in words, and the next is compared", async (name, text, says) => {
    const aside = comparingAside(script(`${name.replaceAll(" ", "-")}.mjs`, text), 400);
    for (const _time of [1, 2])
      await expect(aside(asked, () => undefined, never)).rejects.toMatchObject({
        code: "file.tooLarge",
        message: expect.stringMatching(says),
      });
  });
});
