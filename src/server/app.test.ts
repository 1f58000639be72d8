import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { host, type SampleBench, sampleBench } from "../../test/sample-bench.ts";
import { sampleParts } from "../../test/sample-case.ts";
import type { CaseView, FilmImported, RefusalView } from "./api.ts";
import { buildApp } from "./app.ts";
import { byteRoutes, replySchemas } from "./reply-schemas.ts";

let one: SampleBench;
beforeAll(async () => {
  one = await sampleBench();
});
afterAll(() => one.close());

const about = sampleParts()[0]?.body;
const newCase = async (): Promise<CaseView> =>
  (await one.ask({ method: "POST", url: "/api/cases", payload: { case: about } })).json<CaseView>();
const recall = sampleParts().find((part) => part.kind === "recall")?.body;
const gesture = (caseId: string, payload: object) =>
  one.ask({ method: "POST", url: `/api/cases/${caseId}/gestures`, payload });

describe("who may ask", () => {
  it("lets a one-time code in once, with a cookie that no script and no other site can read", async () => {
    const code = one.bench.sessions.newCode();
    const first = await one.app.inject({ url: `/open?code=${code}`, headers: { host } });
    expect(first.statusCode).toBe(303);
    expect(first.headers["set-cookie"]).toMatch(/^canalog_session=[\w-]{43}; Path=\/; HttpOnly; SameSite=Strict$/);
    const second = await one.app.inject({ url: `/open?code=${code}`, headers: { host } });
    expect(second.headers["set-cookie"]).toBeUndefined();
  });

  it.each([
    ["no session", { host }],
    ["a made-up session", { host, cookie: "canalog_session=made-up" }],
  ])("refuses %s", async (_what, headers) => {
    const reply = await one.app.inject({ url: "/api/cases", headers });
    expect([reply.statusCode, reply.json<RefusalView>().code]).toEqual([403, "server.forbidden"]);
  });

  it.each([
    ["a host that is not this machine", { host: "elsewhere.example:4270" }],
    ["a page of another origin", { origin: "http://elsewhere.example" }],
    ["a page of another site", { "sec-fetch-site": "cross-site" }],
  ])("refuses %s even with the session", async (_what, headers) => {
    const reply = await one.ask({ method: "POST", url: "/api/cases", payload: { case: about }, headers });
    expect([reply.statusCode, reply.json<RefusalView>().code]).toEqual([403, "server.forbidden"]);
  });

  it("sends a content security policy without inline code and no word that opens it to other origins", async () => {
    const reply = await one.ask({ url: "/api/cases" });
    expect(reply.headers["content-security-policy"]).toContain("script-src 'self' 'wasm-unsafe-eval'");
    expect(reply.headers["content-security-policy"]).not.toContain("unsafe-inline");
    expect(reply.headers["access-control-allow-origin"]).toBeUndefined();
    expect(reply.headers["cache-control"]).toBe("no-store");
  });

  it("gives a second start of the program a code for the key that lies in the data folder, and nobody else", async () => {
    const wrong = await one.app.inject({ method: "POST", url: "/door", headers: { host, "x-door-key": "wrong" } });
    expect(wrong.statusCode).toBe(403);
    const right = await one.app.inject({ method: "POST", url: "/door", headers: { host, "x-door-key": "door" } });
    expect(one.bench.sessions.redeem(right.json<{ code: string }>().code)).toBeDefined();
  });
});

