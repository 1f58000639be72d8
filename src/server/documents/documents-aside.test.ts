import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { build } from "vite";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { sampleFilmBytes, sampleSource } from "../../../test/sample-case.ts";
import { Refusal } from "../../core/refusal.ts";
import { handout } from "../../pages/handout.ts";
import { documentsAside, documentsHere } from "./documents-aside.ts";

const folder = resolve(`node_modules/.cache/document-worker-${process.pid}`);
let program: string;

/** The thread's program as the build makes it. */
async function built(): Promise<string> {
  const output = { entryFileNames: "document-worker.mjs" };
  const ssr = resolve("src/server/documents/document-worker.ts");
  await build({
    configFile: false,
    logLevel: "silent",
    build: { ssr, outDir: folder, emptyOutDir: false, rolldownOptions: { output } },
  });
  return join(folder, "document-worker.mjs");
}

beforeAll(async () => {
  mkdirSync(folder, { recursive: true });
  program = await built();
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const model = handout(sampleSource());
const hashes: string[] = [];
const place = {
  fontsFolder: resolve("data/fonts"),
  readFilm: async (hash: string) => {
    hashes.push(hash);
    return sampleFilmBytes();
  },
};
const script = (name: string, text: string): string => {
  writeFileSync(join(folder, name), text);
  return join(folder, name);
};

describe("a document made aside", () => {
  it("is the one made here, with the films that its thread asked for and its progress told", async () => {
    const said: string[] = [];
    const aside = await documentsAside(program).make(model, place, (_fraction, says) => said.push(says));
    expect(hashes).toEqual(["ab".repeat(32)]);
    expect(said.at(-1)).toBe("Setting the hand-out");
    const here = await documentsHere.make(model, place, () => undefined);
    expect(Buffer.from(aside).equals(here)).toBe(true);
  });

  it("refuses in the words of the reader where a film can't be read", async () => {
    const missing = async () => {
      throw new Refusal("record.notFound", "Cannot open the film: it is not there");
    };
    const made = documentsAside(program).make(model, { ...place, readFilm: missing }, () => undefined);
    await expect(made).rejects.toMatchObject({ code: "record.notFound" });
  });

  it("says so where its thread breaks or ends, and makes the next one in a new thread", async () => {
    const broken = documentsAside(script("broken.mjs", 'throw new Error("out of hand");'));
    await expect(broken.make(model, place, () => undefined)).rejects.toMatchObject({
      code: "export.failed",
      message: "Cannot make the handout: out of hand; nothing was kept, try again",
    });
    const ended = documentsAside(script("ended.mjs", ""));
    for (const _time of [1, 2])
      await expect(ended.make(model, place, () => undefined)).rejects.toMatchObject({ code: "export.failed" });
  });

  it("is ended with the program", async () => {
    const waiting = documentsAside(script("waiting.mjs", "setInterval(() => undefined, 1000);"));
    const made = waiting.make(model, place, () => undefined);
    await waiting.close();
    await expect(made).rejects.toMatchObject({ code: "export.failed" });
  });
});
