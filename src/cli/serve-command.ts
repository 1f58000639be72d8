import { Refusal } from "../core/refusal.ts";
import { addressThroughDoor } from "../server/door-key.ts";
import { type Serving, serve } from "../server/serve.ts";
import { homeFolder } from "../store/home.ts";
import { shipped } from "./shipped.ts";

/** `canalog serve`: serves until Ctrl-C, and says where; where it runs already, says so and gives a fresh address. */
export async function serveCommand(options: { port: number }): Promise<void> {
  // Laid before anything is opened: a Ctrl-C at any moment closes what is open by then.
  const ended = new AbortController();
  for (const name of ["SIGINT", "SIGTERM"] as const) process.on(name, () => ended.abort());
  const { signal } = ended;
  try {
    const serving = await serve({ shipped, env: process.env, port: options.port, say: console.log, signal });
    sayWhere(serving);
    await aborted(signal);
    console.log("\nEnding ...");
    await serving.close();
  } catch (thrown) {
    if (!signal.aborted) await sayWhereItRuns(thrown);
  }
  process.exit(0);
}

function sayWhere({ address }: Serving): void {
  console.log(`Data folder: ${homeFolder(process.env)}`);
  console.log(`Canalog runs at ${address}`);
  console.log("The address is good for one opening. Ctrl-C ends.");
}

const aborted = (signal: AbortSignal): Promise<void> =>
  new Promise((resolve) => {
    if (signal.aborted) resolve();
    signal.addEventListener("abort", () => resolve(), { once: true });
  });

async function sayWhereItRuns(thrown: unknown): Promise<void> {
  const port = thrown instanceof Refusal && thrown.code === "server.alreadyRunning" ? thrown.facts.port : undefined;
  const address = typeof port === "number" ? await addressThroughDoor(homeFolder(process.env), port) : undefined;
  if (address === undefined) throw thrown;
  console.log(`Canalog runs already; a fresh address: ${address}`);
}
