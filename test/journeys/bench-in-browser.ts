import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BrowserContext, chromium, type Page } from "playwright-core";
import { expect } from "vitest";
import type { LedgerEntry } from "../../src/record/ledger-entry.ts";
import type { CaseView } from "../../src/server/api.ts";
import { afterFailure, newHome, type Serving, startServer } from "./canalog.ts";

/** The bench as a person has it: the program as a process, and a browser that opened its address. */
export interface BenchInBrowser {
  readonly server: Serving;
  readonly page: Page;
  readonly context: BrowserContext;
  /** What the browser complained about: errors of the console, of scripts, of the content security policy. */
  readonly complaints: readonly string[];
  /** Complaints that match are expected here, as a refusal that the journey asks for. */
  readonly expectComplaint: (pattern: RegExp) => void;
  /** Opens the case as the server has it. */
  readonly caseNow: (caseId: string) => Promise<CaseView>;
  readonly ledgerEntry: (id: string) => Promise<LedgerEntry>;
  /** Ends server and browser as a person would, and fails on any complaint. */
  readonly close: () => Promise<void>;
}

interface Options {
  /** Whether the demo is there; a first start loads it anew, as for a new user. */
  readonly demo?: boolean | "by the first start";
  /** The name of who writes; without it the first start asks. */
  readonly who?: string;
  readonly home?: string;
  readonly size?: { readonly width: number; readonly height: number };
}

/** The usual window. */
const usualSize = { width: 1440, height: 900 } as const;
const quiet = ["no-sandbox", "disable-gpu", "disable-quic", "no-first-run", "disable-background-networking"];
const still = ["disable-component-update", "disable-sync"];

/** Starts the program on a new data folder and opens its address in a new browser. */
export async function benchInBrowser(options: Options = {}): Promise<BenchInBrowser> {
  const home = options.home ?? homeFor(options.demo);
  const server = await startServer(home);
  const profile = mkdtempSync(join(tmpdir(), "canalog-browser-"));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: "/usr/bin/chromium",
    args: [...quiet, ...still].map((flag) => `--${flag}`),
    viewport: options.size ?? usualSize,
    permissions: ["clipboard-read", "clipboard-write"],
    acceptDownloads: true,
    baseURL: new URL(server.address).origin,
  });
  afterFailure(() => context.close());
  const listening = listen(context);
  const page = context.pages()[0] ?? (await context.newPage());
  await page.goto(server.address);
  if (options.who !== undefined) await nameWriter(page, options.who);
  return {
    ...{ server, page, context, ...listening },
    caseNow: async (caseId) => (await page.request.get(`/api/cases/${caseId}`)).json(),
    ledgerEntry: async (id) => (await page.request.get(`/api/ledger/${id}`)).json(),
    close: async () => {
      await context.close();
      const code = await server.stop();
      rmSync(profile, { recursive: true, force: true });
      if (options.home === undefined) rmSync(home, { recursive: true, force: true });
      expect(listening.complaints, "what the browser complained about").toEqual([]);
      expect(code, "exit code after Ctrl-C").toBe(0);
    },
  };
}

function homeFor(demo: Options["demo"]): string {
  if (demo === "by the first start") return newHome("before the first start");
  return newHome(demo === true ? "with the demo" : "without the demo");
}

/** Hears every complaint of every page, and keeps those that nobody expected. */
function listen(context: BrowserContext): Pick<BenchInBrowser, "complaints" | "expectComplaint"> {
  const complaints: string[] = [];
  const expected: RegExp[] = [];
  const note = (what: string): void => {
    if (!expected.some((pattern) => pattern.test(what))) complaints.push(what);
  };
  const hear = (page: Page): void => {
    page.on("console", (message) => message.type() === "error" && note(`${message.text()} ${message.location().url}`));
    page.on("pageerror", (error) => note(error.stack ?? error.message));
  };
  for (const page of context.pages()) hear(page);
  context.on("page", hear);
  return { complaints, expectComplaint: (pattern) => expected.push(pattern) };
}

/** Answers the first question behind the page's back, for journeys that are about something else. */
async function nameWriter(page: Page, who: string): Promise<void> {
  const settings = await (await page.request.get("/api/settings")).json();
  await page.request.put("/api/settings", { data: { ...settings, who } });
  await page.reload();
}
