import { existsSync, readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { boneLike, filmOf } from "../../../test/bone-like-film.ts";
import { type SampleBench, sampleBench } from "../../../test/sample-bench.ts";
import { sampleParts } from "../../../test/sample-case.ts";
import { Refusal } from "../../core/refusal.ts";
import { decodeFilm } from "../../imaging/decode-film.ts";
import { encodePng16 } from "../../imaging/encode-png16.ts";
import { type BodyOf, partsOf } from "../../record/parts.ts";
import type { CaseView, Job, RefusalView } from "../api.ts";

const [columns, rows] = [420, 320];
const technical = { sourceFormat: "png", wasColour: false, lossy: false } as const;

let one: SampleBench;
let [filmA, filmB] = [body(""), body("")];
beforeAll(async () => {
  one = await sampleBench();
  filmA = await film(1);
  filmB = await film(2, { takenOn: "2025-03-04" }, [1, 0, 7, 0, 1, -4, 0, 0, 1]);
});
afterAll(() => one.close());

/** A film of bone, seen from elsewhere, in grey of 12 bits; its part as the record has it. */
async function film(seed: number, change: Partial<BodyOf<"film">> = {}, map?: Parameters<typeof filmOf>[1]["map"]) {
  const { grey } = filmOf(boneLike(11), { columns, rows, noise: 0.01, seed, ...(map === undefined ? {} : { map }) });
  const samples = Uint16Array.from(grey, (share) => Math.round(share * 4095));
  const png = encodePng16({ columns, rows, bitsStored: 12, samples, photometric: "MONOCHROME2", technical });
  return body(await one.bench.store.keepFilm(png), change);
}
function body(hash: string, change: Partial<BodyOf<"film">> = {}): BodyOf<"film"> {
  return {
    ...{ hash, columns, rows, bitsStored: 12, takenOn: "2024-03-04", purpose: "recall", receptor: "unknown" },
    ...{ uRunsTo: "unknown", caption: "" },
    technical: { ...technical, sourceSha256: "ab".repeat(32), inverted: false },
    ...change,
  };
}

const places = [
  [90, 70],
  [330, 80],
  [320, 250],
  [80, 240],
] as const;
const landmarks = places.map(([u, v]): { before: [number, number]; after: [number, number] } => ({
  before: [u, v],
  after: [u + 7, v - 4],
}));
const pair: BodyOf<"comparison"> = { before: "film-a", after: "film-b", landmarks };

const put = (id: string, kind: string, of: object, baseRevision = 0) => ({
  op: "put",
  id,
  kind,
  baseRevision,
  body: of,
});
async function record(caseId: string, operations: object[]): Promise<CaseView> {
  const payload = { words: "Films compared", operations };
  return (await one.ask({ method: "POST", url: `/api/cases/${caseId}/gestures`, payload })).json<CaseView>();
}
async function newCase(comparison = pair, films: { a?: BodyOf<"film">; b?: BodyOf<"film"> } = {}): Promise<string> {
  const payload = { case: sampleParts()[0]?.body };
  const { caseId } = (await one.ask({ method: "POST", url: "/api/cases", payload })).json<CaseView>();
  await record(caseId, [
    put("film-a", "film", films.a ?? filmA),
    put("film-b", "film", films.b ?? filmB),
    put("pair-1", "comparison", comparison),
  ]);
  return caseId;
}

const compare = (caseId: string, part = "pair-1") =>
  one.ask({ method: "POST", url: `/api/cases/${caseId}/comparisons/${part}` });
async function compared(caseId: string): Promise<Job> {
  const { id } = (await compare(caseId)).json<Job>();
  return vi.waitFor(
    async () => {
      const job = (await one.ask({ url: `/api/jobs/${id}` })).json<Job>();
      expect(job.state).not.toBe("running");
      return job;
    },
    { timeout: 30_000, interval: 20 },
  );
}
const entryOf = async (caseId: string) => {
  const view = (await one.ask({ url: `/api/cases/${caseId}` })).json<CaseView>();
  return view.ledger.find(({ topic }) => topic === "compareFilms");
};
const picture = (entryId: string, name: string) => one.ask({ url: `/api/comparisons/${entryId}/${name}` });

describe("two films compared", () => {
  it("puts the entry into the ledger, and gives its pictures on the first film's pixels", async () => {
    const caseId = await newCase();
    expect((await entryOf(caseId))?.refused).toEqual(["not compared yet: press Compare"]);
    const job = await compared(caseId);
    expect(job).toMatchObject({ state: "done", fraction: 1 });
    const entry = await entryOf(caseId);
    expect(entry?.id).toBe(job.entryId);
    expect(entry?.output).toMatchObject({
      comparable: true,
      transform: [
        [expect.closeTo(1, 2), expect.anything(), expect.closeTo(7, 0)],
        expect.anything(),
        expect.anything(),
      ],
    });
    expect(JSON.stringify(entry).length).toBeLessThan(10_000);
    const aligned = await decodeFilm(new Uint8Array((await picture(entry?.id ?? "", "aligned")).rawPayload), "a");
    expect(aligned).toMatchObject({ columns, rows, bitsStored: 12 });
    const difference = await decodeFilm(new Uint8Array((await picture(entry?.id ?? "", "difference")).rawPayload), "d");
    expect(difference).toMatchObject({ columns, rows, bitsStored: 8 });
    // Nothing changed: what is drawn lies within what grain does by itself.
    const middle = difference.samples.filter((grey) => grey === 128).length;
    expect(middle / difference.samples.length).toBeGreaterThan(0.95);
  });

  it("asks the same question once: a second press gives the entry that is there", async () => {
    const caseId = await newCase();
    const [first, second] = await Promise.all([compared(caseId), compared(caseId)]);
    expect(second.entryId).toBe(first.entryId);
    const again = await compared(caseId);
    expect(again).toMatchObject({ state: "done", entryId: first.entryId });
  });

  it("makes a new entry when one landmark moves, and gives the old one back when that is undone", async () => {
    const caseId = await newCase();
    const first = await compared(caseId);
    const [moved, ...others] = landmarks;
    const next = [{ before: [93, 71], after: moved?.after ?? [0, 0] }, ...others];
    await record(caseId, [put("pair-1", "comparison", { ...pair, landmarks: next }, 1)]);
    expect((await entryOf(caseId))?.output).toBeUndefined();
    const second = await compared(caseId);
    expect(second.entryId).not.toBe(first.entryId);
    await one.ask({ method: "POST", url: `/api/cases/${caseId}/undo` });
    expect((await entryOf(caseId))?.id).toBe(first.entryId);
    const old = await one.ask({ url: `/api/ledger/${second.entryId}` });
    expect(old.statusCode).toBe(200);
  });

  it("makes pictures again that are not kept any more, and keeps none of a case that was removed", async () => {
    const caseId = await newCase();
    const { entryId = "" } = await compared(caseId);
    const before = (await picture(entryId, "aligned")).rawPayload;
    const folder = join(one.home, "cache", "comparisons", caseId);
    expect(readdirSync(folder)).toHaveLength(2);
    rmSync(folder, { recursive: true });
    expect((await picture(entryId, "aligned")).rawPayload.equals(before)).toBe(true);
    expect(readdirSync(folder)).toHaveLength(2);
    await one.ask({ method: "DELETE", url: `/api/cases/${caseId}` });
    expect(existsSync(folder)).toBe(false);
    expect((await picture(entryId, "aligned")).statusCode).toBe(404);
  });

  it("lays films that can't be compared one on the other, and gives no difference", async () => {
    const other = filmOf(boneLike(77), { columns, rows });
    const samples = Uint16Array.from(other.grey, (share) => Math.round(share * 4095));
    const png = encodePng16({ columns, rows, bitsStored: 12, samples, photometric: "MONOCHROME2", technical });
    const caseId = await newCase(pair, { b: body(await one.bench.store.keepFilm(png)) });
    const { entryId = "" } = await compared(caseId);
    expect((await entryOf(caseId))?.output).toMatchObject({ comparable: false });
    expect((await picture(entryId, "aligned")).statusCode).toBe(200);
    const none = await picture(entryId, "difference");
    expect(none.json<RefusalView>()).toMatchObject({
      code: "record.notFound",
      message: expect.stringContaining("can't be compared"),
    });
  });

  it("keeps a refusal of the sum as an entry: landmarks in line", async () => {
    const line = [10, 60, 110, 160].map((at): { before: [number, number]; after: [number, number] } => ({
      before: [at, at],
      after: [at, at],
    }));
    const caseId = await newCase({ ...pair, landmarks: line });
    const job = await compared(caseId);
    expect(job.state).toBe("done");
    const entry = await entryOf(caseId);
    expect(entry).toMatchObject({ id: job.entryId, refused: [expect.stringContaining("nearly in line")] });
    expect((await picture(entry?.id ?? "", "aligned")).statusCode).toBe(404);
  });

  it("stops when it is asked to, and keeps nothing", async () => {
    const caseId = await newCase();
    const { id } = (await compare(caseId)).json<Job>();
    expect((await one.ask({ method: "DELETE", url: `/api/jobs/${id}` })).statusCode).toBe(200);
    await vi.waitFor(async () =>
      expect((await one.ask({ url: `/api/jobs/${id}` })).json<Job>()).toMatchObject({ state: "stopped" }),
    );
    expect((await entryOf(caseId))?.output).toBeUndefined();
  });

  it("says so where the comparison was changed while it was computed", async () => {
    const caseId = await newCase();
    const { id } = (await compare(caseId)).json<Job>();
    await record(caseId, [put("pair-1", "comparison", { ...pair, landmarks: landmarks.slice(1) }, 1)]);
    const job = await vi.waitFor(
      async () => {
        const now = (await one.ask({ url: `/api/jobs/${id}` })).json<Job>();
        expect(now.state).not.toBe("running");
        return now;
      },
      { timeout: 30_000 },
    );
    expect(job).toMatchObject({ state: "failed", refusal: { code: "record.conflict" } });
  });
});

describe("what waits in the demo", () => {
  it("is compared behind everything else, and nothing of anybody's own case", async () => {
    const [own, demo] = [await newCase(), await newCase()];
    const about = partsOf((await one.bench.store.readCase(demo)).parts, "case")[0];
    await record(demo, [put(about?.id ?? "", "case", { ...about?.body, demo: true }, 1)]);
    await record(demo, [put("pair-2", "comparison", { ...pair, landmarks: [] })]);
    await one.bench.comparisons.catchUp();
    expect((await entryOf(demo))?.output).toMatchObject({ comparable: true });
    expect((await entryOf(own))?.output).toBeUndefined();
  });

  it("may be removed meanwhile", async () => {
    const read = vi
      .spyOn(one.bench.store, "readCase")
      .mockRejectedValueOnce(new Refusal("record.notFound", "it is gone"));
    await expect(one.bench.comparisons.catchUp()).resolves.toBeUndefined();
    // The demo's case of the test before was asked for, and was gone.
    expect(read).toHaveBeenCalled();
    read.mockRestore();
  });
});

describe("what can't be compared", () => {
  it.each<[string, BodyOf<"comparison">, RegExp]>([
    ["three landmarks", { ...pair, landmarks: landmarks.slice(1) }, /mark 1 more/],
    ["a film that is gone", { ...pair, after: "film-z" }, /not in the case any more/],
  ])("%s is refused with what to do", async (_, comparison, says) => {
    const reply = await compare(await newCase(comparison));
    expect(reply.statusCode).toBe(422);
    expect(reply.json<RefusalView>()).toMatchObject({ code: "input.impossible", message: expect.stringMatching(says) });
  });

  it("a film too large for it is refused before it is read", async () => {
    const caseId = await newCase(pair, { b: body(filmA.hash, { columns: 20_000, rows: 20_000 }) });
    const reply = await compare(caseId);
    expect(reply.json<RefusalView>().message).toMatch(/20000 x 20000 px is too large/);
  });

  it("a film whose file is gone, and films of one pixel, end in words", async () => {
    const small = encodePng16({
      ...{ columns: 1, rows: 1, bitsStored: 12 },
      samples: Uint16Array.of(7),
      photometric: "MONOCHROME2",
      technical,
    });
    const pixel = body(await one.bench.store.keepFilm(small), { columns: 1, rows: 1 });
    const caseId = await newCase(pair, { a: pixel });
    expect((await compared(caseId)).state).toBe("done");
    expect((await entryOf(caseId))?.refused?.join(" ")).toMatch(/before\.columns/);
    const lost = await newCase();
    const { store } = one.bench;
    vi.spyOn(store, "readFilm").mockRejectedValueOnce(new Error("gone"));
    expect(await compared(lost)).toMatchObject({ state: "failed" });
  });

  it.each([
    ["a case that is not there", "/api/cases/case-nowhere/comparisons/pair-1", 404],
    ["a part that is not there", "/api/cases/CASE/comparisons/pair-9", 404],
    ["a part of another kind", "/api/cases/CASE/comparisons/film-a", 404],
    ["no id", "/api/cases/CASE/comparisons/..%2f..", 400],
  ])("%s", async (_, url, status) => {
    const reply = await one.ask({ method: "POST", url: url.replace("CASE", await newCase()) });
    expect(reply.statusCode).toBe(status);
  });

  it.each([
    ["not-a-hash", "aligned", 400],
    ["ab".repeat(32), "aligned", 404],
    ["ab".repeat(32), "other", 400],
    ["..%2f..%2f", "aligned", 400],
  ])("pictures of %s, %s", async (entryId, name, status) => {
    expect((await picture(entryId, name)).statusCode).toBe(status);
  });

  it("an entry of another topic has no pictures", async () => {
    const caseId = await newCase();
    const view = (await one.ask({ url: `/api/cases/${caseId}` })).json<CaseView>();
    const other = view.ledger.find(({ topic }) => topic === "tooth")?.id ?? "";
    expect((await picture(other, "aligned")).json<RefusalView>()).toMatchObject({ code: "record.notFound" });
  });
});
