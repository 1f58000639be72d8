import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { outputParts, type Source } from "../src/core/basis.ts";
import { Refusal } from "../src/core/refusal.ts";
import { answer, type Topic } from "../src/core/topic.ts";
import { topicNamed, topics } from "../src/core/topics.ts";

const root = fileURLToPath(new URL("..", import.meta.url));
const shared = z.looseObject(outputParts);
const sourceFile = z.looseObject({
  id: z.string(),
  reference: z.string().min(20),
  verification: z.enum(["seen", "memory"]),
});

/** `workingLength` is described in docs/methods/working-length.md. */
const pageOf = ({ name }: Topic): string =>
  readFileSync(
    join(root, "docs/methods", `${name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}.md`),
    "utf8",
  );

/** The inputs that a page shows: fenced as `json input`, or echoed into the command. */
function examplesOf(topic: Topic): unknown[] {
  const page = pageOf(topic);
  const fenced = [...page.matchAll(/^```json input\n([\s\S]*?)^```/gm)];
  const echoed = [...page.matchAll(new RegExp(`echo '([^']*)'\\s*\\|\\s*canalog compute ${topic.name}\\b`, "g"))];
  return [...fenced, ...echoed].map(([, text]) => JSON.parse(text ?? ""));
}

const sourceIds = readdirSync(join(root, "data")).filter((id) => existsSync(join(root, "data", id, "source.json")));
const readSource = (id: string) =>
  sourceFile.parse(JSON.parse(readFileSync(join(root, "data", id, "source.json"), "utf8")));

function filesUnder(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? filesUnder(path) : [path];
  });
}

describe("the register of topics", () => {
  it("names each topic once, in camelCase, with a version and a line of summary", () => {
    const names = topics.map(({ name }) => name);
    expect(names.length).toBeGreaterThan(0);
    expect(new Set(names).size).toBe(names.length);
    for (const { name, version, summary } of topics) {
      expect(name).toMatch(/^[a-z][a-zA-Z0-9]*$/);
      expect(Number.isInteger(version) && version >= 1).toBe(true);
      expect(summary).toMatch(/^\S[^\n]{10,118}\S$/);
      expect(topicNamed(name).name).toBe(name);
    }
  });
});

describe.each(topics.map((topic) => [topic.name, topic] as const))("%s", (name, topic) => {
  it("has a method page with its rules numbered from C1 without a gap", () => {
    const numbers = [...pageOf(topic).matchAll(/^(?:\| *|#+ *|- *|\*\*)C(\d+)\b/gm)].map(([, number]) =>
      Number(number),
    );
    expect(numbers.length).toBeGreaterThan(0);
    expect(numbers).toEqual(numbers.map((_, index) => index + 1));
  });

  it("rests on sources that are folders of data, as they are written there", () => {
    for (const { id, reference, verification } of topic.sources as readonly Source[]) {
      expect(sourceIds).toContain(id);
      expect({ id, reference, verification }).toEqual({
        id: readSource(id).id,
        reference: readSource(id).reference,
        verification: readSource(id).verification,
      });
    }
  });

  it("has a JSON Schema of input and output, closed against unknown fields", () => {
    expect(z.toJSONSchema(topic.input, { io: "input" })).toMatchObject({ $schema: expect.any(String) });
    const output = z.toJSONSchema(topic.output, { io: "output" });
    expect(Object.keys(output.properties ?? {})).toEqual(expect.arrayContaining(Object.keys(outputParts)));
  });

  it("answers every input that its page shows, whole and traceable", () => {
    const examples = examplesOf(topic);
    expect(examples.length, `docs/methods shows no input of ${name}`).toBeGreaterThan(0);
    for (const input of examples) {
      const output = answer(topic, input);
      // What JSON can't hold (NaN, Infinity, undefined inside a list) would come back as null or not at all.
      const written: unknown = JSON.parse(JSON.stringify(output));
      expect(written).toEqual(output);
      expect(topic.output.safeParse(written).error).toBeUndefined();
      const { basis, cautions, notComputed } = shared.parse(written);
      expect(basis.formula).not.toBe("");
      const known = topic.sources.map(({ id }) => id);
      for (const id of basis.sources) expect(known).toContain(id);
      for (const text of cautions) expect(text).not.toMatch(/NaN|undefined|Infinity/);
      for (const { name: missing } of notComputed) expect(Object.keys(written as object)).not.toContain(missing);
    }
  });

  it("refuses a field that it does not know, by its path", () => {
    for (const example of examplesOf(topic)) {
      const input = { ...(example as object), unheardOf: 1 };
      expect(refusalOf(topic, input)).toMatchObject({
        code: "input.invalid",
        faults: expect.arrayContaining([expect.objectContaining({ path: "unheardOf" })]),
      });
    }
  });

  it.each([[null], [[]], ["text"], [7]])("refuses %j: one object is accepted", (input) => {
    expect(refusalOf(topic, input)).toMatchObject({ code: "input.invalid" });
  });
});

function refusalOf(topic: Topic, input: unknown): Refusal | undefined {
  try {
    answer(topic, input);
  } catch (thrown) {
    if (thrown instanceof Refusal) return thrown;
    throw thrown;
  }
  return undefined;
}

describe("data", () => {
  const imported = filesUnder(join(root, "src"))
    .filter((path) => /\.tsx?$/.test(path) && !/\.test\.tsx?$/.test(path))
    .flatMap((path) =>
      [...readFileSync(path, "utf8").matchAll(/data\/([a-z0-9-]+)\/source\.json"/g)].map(([, id]) => id),
    );

  it.each(sourceIds)("%s is a source by its own name, and some code reads it", (id) => {
    expect(readSource(id).id).toBe(id);
    expect(imported).toContain(id);
  });
});

it("the promise names every topic once, in the order of the register", () => {
  const rows = [...readFileSync(join(root, "README.md"), "utf8").matchAll(/^\| `(\w+)` \|/gm)].map(([, name]) => name);
  expect(rows).toEqual(topics.map(({ name }) => name));
});
