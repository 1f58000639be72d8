import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { canalog, newHome, randomPort, root, startServer } from "./canalog.ts";

const folder = mkdtempSync(join(tmpdir(), "canalog-start-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const curve = '{"points":[[0,0],[0,5],[0,10],[0.669873,12.5],[2.5,14.330127]]}';

describe("a start", () => {
  it("says where the first runs when there is a second, whose address opens too", async () => {
    const home = newHome("without the demo");
    const first = await startServer(home);
    const second = await canalog(home, ["serve"]);
    expect(second.code).toBe(0);
    const fresh = /runs already; a fresh address: (\S+)/.exec(second.out)?.[1] ?? "";
    expect(new URL(fresh).port).toBe(String(first.port));
    expect((await fetch(fresh, { redirect: "manual" })).headers.get("set-cookie")).toContain("HttpOnly");
    expect(await first.stop()).toBe(0);
  });

  it("takes the next port where the wanted one is in use", async () => {
    const port = randomPort();
    const other = createServer().listen(port, "127.0.0.1");
    await new Promise((done) => other.once("listening", done));
    const server = await startServer(newHome("without the demo"), port);
    expect(server.port).toBeGreaterThan(port);
    expect(await server.stop()).toBe(0);
    other.close();
  });

  it("lets a code open once, and answers nothing without its cookie or under another name", async () => {
    const server = await startServer(newHome("without the demo"));
    const here = `http://127.0.0.1:${server.port}`;
    const opened = await fetch(server.address, { redirect: "manual" });
    const cookie = opened.headers.get("set-cookie")?.split(";")[0] ?? "";
    expect((await fetch(server.address, { redirect: "manual" })).headers.has("set-cookie")).toBe(false);
    const status = async (headers: Record<string, string>) => (await fetch(`${here}/api/session`, { headers })).status;
    expect(await status({})).toBe(403);
    expect(await status({ cookie })).toBe(200);
    expect(await status({ cookie, origin: "http://elsewhere.example" })).toBe(403);
    expect(await status({ cookie: "canalog_session=guessed" })).toBe(403);
    expect(await server.stop()).toBe(0);
  });
});

describe("the commands", () => {
  it("name the data folder, compute, and tell a faulty input by its path", async () => {
    const home = newHome("without the demo");
    expect(await canalog(home, ["where"])).toMatchObject({ code: 0, out: `${home}\n` });
    const computed = await canalog(home, ["compute", "curvature"], curve);
    expect(computed.code).toBe(0);
    // 10 mm straight, then a sixth of a circle of radius 5: 10 + 5 pi / 3 along the arc; five points of it at hand.
    expect(JSON.parse(computed.out).lengthMm).toBeCloseTo(10 + (5 * Math.PI) / 3, 1);
    const faulty = await canalog(home, ["compute", "tooth"], '{"notation":"twoDigit","value":"19"}');
    expect(faulty).toMatchObject({ code: 2, out: "" });
    expect(faulty.errors).toMatch(/^value: /);
  });

  it("take a film in, make a document, check, back up and bring back all of it", { timeout: 120_000 }, async () => {
    const home = newHome("with the demo");
    const film = join(root, "data/samples/dicom-synthetic/io_rod.dcm");
    const taken = ["--case", "demo-b", "--taken-on", "2026-03-04", "--purpose", "recall"];
    expect(await canalog(home, ["import", film, ...taken])).toMatchObject({ code: 0 });
    const document = join(folder, "case-b.pptx");
    expect(await canalog(home, ["export", "demo-b", "--as", "deck", "--to", document])).toMatchObject({ code: 0 });
    // The first bytes of every zip archive, which a deck is.
    expect(readFileSync(document).subarray(0, 2).toString()).toBe("PK");

    expect(await check(home)).toMatchObject({
      code: 0,
      says: expect.stringMatching(/^Checked 24[0-9] cases .*: nothing wrong$/),
    });
    const kept = join(folder, "kept.canalog");
    expect(await canalog(home, ["backup", kept])).toMatchObject({ code: 0 });
    const other = join(folder, "brought-back");
    expect(await canalog(other, ["restore", kept])).toMatchObject({ code: 0 });
    expect(await check(other)).toMatchObject({
      code: 0,
      says: expect.stringMatching(/^Checked 24[0-9] cases .*: nothing wrong$/),
    });
    expect(await stateOf(other, "demo-b")).toEqual(await stateOf(home, "demo-b"));
  });

  it("refuse a film that is none, a backup that is none and a folder that is taken, each with its exit code", async () => {
    const home = newHome("without the demo");
    await (await startServer(home)).stop();
    const noFilm = join(folder, "no-film.png");
    writeFileSync(noFilm, "not a picture");
    const cannot = async (...args: string[]) => {
      const { code, out, errors } = await canalog(home, args);
      expect(errors).toMatch(/^Cannot /m);
      return { code, out };
    };
    const to = ["--case", "demo-b", "--taken-on", "2026-03-04"];
    expect(await cannot("import", noFilm, ...to)).toEqual({ code: 2, out: "" });
    expect(await cannot("import", join(folder, "gone.png"), ...to)).toEqual({ code: 2, out: "" });
    expect(await cannot("restore", noFilm)).toEqual({ code: 2, out: "" });
    expect(await cannot("export", "demo-b", "--as", "deck")).toEqual({ code: 2, out: "" });
    expect((await canalog(home, ["paint"])).code).toBe(2);
    const noCase = join(folder, "no-case.json");
    writeFileSync(noCase, "{not JSON");
    expect(await cannot("import", noCase)).toEqual({ code: 2, out: "" });
  });

  it("find nothing in order, and keep nothing, where there is no record", async () => {
    const nowhere = join(folder, "misspelt");
    for (const args of [
      ["check"],
      ["backup", join(folder, "of-nothing.canalog")],
      ["export", "demo-b", "--as", "deck"],
    ])
      expect(await canalog(nowhere, args)).toMatchObject({
        code: 2,
        errors: expect.stringMatching(/^Cannot .*no record/),
      });
    expect(existsSync(nowhere)).toBe(false);
  });
});

/** What `canalog check` ends with. */
async function check(home: string): Promise<{ code: number | null; says: string | undefined }> {
  const { code, errors } = await canalog(home, ["check"]);
  return { code, says: errors.trim().split("\n").at(-1) };
}

/** A case as a server on this folder gives it. */
async function stateOf(home: string, caseId: string): Promise<unknown> {
  const server = await startServer(home);
  const opened = await fetch(server.address, { redirect: "manual" });
  const cookie = opened.headers.get("set-cookie")?.split(";")[0] ?? "";
  const view = await (
    await fetch(`http://127.0.0.1:${server.port}/api/cases/${caseId}`, { headers: { cookie } })
  ).json();
  await server.stop();
  return view;
}
