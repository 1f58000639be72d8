// House style by the line: no file over 400 lines, in core 90 % of files under 150; at most four positional arguments.
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";

const files = execFileSync("git", ["ls-files", "-co", "--exclude-standard", "*.ts", "*.tsx", "*.mjs"], {
  encoding: "utf8",
})
  .split("\n")
  .filter((file) => file !== "");
const lines = new Map(files.map((file) => [file, readFileSync(file, "utf8").split("\n").length - 1]));

const faults = [];
for (const [file, count] of lines) if (count > 400) faults.push(`${file}: ${count} lines, 400 are allowed`);

const core = [...lines].filter(([file]) => file.startsWith("src/core/") && !file.endsWith(".test.ts"));
const long = core.filter(([, count]) => count >= 150);
if (long.length > core.length * 0.1)
  faults.push(
    `src/core: ${long.length} of ${core.length} files have 150 lines or more: ${long.map(([file]) => file).join(", ")}`,
  );

const unwanted = /(^|\/)(utils?|helpers?|misc|manager|common)(\/|\.[a-z.]+$)/;
for (const file of files) {
  if (unwanted.test(file)) faults.push(`${file}: a name that says nothing`);
  if (!/^[a-z0-9.-]+$/.test(file.split("/").at(-1))) faults.push(`${file}: not kebab-case`);
}

for (const fault of faults) console.error(fault);
process.exit(faults.length === 0 ? 0 : 1);
