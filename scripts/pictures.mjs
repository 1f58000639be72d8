// `node scripts/pictures.mjs`: makes the pictures of docs/pictures anew from the demo, as a person sees it at 1440 by 900.
import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { ensureBuilt } from "./built.mjs";
import { ensureDebianPackages } from "./debian-packages.mjs";
import { ensureInstalled } from "./installed.mjs";
import { root } from "./root.mjs";

const shown = [
  { name: "light-box", path: "/case/demo-b/light-box/film-length" },
  { name: "case", path: "/case/demo-a/visit-2" },
];

ensureInstalled("all");
ensureDebianPackages();
await ensureBuilt();
const { chromium } = await import("playwright-core");
const home = mkdtempSync(join(tmpdir(), "canalog-pictures-"));
const server = spawn(process.execPath, [join(root, "bin/canalog.mjs"), "serve", "--port", "4370"], {
  env: { ...process.env, CANALOG_HOME: home },
  stdio: ["ignore", "pipe", "inherit"],
});
const flags = ["no-sandbox", "disable-gpu", "disable-quic", "no-first-run", "disable-background-networking"];
const args = [...flags, "disable-component-update", "disable-sync", "hide-scrollbars"].map((flag) => `--${flag}`);
const browser = await chromium.launch({ executablePath: "/usr/bin/chromium", args });
try {
  const address = await addressOf(server);
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(address);
  const settings = await (await page.request.get(new URL("/api/settings", address).href)).json();
  await page.request.put(new URL("/api/settings", address).href, { data: { ...settings, who: "A. Resident" } });
  for (const { name, path } of shown) {
    await page.goto(new URL(path, address).href);
    await page.waitForLoadState("networkidle");
    await page.waitForFunction(() => [...document.images].every(({ complete }) => complete), undefined, {
      timeout: 60_000,
    });
    await page.waitForTimeout(2_000);
    await page.screenshot({ path: join(root, "docs/pictures", `${name}.png`) });
  }
} finally {
  await browser.close();
  server.kill("SIGINT");
  await new Promise((ended) => server.once("exit", ended));
  rmSync(home, { recursive: true, force: true });
}

/** The address that the program prints once it listens. */
async function addressOf({ stdout }) {
  for await (const line of createInterface({ input: stdout })) {
    const [found] = /http:\S+/.exec(line) ?? [];
    if (found !== undefined) return found;
  }
  throw new Error("the program ended before it listened");
}
