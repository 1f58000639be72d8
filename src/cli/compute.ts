import { z } from "zod";
import { Refusal } from "../core/refusal.ts";
import { refusalOutcome } from "../core/refusal-outcome.ts";
import { answer, type Topic } from "../core/topic.ts";
import { topicNamed, topics } from "../core/topics.ts";
import { computeInput, type InputStream } from "./compute-input.ts";
import { answerOfFilms, filmTopicOf } from "./compute-input-films.ts";

/** What was asked on the command line: a topic, or one of the two looks into the register. */
export interface ComputeAsked {
  readonly topic?: string | undefined;
  readonly list?: boolean | undefined;
  readonly schema?: boolean | undefined;
}

/** Where a command reads and writes; `process` is one. */
export interface Streams {
  readonly stdin: InputStream;
  readonly stdout: { write(text: string): unknown };
  readonly stderr: { write(text: string): unknown };
}

const usage = "canalog compute TOPIC < input.json, canalog compute --list, or canalog compute TOPIC --schema";

/**
 * `canalog compute`: one topic computed, the list of topics, or a topic's schemas, on standard output.
 * Gives the exit code: 0; 2 for bad input, with nothing on standard output and one line per fault on standard error;
 * 3 where the world refuses; 1 for a fault of the program's own.
 */
export async function compute(asked: ComputeAsked, streams: Streams): Promise<number> {
  try {
    streams.stdout.write(`${await told(asked, streams.stdin)}\n`);
    return 0;
  } catch (thrown) {
    for (const line of linesOf(thrown)) streams.stderr.write(`${line}\n`);
    return thrown instanceof Refusal ? refusalOutcome[thrown.code].exitCode : 1;
  }
}

async function told(asked: ComputeAsked, stdin: InputStream): Promise<string> {
  if (asked.list === true) return listOfTopics();
  if (asked.topic === undefined) throw new Refusal("topic.unknown", `Cannot compute: no topic is named; use ${usage}`);
  const topic = topicNamed(asked.topic);
  const shown = asked.schema === true ? await schemasOf(topic) : await answerTo(topic, stdin);
  return JSON.stringify(shown, null, 2);
}

async function answerTo(topic: Topic, stdin: InputStream): Promise<unknown> {
  const input = await computeInput(stdin);
  const films = await filmTopicOf(topic);
  return films === undefined ? answer(topic, input) : answerOfFilms(films, input);
}

function listOfTopics(): string {
  const width = Math.max(...topics.map(({ name }) => name.length));
  return topics.map(({ name, summary }) => `${name.padEnd(width)}  ${summary}`).join("\n");
}

/** The JSON Schemas of a topic's input, as it may be written on the shell, and of its output, as it is given there. */
async function schemasOf(topic: Topic) {
  const { input, output } = (await filmTopicOf(topic)) ?? topic;
  return {
    topic: topic.name,
    version: topic.version,
    input: z.toJSONSchema(input, { io: "input" }),
    output: z.toJSONSchema(output, { io: "output" }),
  };
}

function linesOf(thrown: unknown): string[] {
  if (!(thrown instanceof Refusal))
    return [`A fault of Canalog's own, not of the input: ${thrown instanceof Error ? thrown.stack : String(thrown)}`];
  if (thrown.faults.length === 0) return [thrown.message];
  return thrown.faults.map(({ path, says }) => (path === "" ? `input: ${says}` : `${path}: ${says}`));
}
