import { readFileSync } from "node:fs";
import { request } from "node:http";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { folderHash, type SampleBench, sampleBench } from "../../test/sample-bench.ts";
import { sampleParts } from "../../test/sample-case.ts";
import type { CaseView, RefusalView } from "./api.ts";

let one: SampleBench;
let caseId: string;
const about = sampleParts()[0]?.body;
beforeAll(async () => {
  one = await sampleBench();
  caseId = (await one.ask({ method: "POST", url: "/api/cases", payload: { case: about } })).json<CaseView>().caseId;
});
afterAll(() => one.close());

const rod = readFileSync("data/samples/dicom-synthetic/io_rod.dcm");
/** The rod's file with its number of rows (0028,0010) written over. */
function rodWithRows(rows: number): Buffer {
  const bytes = Buffer.from(rod);
  const tag = bytes.indexOf(Buffer.from([0x28, 0x00, 0x10, 0x00]));
  bytes.writeUInt16LE(rows, tag + 8);
  return bytes;
}

const film = (payload: Buffer | string, to = caseId, name = "picture.bin") => ({
  method: "POST" as const,
  url: `/api/cases/${to}/films?name=${name}&takenOn=2024-03-04&purpose=diagnostic`,
  payload,
  headers: { "content-type": "application/octet-stream" },
});
const put = (id: string, kind: string, body: unknown) => ({
  method: "POST" as const,
  url: `/api/cases/${caseId}/gestures`,
  payload: { words: "A try", operations: [{ op: "put", id, kind, baseRevision: 0, body }] },
});
const trace = {
  shape: "trace",
  film: "film-1",
  polarity: "dark",
  anchors: [
    [1, 1],
    [2, 2],
  ],
};

describe("bad input: a clear refusal, and the data folder as it was", () => {
  it.each([
    [
      "a file that is no image",
      () => film("These are words, not a picture of a tooth."),
      415,
      "file.notImage",
      "picture.bin",
    ],
    ["an empty file", () => film(Buffer.alloc(0)), 415, "file.notImage", "picture.bin"],
    ["a truncated film", () => film(rod.subarray(0, rod.length / 2)), 422, "file.truncated", "picture.bin"],
    ["a film of no rows", () => film(rodWithRows(0)), 422, "file.impossibleSize", "picture.bin"],
    [
      "a film of more rows than it has pixels for",
      () => film(rodWithRows(65_535)),
      422,
      "file.impossibleSize",
      "picture.bin",
    ],
    ["a film for a case that is not there", () => film(rod, "case-unknown"), 404, "record.notFound", ""],
    [
      "a film of a day that is none",
      () => ({ ...film(rod), url: `/api/cases/${caseId}/films?name=a&takenOn=2024-02-31&purpose=diagnostic` }),
      400,
      "input.invalid",
      "",
    ],
    [
      "a body with a wrong field",
      () => put("recall-1", "recall", { ...sampleParts().at(-1)?.body, colour: "red" }),
      400,
      "input.invalid",
      "",
    ],
    ["a kind of part that is none", () => put("part-1", "poem", {}), 400, "input.invalid", "poem"],
    ["a second part of a kind that stands once", () => put("about-2", "case", about), 422, "input.impossible", "case"],
    [
      "a trace of two points",
      () =>
        put("trace-1", "mark", {
          ...trace,
          points: [
            [1, 1],
            [2, 2],
          ],
        }),
      400,
      "input.invalid",
      "",
    ],
    [
      "a tooth that does not exist",
      () => ({ method: "POST" as const, url: "/api/cases", payload: { case: { ...about, tooth: "49" } } }),
      400,
      "input.invalid",
      "",
    ],
    [
      "a text that is no JSON",
      () => ({
        method: "POST" as const,
        url: "/api/cases",
        payload: "{",
        headers: { "content-type": "application/json" },
      }),
      400,
      "input.invalid",
      "",
    ],
    [
      "a gesture larger than is accepted",
      () => put("note-1", "case", "x".repeat(17_000_000)),
      413,
      "server.tooLarge",
      "",
    ],
  ])("%s", async (_what, asked, status, code, names) => {
    const before = folderHash(one.home);
    const reply = await one.ask(asked());
    const refusal = reply.json<RefusalView>();
    expect([reply.statusCode, refusal.code]).toEqual([status, code]);
    expect(`${refusal.message} ${JSON.stringify(refusal.faults)}`).toContain(names);
    expect(refusal.message).toMatch(/^Cannot /);
    expect(folderHash(one.home)).toBe(before);
  });

  it("names the path of a field that does not belong, of a tooth that does not exist, and of a trace that is too short", async () => {
    const paths = async (asked: object) => (await one.ask(asked)).json<RefusalView>().faults.map((fault) => fault.path);
    expect(await paths(put("recall-1", "recall", { ...sampleParts().at(-1)?.body, colour: "red" }))).toEqual([
      "colour",
    ]);
    expect(
      await paths(
        put("trace-1", "mark", {
          ...trace,
          points: [
            [1, 1],
            [2, 2],
          ],
        }),
      ),
    ).toEqual(["points"]);
    expect(await paths({ method: "POST", url: "/api/cases", payload: { case: { ...about, tooth: "49" } } })).toEqual([
      "case.tooth",
    ]);
  });

  it("says of each field what was found and what is accepted", async () => {
    const payload = { case: { ...about, pseudonym: "A Name", birthYear: 1790, presentedOn: "4 March" } };
    const refusal = (await one.ask({ method: "POST", url: "/api/cases", payload })).json<RefusalView>();
    expect(refusal.faults.map(({ path, says }) => `${path}: ${says}`)).toEqual([
      'case.pseudonym: "A Name" is not a pseudonym: up to four letters, a dash, digits (P-0417)',
      "case.birthYear: 1790 is below what is accepted: number of at least 1900",
      'case.presentedOn: "4 March" is not a day: YYYY-MM-DD',
    ]);
  });

  it("an upload of 2 GB, refused by its announced size before it is read", async () => {
    const before = folderHash(one.home);
    await one.app.listen({ host: "127.0.0.1", port: 0 });
    const address = one.app.server.address();
    const port = typeof address === "object" && address !== null ? address.port : 0;
    const token = one.bench.sessions.redeem(one.bench.sessions.newCode());
    const headers = {
      cookie: `canalog_session=${token}`,
      "content-type": "application/octet-stream",
      "content-length": 2 ** 31,
    };
    const { url } = film("");
    const reply = await new Promise<{ status: number | undefined; text: string }>((resolve, reject) => {
      const sent = request({ host: "127.0.0.1", port, path: url, method: "POST", headers }, (answer) => {
        let text = "";
        answer.on("data", (piece: Buffer) => {
          text += piece.toString();
        });
        answer.on("end", () => resolve({ status: answer.statusCode, text }));
        sent.destroy();
      });
      sent.on("error", (error) => (Reflect.get(error, "code") === "ECONNRESET" ? undefined : reject(error)));
      sent.write(Buffer.alloc(1_000));
    });
    expect(reply.status).toBe(413);
    expect(reply.text === "" || reply.text.includes("server.tooLarge")).toBe(true);
    expect(folderHash(one.home)).toBe(before);
  });
});
