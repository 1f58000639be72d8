import { Refusal } from "../core/refusal.ts";
import { addressThroughDoor } from "../server/door-key.ts";
import { type Serving, serve } from "../server/serve.ts";
import { homeFolder } from "../store/home.ts";
import { shipped } from "./shipped.ts";

/** `canalog serve`: serves until Ctrl-C, and says where; where it runs already, says so and gives a fresh address. */
export async function serveCommand(options: { port: number }): Promise<void> {
  const serving = await serve({ shipped, env: process.env, port: options.port, say: console.log }).catch(
    sayWhereItRuns,
  );
  if (serving === undefined) return;
  console.log(`Data folder: ${homeFolder(process.env)}`);
  console.log(`Canalog runs at ${serving.address}`);
  console.log("The address is good for one opening. Ctrl-C ends.");
  let ending = false;
  const end = async (): Promise<void> => {
    if (ending) return;
    ending = true;
    console.log("\nEnding ...");
    await serving.close();
    process.exit(0);
  };
  process.on("SIGINT", end);
  process.on("SIGTERM", end);
}

async function sayWhereItRuns(thrown: unknown): Promise<Serving | undefined> {
  const port = thrown instanceof Refusal && thrown.code === "server.alreadyRunning" ? thrown.facts.port : undefined;
  const address = typeof port === "number" ? await addressThroughDoor(homeFolder(process.env), port) : undefined;
  if (address === undefined) throw thrown;
  console.log(`Canalog runs already; a fresh address: ${address}`);
  return undefined;
}
