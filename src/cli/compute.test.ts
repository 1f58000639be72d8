import { describe, expect, it } from "vitest";
import { topics } from "../core/topics.ts";
import { type ComputeAsked, compute } from "./compute.ts";

async function run(asked: ComputeAsked, ...pieces: (string | Uint8Array)[]) {
  const written = { stdout: "", stderr: "" };
  const into = (name: "stdout" | "stderr") => ({
    write: (text: string) => {
      written[name] += text;
    },
  });
  async function* stdin() {
    yield* pieces;
  }
  const exitCode = await compute(asked, { stdin: stdin(), stdout: into("stdout"), stderr: into("stderr") });
  return { exitCode, ...written };
}

const known = { known: [{ lengthMm: 20, from: [0, 0], to: [400, 0] }] };

describe("canalog compute TOPIC", () => {
  it("reads one JSON object and writes one", async () => {
    const { exitCode, stdout, stderr } = await run({ topic: "calibrate" }, JSON.stringify(known));
    expect(exitCode).toBe(0);
    expect(stderr).toBe("");
    expect(JSON.parse(stdout).mmPerPx).toEqual({ column: 0.05, row: 0.05 });
    expect(stdout.endsWith("}\n")).toBe(true);
  });

  it("takes bytes in pieces that cut a letter, and a byte order mark", async () => {
    const bytes = Buffer.from(`\uFEFF${JSON.stringify({ notation: "quadrant", value: "ä" })}`);
    const cut = bytes.indexOf(0xc3) + 1;
    const { exitCode, stderr } = await run({ topic: "tooth" }, bytes.subarray(0, cut), bytes.subarray(cut));
    expect(exitCode).toBe(2);
    expect(stderr).toContain("ä");
  });

  it("writes nothing but one line per fault for bad input", async () => {
    const input = { known: [{ lengthMm: -1, from: [0, 0], to: [1, "x"] }], magnificationn: 1 };
    const { exitCode, stdout, stderr } = await run({ topic: "calibrate" }, JSON.stringify(input));
    expect(exitCode).toBe(2);
    expect(stdout).toBe("");
    const lines = stderr.trimEnd().split("\n");
    expect(lines).toHaveLength(3);
    expect(lines).toContainEqual(expect.stringMatching(/^known\[0\]\.lengthMm: -1 is below what is accepted/));
    expect(lines).toContainEqual(expect.stringMatching(/^known\[0\]\.to\[1\]: "x" stands where a number is needed/));
    expect(lines).toContainEqual(expect.stringMatching(/^magnificationn: is not a field/));
  });

  it("gives every refusal of the input exit code 2", async () => {
    const same = { known: [{ lengthMm: 20, from: [5, 5], to: [5, 5] }] };
    const impossible = await run({ topic: "calibrate" }, JSON.stringify(same));
    expect(impossible).toMatchObject({
      exitCode: 2,
      stdout: "",
      stderr: expect.stringMatching(/^known\[0\]\.to: \[5,5\] is/),
    });
    const missing = await run({ topic: "calibrate" }, "{}");
    expect(missing).toMatchObject({
      exitCode: 2,
      stdout: "",
      stderr: expect.stringMatching(/^known: no known length.*\n$/),
    });
  });

  it.each([
    ["[]", "input: "],
    ["null", "input: "],
  ])("refuses %s: one object is accepted", async (text, start) => {
    const { exitCode, stdout, stderr } = await run({ topic: "calibrate" }, text);
    expect(exitCode).toBe(2);
    expect(stdout).toBe("");
    expect(stderr.startsWith(start)).toBe(true);
  });

  it.each([
    ["", "line 1, column 1: found the end of the text, a value is accepted here"],
    ['{\n  "a": 1,\n  "b": }', "line 3, column 8: found }, a value is accepted here"],
    ['{ "a": NaN }', "line 1, column 8: found NaN, a value is accepted here"],
    ['{ "a": 1\n', "line 2, column 1: found the end of the text, a , or } is accepted here"],
  ])("names line and column of broken JSON: %j", async (text, line) => {
    expect(await run({ topic: "calibrate" }, text)).toEqual({ exitCode: 2, stdout: "", stderr: `${line}\n` });
  });

  it("refuses bytes that are not UTF-8", async () => {
    const { exitCode, stderr } = await run({ topic: "calibrate" }, Uint8Array.of(0x7b, 0xff, 0x7d));
    expect(exitCode).toBe(2);
    expect(stderr).toContain("UTF-8");
  });

  it("gives the topics there are for an unknown one, and the usage for none", async () => {
    const unknown = await run({ topic: "calibrat" });
    expect(unknown).toMatchObject({ exitCode: 2, stdout: "", stderr: expect.stringContaining("calibrate") });
    const none = await run({});
    expect(none).toMatchObject({ exitCode: 2, stdout: "", stderr: expect.stringContaining("--list") });
  });

  it("exits with 1 for a fault of its own, with nothing on standard output", async () => {
    // biome-ignore lint/correctness/useYield: a stream that breaks gives nothing
    async function* broken(): AsyncGenerator<string> {
      throw new TypeError("the pipe broke");
    }
    const lines: string[] = [];
    const sink = { write: (text: string) => lines.push(text) };
    const refused = { write: () => expect.fail("nothing may be written") };
    expect(await compute({ topic: "calibrate" }, { stdin: broken(), stdout: refused, stderr: sink })).toBe(1);
    expect(lines.join("")).toContain("the pipe broke");
  });
});

describe("canalog compute --list and --schema", () => {
  it("lists every topic, one line each", async () => {
    const { exitCode, stdout } = await run({ list: true });
    expect(exitCode).toBe(0);
    const lines = stdout.trimEnd().split("\n");
    expect(lines.map((line) => line.split(" ")[0])).toEqual(topics.map(({ name }) => name));
    for (const line of lines) expect(line).toMatch(/^\w+ +\S.{10,}$/);
  });

  it("shows the JSON Schema of input and output", async () => {
    const { exitCode, stdout } = await run({ topic: "calibrate", schema: true });
    expect(exitCode).toBe(0);
    const { topic, version, input, output } = JSON.parse(stdout);
    expect([topic, version]).toEqual(["calibrate", 2]);
    expect(input.properties.known.items.required).toEqual(["lengthMm", "from", "to"]);
    expect(input.additionalProperties).toBe(false);
    expect(output.required).toContain("basis");
  });
});
