import { randomBytes } from "node:crypto";
import { readFile, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";

/**
 * What another start of this program on this machine shows to be let in. It lies in the data folder, readable by this
 * user alone, for as long as the server runs.
 */
export interface DoorKey {
  readonly key: string;
  readonly release: () => Promise<void>;
}

const fileIn = (home: string): string => join(home, "door.key");

/** A new key, laid into the data folder. */
export async function makeDoorKey(home: string): Promise<DoorKey> {
  const key = randomBytes(24).toString("base64url");
  await rm(fileIn(home), { force: true });
  await writeFile(fileIn(home), key, { mode: 0o600 });
  return { key, release: () => rm(fileIn(home), { force: true }) };
}

/** A fresh address of the server that runs on a data folder; undefined where it does not answer. */
export async function addressThroughDoor(home: string, port: number): Promise<string | undefined> {
  try {
    const key = await readFile(fileIn(home), "utf8");
    const reply = await fetch(`http://127.0.0.1:${port}/door`, { method: "POST", headers: { "x-door-key": key } });
    const body: unknown = await reply.json();
    const code: unknown = typeof body === "object" && body !== null ? Reflect.get(body, "code") : undefined;
    return typeof code === "string" ? openAddress(port, code) : undefined;
  } catch {
    return undefined;
  }
}

/** The address that opens a session with a one-time code. */
export const openAddress = (port: number, code: string): string => `http://127.0.0.1:${port}/open?code=${code}`;
