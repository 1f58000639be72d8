import { rmSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Gesture } from "../../src/record/change.ts";
import { aboutBody, put } from "../samples/gestures.ts";
import { benchInBrowser } from "./bench-in-browser.ts";
import { canalog, newHome, type Serving, startServer } from "./canalog.ts";

/** A window without a browser: speaks to the server with the cookie that its address gave. */
async function windowOf({ address, port }: Serving) {
  const opened = await fetch(address, { redirect: "manual" });
  const cookie = opened.headers.get("set-cookie")?.split(";")[0] ?? "";
  return (path: string, init: RequestInit = {}) =>
    fetch(`http://127.0.0.1:${port}/api${path}`, { ...init, headers: { cookie, ...init.headers } });
}

const json = (body: unknown): RequestInit => ({
  method: "POST",
  body: JSON.stringify(body),
  headers: { "content-type": "application/json" },
});

describe("a power cut", () => {
  it("while saving loses nothing that was acknowledged, and the next start works and checks clean", async () => {
    const home = newHome("without the demo");
    for (const afterMs of [40, 110, 190]) await cutWhileSaving(home, afterMs);
    const check = await canalog(home, ["check"]);
    expect(check).toMatchObject({ code: 0 });
    expect(check.errors).toContain("nothing wrong");
    rmSync(home, { recursive: true, force: true });
  });

  it("is told by the next start, on the shell and in the logbook, where something had to be mended", async () => {
    const home = newHome("without the demo");
    const server = await startServer(home);
    await server.kill();
    const bench = await benchInBrowser({ home, who: "A. Resident" });
    const { recovered } = await (await bench.page.request.get("/api/session")).json();
    expect(recovered).toHaveLength(1);
    expect(bench.server.lines().join("\n")).toContain(`Recovered: ${recovered[0]}`);
    await bench.page.getByRole("status").filter({ hasText: recovered[0] }).waitFor();
    await bench.close();
    rmSync(home, { recursive: true, force: true });
  });
});

/** Saves notes as fast as they are taken, cuts the power, and looks for every acknowledged one after the next start. */
async function cutWhileSaving(home: string, afterMs: number): Promise<void> {
  const server = await startServer(home);
  const ask = await windowOf(server);
  const { caseId } = await (await ask("/cases", json({ case: aboutBody }))).json();
  const acknowledged: string[] = [];
  let cut: Promise<void> | undefined;
  for (let count = 1; ; count += 1) {
    const id = `handback-${count}`;
    const reply = await ask(`/cases/${caseId}/gestures`, json(noteOf(id))).catch(() => undefined);
    if (reply === undefined) break;
    if (!reply.ok) throw new Error(`refused: ${await reply.text()}`);
    acknowledged.push(id);
    cut ??= new Promise((done) => setTimeout(() => void server.kill().then(done), afterMs));
  }
  await cut;
  expect(acknowledged.length).toBeGreaterThan(0);
  const next = await startServer(home);
  const { parts } = await (await (await windowOf(next))(`/cases/${caseId}`)).json();
  const kept = new Set(parts.map(({ id }: { id: string }) => id));
  expect(acknowledged.filter((id) => !kept.has(id))).toEqual([]);
  expect(await next.stop()).toBe(0);
}

const noteOf = (id: string): Gesture =>
  put(id, "handback", 0, {
    ...{
      on: "2026-02-10",
      restoreWith: "composite",
      orificesMarkedBy: "",
      warnings: "a note ".repeat(200),
      prognosis: "",
    },
  });
