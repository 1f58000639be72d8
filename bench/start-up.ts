import { rmSync } from "node:fs";
import { newHome, startServer } from "../test/journeys/canalog.ts";
import { type Measured, measured, millisecondsOf } from "./timing.ts";

/** From the command to the printed address: with a new data folder and the demo, and with one that is there. */
export async function startUp(): Promise<Measured[]> {
  const home = newHome("before the first start");
  const seconds = async (folder: string): Promise<number> => {
    let stop = async (): Promise<unknown> => undefined;
    const took = await millisecondsOf(async () => {
      ({ stop } = await startServer(folder));
    });
    await stop();
    return took / 1000;
  };
  const first = await measured("first start, with the demo", "s", 3, async () => {
    rmSync(home, { recursive: true, force: true });
    return seconds(home);
  });
  const later = await measured("a later start", "s", 7, () => seconds(home));
  rmSync(home, { recursive: true, force: true });
  return [first, later];
}
