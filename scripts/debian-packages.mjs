// What tests take from Debian: a browser for the journeys, and the general tools that open what Canalog writes.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";

const wanted = [
  ["/usr/bin/chromium", "chromium"],
  ["/usr/bin/soffice", "libreoffice-impress"],
  ["/usr/bin/pdftoppm", "poppler-utils"],
  ["/usr/bin/dcmdump", "dcmtk"],
  // Letters as wide as those that a deck names, which an office program on any desk has.
  ["/usr/share/fonts/truetype/liberation2/LiberationSans-Regular.ttf", "fonts-liberation2"],
];

/** Installs what is missing by apt as root; otherwise says the one command to run, and ends. */
export function ensureDebianPackages() {
  const missing = wanted.filter(([file]) => !existsSync(file)).map(([, name]) => name);
  if (missing.length === 0) return;
  const install = ["install", "-y", "--no-install-recommends", ...missing];
  if (process.getuid?.() !== 0 || !existsSync("/usr/bin/apt-get")) {
    console.error(
      `Cannot run the tests: ${missing.join(", ")} missing; run: sudo apt-get update && sudo apt-get ${install.join(" ")}`,
    );
    process.exit(3);
  }
  console.log(`Installing ${missing.join(", ")} for the tests ...`);
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  for (const args of [["update"], install]) {
    const run = spawnSync("apt-get", ["-q", ...args], { stdio: ["ignore", "ignore", "inherit"], env });
    if (run.status !== 0) {
      console.error(`Cannot run the tests: apt-get ${args[0]} stopped with an error`);
      process.exit(3);
    }
  }
}