describe("a case over the API", () => {
  it("is opened, changed, undone and redone, its state hash going back and forth with it", async () => {
    const opened = await newCase();
    expect(opened.ledger.map((entry) => entry.subject)).toEqual([
      "tooth of about",
      "difficulty of about",
      "plan of about",
    ]);
    const operations = [{ op: "put", id: "recall-1", kind: "recall", baseRevision: 0, body: recall }];
    const changed = (await gesture(opened.caseId, { words: "Recall recorded", operations })).json<CaseView>();
    expect(changed.facts.lastScore).toBe(3);
    expect(changed.undo?.words).toBe("Recall recorded");
    const undone = (await one.ask({ method: "POST", url: `/api/cases/${opened.caseId}/undo` })).json<CaseView>();
    expect(undone.stateHash).toBe(opened.stateHash);
    expect(undone.undo).toBeUndefined();
    const redone = (await one.ask({ method: "POST", url: `/api/cases/${opened.caseId}/redo` })).json<CaseView>();
    expect(redone.stateHash).toBe(changed.stateHash);
    const then = (await one.ask({ url: `/api/cases/${opened.caseId}/at/1` })).json<CaseView>();
    expect(then.stateHash).toBe(opened.stateHash);
    const lines = (await one.ask({ url: `/api/cases/${opened.caseId}/changes` })).json<{ words: string }[]>();
    expect(lines.length).toBe(4);
  });

  it("is read with the ledger that held then", async () => {
    const opened = await newCase();
    const operations = [{ op: "put", id: "about", kind: "case", baseRevision: 1, body: { ...about, tooth: "36" } }];
    const changed = (await gesture(opened.caseId, { words: "Tooth corrected", operations })).json<CaseView>();
    expect(changed.ledger).not.toEqual(opened.ledger);
    const then = (await one.ask({ url: `/api/cases/${opened.caseId}/at/1` })).json<CaseView>();
    expect(then.ledger).toEqual(opened.ledger);
  });

  it("takes nothing back that the person has not seen", async () => {
    const { caseId } = await newCase();
    const put = (baseRevision: number, note: string) =>
      gesture(caseId, {
        words: "Recall",
        operations: [{ op: "put", id: "recall-1", kind: "recall", baseRevision, body: { ...recall, note } }],
      });
    await put(0, "seen");
    await put(1, "not seen");
    const late = await one.ask({ method: "POST", url: `/api/cases/${caseId}/undo`, payload: { sequence: 2 } });
    expect([late.statusCode, late.json<RefusalView>().code]).toEqual([409, "record.conflict"]);
    const seen = await one.ask({ method: "POST", url: `/api/cases/${caseId}/undo`, payload: { sequence: 3 } });
    expect(seen.json<CaseView>().parts.find((part) => part.id === "recall-1")?.body).toMatchObject({ note: "seen" });
  });

  it("gives the second of two windows both versions, and keeps the first's", async () => {
    const { caseId } = await newCase();
    const put = (baseRevision: number, note: string) =>
      gesture(caseId, {
        words: "Recall",
        operations: [{ op: "put", id: "recall-1", kind: "recall", baseRevision, body: { ...recall, note } }],
      });
    await put(0, "first");
    await put(1, "second");
    const late = await put(1, "third");
    expect(late.statusCode).toBe(409);
    const { code, facts } = late.json<RefusalView>();
    expect(code).toBe("record.conflict");
    expect(facts.conflicts).toMatchObject([{ yours: { note: "third" }, theirs: { body: { note: "second" } } }]);
  });

  it("names every fault of a body by its path", async () => {
    const { caseId } = await newCase();
    const body = { ...recall, mobility: 9, colour: "red" };
    const reply = await gesture(caseId, {
      words: "Recall",
      operations: [{ op: "put", id: "recall-1", kind: "recall", baseRevision: 0, body }],
    });
    expect(reply.statusCode).toBe(400);
    expect(
      reply
        .json<RefusalView>()
        .faults.map((fault) => fault.path)
        .sort(),
    ).toEqual(["colour", "mobility"]);
  });

  it("is gone after removal", async () => {
    const { caseId } = await newCase();
    expect((await one.ask({ method: "DELETE", url: `/api/cases/${caseId}` })).statusCode).toBe(200);
    const reply = await one.ask({ url: `/api/cases/${caseId}` });
    expect([reply.statusCode, reply.json<RefusalView>().code]).toEqual([404, "record.notFound"]);
  });
});

