import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { build } from "vite";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { decodeFilm } from "../imaging/decode-film.ts";
import { filmWorkHere } from "./film-work.ts";
import { filmWorkAside } from "./film-work-aside.ts";

const sample = (name: string) => new Uint8Array(readFileSync(`data/samples/${name}`));
const folder = resolve(`node_modules/.cache/film-worker-${process.pid}`);
const patient = { workMs: 60_000, idleMs: 5, heapMb: 512 };
const small = { workMs: 60_000, idleMs: 60_000, heapMb: 24 };

/** The thread's program as the build makes it. */
async function built(): Promise<string> {
  const output = { entryFileNames: "film-worker.mjs" };
  const ssr = resolve("src/server/film-worker.ts");
  const options = { ssr, outDir: folder, emptyOutDir: false, rollupOptions: { output } };
  await build({ configFile: false, logLevel: "silent", build: options });
  return join(folder, "film-worker.mjs");
}

/** A program that does what the first byte it is given says, and answers with the number of the thread it runs in. */
function unruly(): string {
  const file = join(folder, "unruly.mjs");
  writeFileSync(
    file,
    `import { parentPort, threadId } from "node:worker_threads";
    parentPort.on("message", ({ bytes: [first] }) => {
      if (first === 1) process.exit(1);
      if (first === 2) throw new Error("out of hand");
      if (first === 3) return;
      if (first === 4) for (let kept; ; ) kept = { kept };
      parentPort.postMessage({ is: "preview", png: Uint8Array.of(threadId) });
    });`,
  );
  return file;
}

let program: string;
beforeAll(async () => {
  mkdirSync(folder, { recursive: true });
  program = await built();
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("film work aside", () => {
  it.each(["dicom-synthetic/io_j2k_lossless.dcm", "jpeg/grey.jpg", "png/grey-16.png", "dicom-jpeg/ls-rgb.dcm"])(
    "prepares %s as it is prepared here, several at once",
    async (name) => {
      const aside = filmWorkAside(program, patient);
      const wanted = { name, invert: true, part: { column: 2, columns: 6 } };
      const [here, there, again] = await Promise.all(
        [filmWorkHere, aside, aside].map((work) => work.prepare(sample(name), wanted)),
      );
      expect(there).toEqual(here);
      expect(again).toEqual(here);
      expect(there?.part).toMatchObject({ column: 2, row: 0, columns: 6 });
      const kept = await decodeFilm(there?.png ?? new Uint8Array(0), "kept.png");
      expect([kept.columns, kept.rows]).toEqual([6, there?.film.rows]);
      await aside.close();
    },
  );

  it("makes a preview as it is made here", async () => {
    const aside = filmWorkAside(program, patient);
    const png = sample("png/grey-16.png");
    expect(await aside.preview(png, 9)).toEqual(await filmWorkHere.preview(png, 9));
    await aside.close();
  });

  it("refuses in the same words, and reads the next film", async () => {
    const aside = filmWorkAside(program, patient);
    const broken = sample("dicom-mit/MR_truncated.dcm");
    const [here, there] = await Promise.all(
      [filmWorkHere, aside].map((work) => work.prepare(broken, { name: "cut.dcm" }).catch((error: unknown) => error)),
    );
    expect(there).toMatchObject({ code: "file.truncated", facts: { expectedBytes: 8192, foundBytes: 8130 } });
    expect(String(there)).toBe(String(here));
    expect((await aside.prepare(sample("png/grey-16.png"), { name: "a.png" })).film.columns).toBe(13);
    await aside.close();
  });
});

describe("a thread that gets out of hand", () => {
  const ask = (aside: ReturnType<typeof filmWorkAside>, first: number) => aside.preview(Uint8Array.of(first), 9);

  it.each([
    ["ends itself", 1],
    ["throws", 2],
    ["never answers", 3],
    ["fills its memory", 4],
  ])("that %s loses its film alone: the next is read by a fresh one", async (_, first) => {
    const aside = filmWorkAside(unruly(), first === 3 ? { ...small, workMs: 1_000 } : small);
    const [before] = await ask(aside, 0);
    const [lost, next] = await Promise.all([ask(aside, first).catch((error: unknown) => error), ask(aside, 0)]);
    expect(lost).toMatchObject({
      code: "file.tooLarge",
      message: expect.stringContaining("Cannot read the kept film"),
    });
    expect(next[0]).not.toBe(before);
    await aside.close();
  });

  it("is kept while films follow each other, and ended when none comes", async () => {
    const aside = filmWorkAside(unruly(), { ...small, idleMs: 100 });
    const [first, second] = [await ask(aside, 0), await ask(aside, 0)];
    expect(second).toEqual(first);
    await new Promise((resolve) => setTimeout(resolve, 400));
    expect(await ask(aside, 0)).not.toEqual(first);
    await aside.close();
  });
});
