import { type ChildProcess, spawn } from "node:child_process";
import { cpSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { inject, onTestFailed } from "vitest";

/** The checkout, and the program as a person starts it. */
export const root = join(import.meta.dirname, "..", "..");
const program = join(root, "bin", "canalog.mjs");

/** What a command of the program left behind. */
export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly errors: string;
}

/** Runs one command of the program on a data folder, to its end. */
export function canalog(home: string, args: readonly string[], input = ""): Promise<Ran> {
  const child = begin(home, args);
  const [out, errors] = [collected(child.stdout), collected(child.stderr)];
  child.stdin?.end(input);
  return new Promise((done) => child.on("close", (code) => done({ code, out: out(), errors: errors() })));
}

/** A server that runs as its own process. */
export interface Serving {
  readonly home: string;
  readonly port: number;
  /** The address with its one-time code, as it was printed. */
  readonly address: string;
  readonly lines: () => readonly string[];
  /** Ctrl-C; gives the exit code. */
  readonly stop: () => Promise<number | null>;
  /** The power goes: nothing is asked, nothing is finished. */
  readonly kill: () => Promise<void>;
}

/** Starts the server on a data folder and waits for its address. */
export async function startServer(home: string, port = randomPort()): Promise<Serving> {
  const child = begin(home, ["serve", "--port", String(port)]);
  const [out, errors] = [collected(child.stdout), collected(child.stderr)];
  const ended = new Promise<number | null>((done) => child.on("close", done));
  const address = await new Promise<string>((done, failed) => {
    child.stdout?.on("data", () => {
      const printed = /runs at (http:\S+)/.exec(out())?.[1];
      if (printed !== undefined) done(printed);
    });
    void ended.then((code) => failed(new Error(`the server ended with ${code}: ${out()}${errors()}`)));
  });
  afterFailure(() => child.kill("SIGKILL"));
  return {
    ...{ home, address, port: Number(new URL(address).port) },
    lines: () => `${out()}${errors()}`.split("\n"),
    stop: () => {
      child.kill("SIGINT");
      return ended;
    },
    kill: async () => {
      child.kill("SIGKILL");
      await ended;
    },
  };
}

/** Ends what a failed test leaves running; outside of a test (in a benchmark, before a row of tests) nothing is asked. */
export function afterFailure(end: () => unknown): void {
  try {
    onTestFailed(async () => {
      await end();
    });
  } catch {
    // No test is running: whoever began it ends it.
  }
}

/** What a new data folder begins with: the demo as the first start brought it, once for all journeys; that start itself; or nothing. */
type Beginning = "with the demo" | "before the first start" | "without the demo";

/** A new data folder; without the demo unless it is asked for, so that a journey begins at once. */
export function newHome(beginning: Beginning): string {
  const home = mkdtempSync(join(tmpdir(), "canalog-journey-"));
  if (beginning === "without the demo") writeFileSync(join(home, "demo.json"), '{"state":"removed"}');
  if (beginning === "with the demo") cpSync(inject("homeWithDemo"), home, { recursive: true });
  return home;
}

/** A port that is probably free; one that is not is passed over by the program itself. */
export const randomPort = (): number => 20_000 + Math.floor(Math.random() * 30_000);

function begin(home: string, args: readonly string[]): ChildProcess {
  return spawn(process.execPath, [program, ...args], { cwd: root, env: { ...process.env, CANALOG_HOME: home } });
}

function collected(stream: NodeJS.ReadableStream | null): () => string {
  let text = "";
  stream?.setEncoding("utf8");
  stream?.on("data", (piece: string) => {
    text += piece;
  });
  return () => text;
}