describe("a film over the API", () => {
  it("comes back as the picture that was kept, without what its file said of a person", async () => {
    const { caseId } = await newCase();
    const payload = readFileSync("data/samples/dicom-synthetic/io_rod.dcm");
    const url = `/api/cases/${caseId}/films?name=rod.dcm&takenOn=2024-03-04&purpose=diagnostic`;
    const taken = await one.ask({
      method: "POST",
      url,
      payload,
      headers: { "content-type": "application/octet-stream" },
    });
    const { partId, case: view } = taken.json<FilmImported>();
    const film = view.parts.find((part) => part.id === partId);
    expect(film?.body).toMatchObject({ columns: 480, rows: 640, bitsStored: 12, technical: { sourceFormat: "dicom" } });
    expect(view.ledger.find((entry) => entry.subject === `calibrate of ${partId}`)?.output).toBeDefined();
    const kept = await one.ask({ url: `/api/films/${film?.kind === "film" ? film.body.hash : ""}` });
    expect(kept.headers["content-type"]).toBe("image/png");
    expect(new Set(chunksOf(kept.rawPayload))).toEqual(new Set(["IHDR", "biTs", "IDAT", "IEND"]));
    const small = await one.ask({ url: `/api/films/${film?.kind === "film" ? film.body.hash : ""}/preview?width=64` });
    expect(small.rawPayload.subarray(1, 4).toString()).toBe("PNG");
  });

  it("is cropped and turned as asked", async () => {
    const { caseId } = await newCase();
    const payload = readFileSync("data/samples/dicom-synthetic/io_rod.dcm");
    const crop = "cropColumn=100&cropRow=50&cropColumns=200&cropRows=300&invert=yes";
    const url = `/api/cases/${caseId}/films?name=rod.dcm&takenOn=2024-03-04&purpose=diagnostic&${crop}`;
    const taken = await one.ask({
      method: "POST",
      url,
      payload,
      headers: { "content-type": "application/octet-stream" },
    });
    const { partId, case: view } = taken.json<FilmImported>();
    expect(view.parts.find((part) => part.id === partId)?.body).toMatchObject({
      ...{ columns: 200, rows: 300 },
      technical: { crop: { column: 100, row: 50, columns: 200, rows: 300 }, inverted: true },
    });
  });
});

describe("answers", () => {
  it("have a form each: JSON by its schema, or bytes", async () => {
    const routes: string[] = [];
    const other = await buildApp({ ...one.bench, pages: undefined } as never, (route) => routes.push(route));
    await other.close();
    const ours = routes.filter((route) => route.includes(" /api/")).sort();
    expect(ours.length).toBeGreaterThan(20);
    expect(ours).toEqual([...Object.keys(replySchemas), ...byteRoutes].sort());
  });

  it("of another form go out as a fault of the program, without what they held", async () => {
    const broken = { ...one.bench, store: { ...one.bench.store, cases: async () => [{ caseId: 7 }] } } as never;
    const app = await buildApp(broken);
    const token = one.bench.sessions.redeem(one.bench.sessions.newCode());
    const said = vi.spyOn(console, "error").mockImplementation(() => undefined);
    const reply = await app.inject({ url: "/api/cases", headers: { host, cookie: `canalog_session=${token}` } });
    await app.close();
    said.mockRestore();
    expect([reply.statusCode, reply.json<RefusalView>().code]).toEqual([500, "bug"]);
    expect(reply.body).not.toContain("7");
  });
});

/** The kinds of chunks in a PNG, in order: each is a length, a name of four letters, its bytes and a checksum. */
function chunksOf(png: Buffer): string[] {
  const names: string[] = [];
  for (let at = 8; at < png.length; at += 12 + png.readUInt32BE(at)) names.push(png.toString("latin1", at + 4, at + 8));
  return names;
}
