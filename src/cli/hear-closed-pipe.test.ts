import { spawn } from "node:child_process";
import { EventEmitter, once } from "node:events";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { beforeAll, expect, test } from "vitest";
import { builtThread, threadFolder } from "../../test/samples/built-thread.ts";
import { hearClosedPipe } from "./hear-closed-pipe.ts";

const folder = threadFolder();
const command = join(folder, "talks.mjs");
beforeAll(async () => {
  const built = await builtThread("src/cli/hear-closed-pipe.ts", folder);
  writeFileSync(
    command,
    `import { hearClosedPipe } from ${JSON.stringify(pathToFileURL(built).href)};
    hearClosedPipe(process.stdout, process.stderr);
    process.stdin.on("data", () => undefined);
    process.stdin.on("end", () => {
      for (let line = 0; line < 50; line += 1) console.log("x".repeat(10_000));
      setTimeout(() => {
        console.log("more");
        console.error("to the end");
      }, 20);
    });`,
  );
});

test("a command whose reader has gone goes on to its end, without a stack and with its own exit code", async () => {
  const child = spawn(process.execPath, [command], { stdio: ["pipe", "pipe", "pipe"] });
  let said = "";
  child.stderr.on("data", (text: Buffer) => {
    said += text.toString();
  });
  child.stdout.destroy();
  child.stdin.end();
  const [code] = await once(child, "close");
  expect([code, said]).toEqual([0, "to the end\n"]);
});

test("another fault of a stream is not hidden", () => {
  const stream = new EventEmitter();
  hearClosedPipe(stream as unknown as NodeJS.WriteStream);
  const emit = (code: string) => stream.emit("error", Object.assign(new Error(code), { code }));
  expect(() => emit("EIO")).toThrow("EIO");
  expect(() => emit("EPIPE")).not.toThrow();
});
